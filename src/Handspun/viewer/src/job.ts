// The job page's buttons and forms: measure a point, let another record count, add a point, keep a crank's measures.

import { askStation } from './ask-station';
import './plan-forms';

/** Buttons say in `data-post` where to, in `data-body` what, and in `data-then` where to go afterwards. */
document.addEventListener('click', (event) => {
  const button = event.target instanceof Element ? event.target.closest<HTMLButtonElement>('button[data-post]') : null;
  if (button) void press(button);
});

// A picture that is not there leaves no hole.
for (const picture of document.querySelectorAll<HTMLImageElement>('.record-picture img')) {
  const leave = () => picture.closest('a')?.remove();
  picture.addEventListener('error', leave);
  if (picture.complete && picture.naturalWidth === 0) leave();
}

/** What the button says, and the gauge that was chosen beside it where there are several. */
function bodyOf(button: HTMLButtonElement): unknown {
  if (!button.dataset['body']) return undefined;
  const gauge = button.parentElement?.querySelector<HTMLSelectElement>('select[name=gauge]')?.value;
  return { ...(JSON.parse(button.dataset['body']) as object), ...(gauge ? { gauge } : {}) };
}

/** Forms say in `data-post` or `data-put` where to; each field that is filled in is sent by its name, as it was typed. */
document.addEventListener('submit', (event) => {
  const form = event.target instanceof HTMLFormElement ? event.target : null;
  const address = form?.dataset['put'] ?? form?.dataset['post'];
  if (form === null || address === undefined) return;
  event.preventDefault();
  const typed = [...new FormData(form)].filter(([, value]) => typeof value === 'string' && value.trim() !== '');
  const button = form.querySelector<HTMLButtonElement>('button[type=submit]');
  void send(form, button, form.dataset['put'] === undefined ? 'POST' : 'PUT', address, Object.fromEntries(typed));
});

async function press(button: HTMLButtonElement): Promise<void> {
  const { post, then } = button.dataset;
  await send(button, button, 'POST', post ?? '', bodyOf(button), then);
}

async function send(from: HTMLElement, button: HTMLButtonElement | null, method: 'POST' | 'PUT', address: string, body: unknown, then?: string): Promise<void> {
  if (button) button.disabled = true;
  const answer = await askStation(method, address, body);
  if (answer.ok) {
    if (then) location.assign(then);
    else location.reload();
    return;
  }
  if (button) button.disabled = false;
  const place = from.closest('[data-answers]')?.querySelector<HTMLElement>('[data-answer]');
  if (place) {
    place.textContent = answer.sentence;
    place.hidden = false;
    place.scrollIntoView({ block: 'nearest' });
  }
}
