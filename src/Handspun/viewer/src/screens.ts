// The page that pairs screens: it keeps up with the code and with who is paired.

import { askStation } from './ask-station';
import { part, put } from './page-parts';

interface Screens {
  readonly code: string | null;
  readonly screens: readonly { readonly screen: number }[];
}

const page = part('screens');
const lookMs = 2000;

function follow(now: Screens): void {
  const screens = now.screens.map(({ screen }) => screen).join(' ');
  if (screens !== (page.dataset['screens'] ?? '') || (now.code ?? '') !== (page.dataset['code'] ?? '')) location.reload();
}

async function unpair(button: HTMLButtonElement): Promise<void> {
  button.disabled = true;
  const answer = await askStation<Screens>('DELETE', `/api/v1/screens/${button.dataset['unpair']}`);
  button.disabled = false;
  put('screens-answer', answer.ok ? '' : answer.sentence);
  if (answer.ok) follow(answer.body);
}

for (const button of document.querySelectorAll<HTMLButtonElement>('button[data-unpair]')) {
  button.addEventListener('click', () => void unpair(button));
}
setInterval(() => {
  if (document.visibilityState === 'hidden') return;
  void askStation<Screens>('GET', '/api/v1/screens').then((answer) => answer.ok && follow(answer.body));
}, lookMs);
