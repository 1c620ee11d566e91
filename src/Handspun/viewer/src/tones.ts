// Short tunes for a hand that is not looking: rising is good, falling is not, and a repeat asks for more.

import type { Moment } from './moments';

/** Steps above the ground note in half tones, one after another. */
const tunes: Readonly<Record<Moment, readonly number[]>> = {
  started: [0],
  enough: [7, 12],
  within: [0, 4, 7, 12],
  over: [12, 7, 1],
  undecided: [5, 5, 5],
  none: [5, 5],
  trouble: [1, 0, 1, 0],
};

const groundHertz = 440;
const noteSeconds = 0.16;

let audio: AudioContext | null = null;

/** Browsers let a page sound only after it was touched once. */
export function allowTones(): void {
  audio ??= new AudioContext();
  void audio.resume();
}

export function sound(moment: Moment): void {
  if (audio?.state !== 'running') return;
  for (const [place, step] of tunes[moment].entries()) note(audio, audio.currentTime + place * noteSeconds, groundHertz * 2 ** (step / 12));
}

function note(context: AudioContext, at: number, hertz: number): void {
  const [voice, loudness] = [context.createOscillator(), context.createGain()];
  voice.type = 'triangle';
  voice.frequency.value = hertz;
  loudness.gain.setValueAtTime(0, at);
  loudness.gain.linearRampToValueAtTime(0.4, at + 0.015);
  loudness.gain.exponentialRampToValueAtTime(0.001, at + noteSeconds * 1.6);
  voice.connect(loudness).connect(context.destination);
  voice.start(at);
  voice.stop(at + noteSeconds * 1.7);
}
