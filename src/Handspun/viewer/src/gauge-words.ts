// The state of a gauge in words.

import type { GaugeCondition, GaugeState } from './wire';

export interface GaugeWords {
  readonly title: string;
  readonly detail: string;
  /** Whether the mechanic has something to mend before a result can come. */
  readonly trouble: boolean;
  /** How often a line could not be read, when it happens at all. */
  readonly unreadable: string;
}

const titles: Record<GaugeCondition, string> = {
  reading: 'Gauge reading',
  silent: 'Gauge silent',
  absent: 'Gauge not found',
  'not-permitted': 'Gauge not permitted',
  lost: 'Gauge lost',
  offline: 'Gauge offline',
};

export function gaugeWords(gauge: GaugeState | null): GaugeWords {
  if (gauge === null) return { title: 'No gauge', detail: 'No gauge serves this point.', trouble: true, unreadable: '' };
  return {
    title: titles[gauge.state] ?? `Gauge: ${gauge.state}`,
    detail: [gauge.sentence, lastHeardWords(gauge)].filter(Boolean).join(' '),
    trouble: gauge.state !== 'reading',
    unreadable: unreadableWords(gauge.unreadable_per_s ?? 0),
  };
}

function unreadableWords(perSecond: number): string {
  if (!(perSecond > 0)) return '';
  const rate = perSecond >= 10 ? perSecond.toFixed(0) : perSecond >= 0.1 ? perSecond.toFixed(1) : 'under 0.1';
  return `${rate} unreadable lines a second`;
}

// A gauge that has stopped: since when is the first thing that one asks.
function lastHeardWords({ state, last_reading: at }: GaugeState): string {
  if ((state !== 'silent' && state !== 'lost') || !at) return '';
  return `Its last reading came at ${new Date(at).toTimeString().slice(0, 8)}.`;
}
