// The parts of the bay's page, found by the names that tests use too.

/** The part of the page with this name; it is a mistake of the page when there is none. */
export function part(id: string): HTMLElement {
  const found = document.querySelector<HTMLElement>(`[data-testid="${id}"]`);
  if (!found) throw new Error(`The page has no part named ${id}.`);
  return found;
}

/** Writes only what changed: a screen reader is not told the same thing again. */
export function put(id: string, text: string): void {
  const place = part(id);
  if (place.textContent !== text) place.textContent = text;
}

/** Sets a data attribute, where it changed. */
export function set(place: HTMLElement, name: string, value: string): void {
  if (place.dataset[name] !== value) place.dataset[name] = value;
}

/** Shows sentences as list items, where they changed. */
export function list(id: string, sentences: readonly string[]): void {
  const place = part(id);
  const key = sentences.join('\n');
  if (place.dataset['key'] === key) return;
  place.dataset['key'] = key;
  place.replaceChildren(...sentences.map((text) => Object.assign(document.createElement('li'), { textContent: text })));
}
