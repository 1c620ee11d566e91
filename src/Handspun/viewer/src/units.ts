// How a length is written on a screen. The station writes its sentences and pages by the same rules: inches with four
// decimals, millimetres with three, or as the shop chose, and an uncertainty rounded up, so that it is never shown smaller
// than it is.

import type { Unit } from './wire';

/** Exact by definition. */
export const millimetresPerInch = 25.4;

const decimals: Record<Unit, number> = { in: 4, mm: 3 };
takeOn(globalThis.document?.documentElement.dataset['lengths']);
const minus = '\u2212';

/** Takes on how the shop wants lengths shown, such as `in-3`; what is no such thing changes nothing. */
export function takeOn(lengths: string | undefined): void {
  const [, unit, places] = /^(in|mm)-([2-4])$/.exec(lengths ?? '') ?? [];
  if (unit !== undefined) decimals[unit as Unit] = Number(places);
}

/** A length in the shown unit, from millimetres. */
export function inUnit(mm: number, unit: Unit): number {
  return unit === 'in' ? mm / millimetresPerInch : mm;
}

/** A number that already is in the shown unit, with that unit's decimals. */
export function inDigits(value: number, unit: Unit): string {
  const text = value.toFixed(decimals[unit]);
  if (!text.startsWith('-')) return text;
  return Number(text) === 0 ? text.slice(1) : minus + text.slice(1);
}

/** The digits of a length, without the unit: `0.0031`. */
export function digits(mm: number, unit: Unit): string {
  return inDigits(inUnit(mm, unit), unit);
}

/** An uncertainty with its sign and unit, rounded up: `± 0.0002 in`. */
export function uncertainty(u95mm: number, unit: Unit): string {
  return `±\u00a0${roundedUp(u95mm, unit)}`;
}

/** A length that must not look smaller than it is, with its unit: `0.0002 in`. */
export function roundedUp(mm: number, unit: Unit): string {
  const scale = 10 ** decimals[unit];
  // A hair is taken off first, so that 0.0002 held as 0.00020000000000000001 stays 0.0002.
  const rounded = Math.ceil(inUnit(mm, unit) * scale - 1e-6) / scale;
  return `${inDigits(rounded, unit)}\u00a0${unit}`;
}
