// What changes from capture to capture, such as the depth in a bore, asked for on the bay's screen: no walk to the job's page.

import { askStation } from './ask-station';
import { part, put } from './page-parts';
import type { Bay, SetupField } from './wire';

const form = part('bay-place') as HTMLFormElement;
let address = '';
let drawn = '';

/** Shows the fields of the point; what somebody is typing is left alone. */
export function showPlace(bay: Bay | null, between: boolean): void {
  const fields = bay?.place ?? [];
  form.hidden = !between || fields.length === 0;
  if (bay === null || fields.length === 0) return;
  address = `/api/v1/jobs/${encodeURIComponent(bay.job ?? '')}/points/${encodeURIComponent(bay.point ?? '')}/setup`;
  const key = address + JSON.stringify(fields);
  if (key === drawn || form.contains(document.activeElement)) return;
  drawn = key;
  const button = Object.assign(document.createElement('button'), { type: 'submit', className: 'button strong', textContent: 'Here next' });
  form.replaceChildren(...fields.map(fieldOf), button);
}

/** Sends what was typed, and calls `then` when the station took it. */
export function onPlace(then: () => void): void {
  form.addEventListener('submit', (event) => {
    event.preventDefault();
    const typed = Object.fromEntries([...new FormData(form)].filter(([, value]) => typeof value === 'string'));
    void askStation('PATCH', address, typed).then((answer) => {
      put('bay-answer', answer.ok ? '' : answer.sentence);
      if (!answer.ok) return;
      if (document.activeElement instanceof HTMLElement) document.activeElement.blur();
      then();
    });
  });
}

function fieldOf(field: SetupField): HTMLElement {
  const label = Object.assign(document.createElement('label'), { textContent: field.label });
  if (field.choices === null) {
    label.append(Object.assign(document.createElement('input'), { name: field.name, value: field.value, autocomplete: 'off' }));
    return label;
  }
  const select = Object.assign(document.createElement('select'), { name: field.name });
  select.append(...field.choices.map(({ code, words }) => new Option(words, code, code === field.value, code === field.value)));
  label.append(select);
  return label;
}
