// From what the bay knows to what its screen says. Pure; the page only puts the words where they belong.

import { gaugeOf, stageOf, type BayState, type Stage } from './bay-state';
import { gaugeWords, type GaugeWords } from './gauge-words';
import { digits, uncertainty } from './units';
import { verdictOf, type Verdict } from './verdict';
import type { GaugeState } from './wire';

export interface BayView {
  readonly stage: Stage;
  readonly point: string;
  readonly about: string;
  readonly jobAddress: string;
  /** The state in words. */
  readonly phase: string;
  /** The big number, without its unit; empty when there is none yet. */
  readonly tir: string;
  readonly unit: string;
  readonly tirUncertainty: string;
  readonly tirLabel: string;
  readonly turns: string;
  /** Turns seen against turns wanted, 0 to 1. */
  readonly fraction: number;
  readonly turnsWanted: number;
  readonly speed: string;
  readonly sentence: string;
  readonly verdict: Verdict | null;
  readonly warnings: readonly string[];
  readonly limit: string;
  /** The point's gauge; null when the bay is idle. */
  readonly gauge: GaugeWords | null;
  /** All gauges in words, while the bay is idle. */
  readonly gauges: readonly string[];
  readonly cautions: readonly string[];
  /** When the record shown was made; empty while none is shown. */
  readonly recordedAt: string;
}

const phases: Record<Stage, string> = {
  unknown: 'Asking the station',
  idle: 'Nothing to measure',
  cautions: 'Before the first spin',
  waiting: 'Waiting for the shaft to turn',
  turning: 'Turning',
  working: 'Working out the result',
  result: 'Turn again for a second record',
};

export function viewOf(state: BayState): BayView {
  const stage = stageOf(state);
  const { bay, progress } = state;
  const unit = bay?.unit ?? 'in';
  const result = stage === 'result' ? state.result : null;
  const seen = stage === 'turning' || (stage === 'working' && progress?.phase === 'ended') ? progress : null;
  const measured = result ?? seen;
  const tirMm = measured?.tir_mm ?? null;
  const u95Mm = measured?.tir_u95_mm ?? null;
  const turns = measured?.turns ?? null;
  const turnsWanted = progress?.turns_wanted ?? bay?.turns_wanted ?? 0;
  const gauge = gaugeWords(gaugeOf(state));
  const onPoint = stage !== 'unknown' && stage !== 'idle';

  return {
    stage,
    point: onPoint ? (bay?.point_title ?? bay?.point ?? '') : 'Bay',
    about: onPoint ? [`Job ${bay?.job}`, bay?.bike, bay?.job_title].filter(Boolean).join(' · ') : '',
    jobAddress: onPoint ? `/jobs/${encodeURIComponent(bay?.job ?? '')}` : '/',
    phase: onPoint && gauge.trouble ? gauge.title : result?.status === 'incomplete' ? 'Turn again' : phases[stage],
    tir: tirMm === null ? '' : digits(tirMm, unit),
    unit,
    tirUncertainty: u95Mm === null || tirMm === null ? '' : uncertainty(u95Mm, unit),
    tirLabel: result ? 'Total indicated runout' : 'Runout so far',
    turns: stage === 'working' && turns === null ? '' : turnsWords(turns, result === null ? turnsWanted : 0),
    fraction: turns === null || turnsWanted <= 0 ? 0 : Math.min(1, Math.max(0, turns / turnsWanted)),
    turnsWanted,
    speed: stage === 'turning' && !gauge.trouble ? speedWords(progress?.turns_per_s ?? null) : '',
    sentence: !onPoint ? '' : result ? (result.missing ?? result.sentence ?? '') : gauge.trouble ? gauge.detail : stage === 'working' ? '' : (progress?.sentence ?? ''),
    verdict: result ? verdictOf(result) : null,
    warnings: result?.warnings.map((warning) => warning.sentence) ?? [],
    limit: onPoint ? limitWords(state, unit) : '',
    gauge: onPoint ? gauge : null,
    gauges: stage === 'idle' ? [...state.gauges.values()].map(inOneLine) : [],
    cautions: stage === 'cautions' ? (bay?.cautions ?? []) : [],
    recordedAt: result?.at ?? '',
  };
}

function inOneLine(gauge: GaugeState): string {
  const { title, detail, unreadable } = gaugeWords(gauge);
  return [detail || `${title}: ${gauge.gauge}.`, unreadable && `${unreadable}.`].filter(Boolean).join(' ');
}

function turnsWords(turns: number | null, wanted: number): string {
  if (turns === null) return wanted > 0 ? `0 of ${wanted} turns` : '';
  return wanted > 0 ? `${turns.toFixed(1)} of ${wanted} turns` : `${turns.toFixed(1)} turns`;
}

function speedWords(turnsPerSecond: number | null): string {
  if (turnsPerSecond === null || !(turnsPerSecond > 0)) return '';
  return `${Math.round(turnsPerSecond * 60)} turns a minute`;
}

function limitWords(state: BayState, unit: 'in' | 'mm'): string {
  const limit = state.result?.limit ?? state.bay?.limit ?? null;
  if (limit === null) return 'No limit set';
  const { lower_mm: lower, upper_mm: upper } = limit;
  const range =
    lower !== null && upper !== null ? `${digits(lower, unit)} to ${digits(upper, unit)} ${unit}`
    : upper !== null ? `at most ${digits(upper, unit)} ${unit}`
    : lower !== null ? `at least ${digits(lower, unit)} ${unit}`
    : '';
  if (range === '') return 'No limit set';
  return `Limit: ${range}${limit.confirmed ? '' : ', not confirmed'}`;
}

/** What to say about the line to the station; empty while it is well. */
export function contactWords(connected: boolean, silentForMs: number): string {
  const patience = connected ? 9000 : 1500;
  if (silentForMs < patience) return '';
  const seconds = Math.floor(silentForMs / 1000);
  const age = seconds < 120 ? `${seconds} s` : `${Math.floor(seconds / 60)} min`;
  return `No contact with the station for ${age}`;
}

/** How long ago something was, in words. */
export function agoWords(milliseconds: number): string {
  const seconds = Math.max(0, Math.round(milliseconds / 1000));
  if (seconds < 60) return `${seconds} s ago`;
  const minutes = Math.round(seconds / 60);
  if (minutes < 60) return `${minutes} min ago`;
  const hours = Math.round(minutes / 60);
  return hours < 48 ? `${hours} h ago` : `${Math.round(hours / 24)} days ago`;
}
