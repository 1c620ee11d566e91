// Where a result and its uncertainty lie against the limit, as fractions of a scale that starts at zero, or for a size of one about the limit.
// The job's page draws by the same rule.

import type { Limit } from './wire';

export interface LimitScale {
  readonly value: number;
  readonly from: number;
  readonly to: number;
  readonly lower: number | null;
  readonly upper: number | null;
}

/** Null without a limit or a value: there is nothing to hold against anything. */
export function limitScale(valueMm: number | null, u95Mm: number | null, limit: Limit | null): LimitScale | null {
  const upper = limit?.upper_mm ?? null;
  const lower = limit?.lower_mm ?? null;
  const bound = upper ?? lower;
  if (valueMm === null || bound === null || !(bound > 0)) return null;
  const u = u95Mm ?? 0;
  const { start, end } = endsOf(valueMm, u, lower ?? bound, upper ?? bound, bound);
  const at = (mm: number) => Math.min(1, Math.max(0, (mm - start) / (end - start)));
  return {
    value: at(valueMm),
    from: at(valueMm - u),
    to: at(valueMm + u),
    lower: lower === null ? null : at(lower),
    upper: upper === null ? null : at(upper),
  };
}

/** Below this part of the bound, from the lowest of what is drawn to the highest, nothing could be told on a scale from zero. */
const smallPart = 0.01;

function endsOf(value: number, u: number, lower: number, upper: number, bound: number): { start: number; end: number } {
  const least = Math.min(lower, value - u);
  const most = Math.max(upper, value + u);
  const about = most - least;
  return least > 0 && about > 0 && about < smallPart * bound
    ? { start: least - 0.4 * about, end: most + 0.4 * about }
    : { start: 0, end: Math.max(bound * 1.4, (value + u) * 1.08) };
}
