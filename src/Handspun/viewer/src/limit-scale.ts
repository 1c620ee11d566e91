// Where a result and its uncertainty lie against the limit, as fractions of a scale that starts at zero.

import type { Limit } from './wire';

export interface LimitScale {
  readonly value: number;
  readonly from: number;
  readonly to: number;
  readonly lower: number | null;
  readonly upper: number | null;
}

/** Null without a limit or a value: there is nothing to hold against anything. */
export function limitScale(tirMm: number | null, u95Mm: number | null, limit: Limit | null): LimitScale | null {
  const upper = limit?.upper_mm ?? null;
  const lower = limit?.lower_mm ?? null;
  const bound = upper ?? lower;
  if (tirMm === null || bound === null || !(bound > 0)) return null;
  const u = u95Mm ?? 0;
  const end = Math.max(bound * 1.4, (tirMm + u) * 1.08);
  const at = (mm: number) => Math.min(1, Math.max(0, mm / end));
  return {
    value: at(tirMm),
    from: at(tirMm - u),
    to: at(tirMm + u),
    lower: lower === null ? null : at(lower),
    upper: upper === null ? null : at(upper),
  };
}
