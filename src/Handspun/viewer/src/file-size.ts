// How large files may be, looked at before they are sent. Pure.

/** What is wrong with files before they are sent, and what to do instead; empty where nothing is. */
export function problemOf(files: readonly { readonly name: string; readonly size: number }[], most: number, mostAtOnce: number, instead = 'take it with fewer pixels'): string {
  const mega = (bytes: number) => Math.floor(bytes / 1024 / 1024);
  const large = files.find((file) => file.size > most);
  if (large) return `${large.name} has ${mega(large.size)} MB, and ${mega(most)} MB are the most: ${instead}.`;
  const all = files.reduce((sum, file) => sum + file.size, 0);
  return all > mostAtOnce ? `Together they have ${mega(all)} MB, and ${mega(mostAtOnce)} MB can be sent at once: send them one by one.` : '';
}
