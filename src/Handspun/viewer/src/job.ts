// The job page's buttons: measure a point, let another record count.

import { askStation } from './ask-station';

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

async function press(button: HTMLButtonElement): Promise<void> {
  const { post, then } = button.dataset;
  button.disabled = true;
  const answer = await askStation('POST', post ?? '', bodyOf(button));
  if (answer.ok) {
    if (then) location.assign(then);
    else location.reload();
    return;
  }
  button.disabled = false;
  const place = button.closest('[data-answers]')?.querySelector<HTMLElement>('[data-answer]');
  if (place) {
    place.textContent = answer.sentence;
    place.hidden = false;
    place.scrollIntoView({ block: 'nearest' });
  }
}
