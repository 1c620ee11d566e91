// What a result says at a glance: a word, a shape and a tone, never the tone alone.

import type { Result } from './wire';

/** `none`: there is no verdict, because no limit is set or the spin gave no result. */
export type VerdictKind = 'within' | 'over' | 'undecided' | 'none';

export interface Verdict {
  readonly kind: VerdictKind;
  readonly word: string;
}

export function verdictOf(result: Result): Verdict {
  if (result.status === 'incomplete') return { kind: 'none', word: 'No result' };
  switch (result.verdict) {
    case 'within':
      return { kind: 'within', word: 'Within the limit' };
    case 'over':
      return { kind: 'over', word: 'Over the limit' };
    case 'undecided':
      return { kind: 'undecided', word: 'Too close to call' };
    default:
      return { kind: 'none', word: 'No verdict' };
  }
}
