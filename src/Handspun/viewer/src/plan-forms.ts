// Small helps on forms of a job: the name that was typed last, and photos that are dropped or too large. Without them the
// forms still work.

const nameKept = 'handspun-name';

for (const field of document.querySelectorAll<HTMLInputElement>('input[data-keep="name"]')) {
  if (field.value === '') field.value = kept();
  field.form?.addEventListener('submit', () => keep(field.value.trim()));
}

for (const place of document.querySelectorAll<HTMLElement>('[data-drop]')) {
  const field = place.querySelector<HTMLInputElement>('input[type="file"]');
  if (field) takeDrops(place, field);
}

function takeDrops(place: HTMLElement, field: HTMLInputElement): void {
  const look = () => {
    const problem = problemOf([...(field.files ?? [])], Number(place.dataset['most']), Number(place.dataset['mostAtOnce']));
    field.setCustomValidity(problem);
    const says = place.querySelector<HTMLElement>('[data-drop-says]');
    if (says) says.textContent = problem === '' ? [...(field.files ?? [])].map((file) => file.name).join(', ') : problem;
  };
  field.addEventListener('change', look);
  place.addEventListener('dragover', (event) => {
    event.preventDefault();
    place.dataset['over'] = 'yes';
  });
  place.addEventListener('dragleave', () => delete place.dataset['over']);
  place.addEventListener('drop', (event) => {
    event.preventDefault();
    delete place.dataset['over'];
    if (event.dataTransfer && event.dataTransfer.files.length > 0) {
      field.files = event.dataTransfer.files;
      look();
    }
  });
}

/** What is wrong with photos before they are sent; empty where nothing is. */
export function problemOf(files: readonly { readonly name: string; readonly size: number }[], most: number, mostAtOnce: number): string {
  const mega = (bytes: number) => Math.floor(bytes / 1024 / 1024);
  const large = files.find((file) => file.size > most);
  if (large) return `${large.name} has ${mega(large.size)} MB, and ${mega(most)} MB are the most: take it with fewer pixels.`;
  const all = files.reduce((sum, file) => sum + file.size, 0);
  return all > mostAtOnce ? `Together they have ${mega(all)} MB, and ${mega(mostAtOnce)} MB can be sent at once: send them one by one.` : '';
}

function kept(): string {
  try {
    return localStorage.getItem(nameKept) ?? '';
  } catch {
    return ''; // a browser that keeps nothing
  }
}

function keep(name: string): void {
  try {
    if (name !== '') localStorage.setItem(nameKept, name);
  } catch {
    // a browser that keeps nothing
  }
}
