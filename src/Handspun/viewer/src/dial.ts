// Where to put the paint mark: how far to turn on from the reference until the high spot is under the plunger. Pure.

import type { Result } from './wire';

export interface Dial {
  /** Degrees to turn on from the reference, in the direction of rotation. */
  readonly degrees: number;
  readonly u95: number;
  readonly sentence: string;
}

/** An angle that is not known to a sixth of a turn helps nobody with a brush in hand. */
const worstDegrees = 60;

const references: Readonly<Record<string, string>> = { mark: 'the mark', index: 'the index', encoder: 'the zero of the encoder' };

/** Null where no paint mark can be placed: no high spot, nothing that lasts to count from, or an angle that is too unsure. */
export function dialOf(result: Result | null): Dial | null {
  const { high_spot_deg: degrees, high_spot_u95_deg: u95, angle_reference: reference } = result ?? {};
  const from = references[reference ?? ''];
  if (degrees == null || u95 == null || from === undefined || u95 > worstDegrees) return null;
  const [on, about] = [Math.round(degrees) % 360, Math.max(1, Math.ceil(u95))];
  return { degrees, u95, sentence: `High spot: turn on ${on}° from ${from} (± ${about}°). It is then under the plunger: paint it there.` };
}

/** The dial as a picture of 200 by 200: zero on top, turning clockwise. */
export function dialPicture({ degrees, u95 }: Dial): string {
  const ticks = Array.from({ length: 24 }, (_, i) => line(i * 15, i % 6 === 0 ? 74 : 80, 86)).join('');
  const large = degrees > 180 ? 1 : 0;
  return `<svg viewBox="0 0 200 200" aria-hidden="true">
    <circle class="dial-rim" cx="100" cy="100" r="86"/>
    <path class="dial-ticks" d="${ticks}"/>
    <path class="dial-doubt" d="M100 100L${at(degrees - u95, 86)}A86 86 0 ${u95 > 90 ? 1 : 0} 1 ${at(degrees + u95, 86)}Z"/>
    <path class="dial-way" d="M${at(0, 58)}A58 58 0 ${large} 1 ${at(degrees, 58)}"/>
    <path class="dial-zero" d="M100 4l8 16h-16z"/>
    <path class="dial-spot" d="M100 100L${at(degrees, 86)}"/>
    <circle class="dial-paint" cx="${at(degrees, 86).split(' ')[0]}" cy="${at(degrees, 86).split(' ')[1]}" r="9"/>
  </svg>`;
}

function at(degrees: number, radius: number): string {
  const turn = (degrees * Math.PI) / 180;
  return `${(100 + radius * Math.sin(turn)).toFixed(2)} ${(100 - radius * Math.cos(turn)).toFixed(2)}`;
}

function line(degrees: number, from: number, to: number): string {
  return `M${at(degrees, from)}L${at(degrees, to)}`;
}
