// The gauges' pages: forms as on the job page, and a button that writes down what the gauge shows now.

import { askStation } from './ask-station';
import './job';

document.addEventListener('click', (event) => {
  const button = event.target instanceof Element ? event.target.closest<HTMLButtonElement>('button[data-take]') : null;
  const into = button && document.getElementById(button.dataset['into'] ?? '');
  if (button && into instanceof HTMLTextAreaElement) void take(button, into);
});

async function take(button: HTMLButtonElement, into: HTMLTextAreaElement): Promise<void> {
  const answer = await askStation<{ text: string }>('GET', button.dataset['take'] ?? '');
  if (answer.ok) {
    into.value = `${into.value.trim()} ${answer.body.text}`.trim();
    return;
  }
  const place = button.closest('[data-answers]')?.querySelector<HTMLElement>('[data-answer]');
  if (place) {
    place.textContent = answer.sentence;
    place.hidden = false;
  }
}
