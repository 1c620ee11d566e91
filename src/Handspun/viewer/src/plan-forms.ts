// Small helps on forms of a job: the name that was typed last, and photos that are dropped or too large. Without them the
// forms still work.

import { problemOf } from './file-size';

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
    const problem = problemOf([...(field.files ?? [])], Number(place.dataset['most']), Number(place.dataset['mostAtOnce']), place.dataset['instead']);
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
