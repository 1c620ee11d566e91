// What happens on the bay's screen that is worth a tone or a word: told from one view to the next. Pure.

import type { BayView } from './bay-view';

export type Moment = 'started' | 'enough' | 'within' | 'over' | 'undecided' | 'none' | 'trouble';

/** What has just happened; null where nothing has, or where it happened before this screen looked. */
export function momentBetween(before: BayView, after: BayView): Moment | null {
  if (before.stage === 'unknown' || before.point !== after.point) return null;
  if (after.gauge?.trouble && before.gauge !== null && !before.gauge.trouble) return 'trouble';
  if (after.stage === 'result' && before.stage !== 'result' && before.stage !== 'cautions') return after.verdict?.kind ?? 'none';
  if (after.stage !== 'running') return null;
  if (before.stage !== 'running') return 'started';
  return after.fraction >= 1 && before.fraction < 1 ? 'enough' : null;
}

/** The same in words that can be spoken; empty where a tone says it all. */
export function spoken(moment: Moment, view: BayView): string {
  switch (moment) {
    case 'started': return '';
    case 'enough': return 'Enough. Let it come to rest.';
    case 'trouble': return view.gauge?.title ?? '';
    default: return [view.point, valueWords(view), view.verdict?.word ?? ''].filter(Boolean).join('. ');
  }
}

function valueWords(view: BayView): string {
  if (!view.value) return '';
  if (view.unit === 'mm') return `${Number(view.value)} millimetres`;
  return `${Number((Number(view.value) * 1000).toFixed(1))} thousandths`;
}
