// How a length is written on a screen. The station writes its sentences and pages by the same rules: inches with four
// decimals, millimetres with three; a value that carries an uncertainty has no more decimals than two significant digits
// of the uncertainty need; an uncertainty is rounded up at its last decimal, so that it is never shown smaller than it is.

import type { Unit } from './wire';

/** Exact by definition. */
export const millimetresPerInch = 25.4;

const finestDecimals: Record<Unit, number> = { in: 4, mm: 3 };
const minus = '\u2212';

/** A length in the shown unit, from millimetres. */
export function inUnit(mm: number, unit: Unit): number {
  return unit === 'in' ? mm / millimetresPerInch : mm;
}

/** Decimals for a value whose uncertainty is `u95mm` (null when it has none). */
export function decimalsFor(unit: Unit, u95mm: number | null): number {
  const finest = finestDecimals[unit];
  if (u95mm === null || !(u95mm > 0)) return finest;
  const needed = 1 - Math.floor(Math.log10(inUnit(u95mm, unit)));
  return Math.min(finest, Math.max(0, needed));
}

/** The digits alone, without the unit: `0.0031`. */
export function digits(mm: number, unit: Unit, u95mm: number | null = null): string {
  return signed(inUnit(mm, unit).toFixed(decimalsFor(unit, u95mm)));
}

/** The uncertainty's digits, rounded up: `0.0002`. */
export function uncertaintyDigits(u95mm: number, unit: Unit): string {
  const decimals = decimalsFor(unit, u95mm);
  const scale = 10 ** decimals;
  // A hair is taken off first, so that 0.0002 held as 0.00020000000000000001 stays 0.0002.
  return (Math.ceil(inUnit(u95mm, unit) * scale - 1e-6) / scale).toFixed(decimals);
}

/** A length with its unit: `0.0031 in`. */
export function length(mm: number, unit: Unit, u95mm: number | null = null): string {
  return `${digits(mm, unit, u95mm)}\u00a0${unit}`;
}

/** An uncertainty with its sign and unit: `± 0.0002 in`. */
export function uncertainty(u95mm: number, unit: Unit): string {
  return `±\u00a0${uncertaintyDigits(u95mm, unit)}\u00a0${unit}`;
}

function signed(text: string): string {
  if (!text.startsWith('-')) return text;
  return Number(text) === 0 ? text.slice(1) : minus + text.slice(1);
}
