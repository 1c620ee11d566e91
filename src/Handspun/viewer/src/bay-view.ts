// From what the bay knows to what its screen says. Pure; the page only puts the words where they belong.

import { gaugeOf, stageOf, type BayState, type Stage } from './bay-state';
import { dialOf, type Dial } from './dial';
import { gaugeWords, type GaugeWords } from './gauge-words';
import { digits, roundedUp, uncertainty } from './units';
import { verdictOf, type Verdict } from './verdict';
import type { Bay, GaugeState, Progress, Result, Unit, Words } from './wire';

export interface BayView {
  readonly stage: Stage;
  readonly point: string;
  readonly about: string;
  readonly jobAddress: string;
  /** The state in words. */
  readonly phase: string;
  /** The big number, without its unit; empty when there is none yet. */
  readonly value: string;
  readonly unit: string;
  readonly uncertainty: string;
  readonly valueLabel: string;
  /** Turns, cycles or passes in words. */
  readonly counted: string;
  /** Those seen against those wanted, 0 to 1. */
  readonly fraction: number;
  readonly wanted: number;
  readonly speed: string;
  /** How closely the gauge reads and what could hide between two readings, or how far the strokes differ; empty where it is not known. */
  readonly sampling: string;
  readonly sentence: string;
  /** What was said of the point, while nothing runs. */
  readonly setup: string;
  /** What to heed before it begins. */
  readonly heed: readonly string[];
  readonly takesMarks: boolean;
  readonly verdict: Verdict | null;
  /** Where the paint mark goes; null where it cannot be said. */
  readonly dial: Dial | null;
  readonly warnings: readonly string[];
  readonly limit: string;
  /** At a gate that stops the job: what to tell the customer, and where somebody decides; null elsewhere. */
  readonly stop: { readonly tell: string; readonly address: string } | null;
  /** The point's gauge; null when the bay is idle. */
  readonly gauge: GaugeWords | null;
  /** All gauges in words, while the bay is idle. */
  readonly gauges: readonly string[];
  /** The bay's points, where there are several: where each is shown, and which of them this is. */
  readonly places: readonly { readonly title: string; readonly address: string; readonly here: boolean }[];
  readonly cautions: readonly string[];
  /** The step that comes by itself; null where none does. */
  readonly next: { readonly title: string; readonly at: string } | null;
  /** What the button says that stays, or goes back; empty where there is nothing to take back. */
  readonly back: string;
  /** When the record shown was made; empty while none is shown. */
  readonly recordedAt: string;
}

function phaseWords(stage: Stage, words: Words | null): string {
  switch (stage) {
    case 'unknown': return 'Asking the station';
    case 'idle': return 'Nothing to measure';
    case 'cautions': return 'Before you begin';
    case 'waiting': return words?.waiting ?? '';
    case 'running': return words?.running ?? '';
    case 'working': return 'Working out the result';
    case 'result': return words?.again ?? '';
  }
}

export function viewOf(state: BayState): BayView {
  const stage = stageOf(state);
  const { bay, progress } = state;
  const unit = bay?.unit ?? 'in';
  const result = stage === 'result' ? state.result : null;
  const seen = stage === 'running' || (stage === 'working' && progress?.phase === 'ended') ? progress : null;
  const measured = result ?? seen;
  const valueMm = measured?.value_mm ?? null;
  const u95Mm = measured?.value_u95_mm ?? null;
  const count = seen?.count ?? result?.turns ?? result?.cam_turns ?? result?.cycles ?? result?.passes ?? null;
  const wanted = progress?.wanted ?? bay?.wanted ?? 0;
  const words = bay?.words ?? null;
  const gauge = gaugeWords(gaugeOf(state));
  const onPoint = stage !== 'unknown' && stage !== 'idle';

  return {
    stage,
    point: onPoint ? (bay?.point_title ?? bay?.point ?? '') : 'Bay',
    about: onPoint ? [`Job ${bay?.job}`, bay?.bike, bay?.job_title].filter(Boolean).map((part) => inItsOwnOrder(part ?? '')).join(' · ') : '',
    jobAddress: onPoint ? `/jobs/${encodeURIComponent(bay?.job ?? '')}` : '/',
    phase: onPoint && gauge.trouble ? gauge.title : result?.status === 'incomplete' ? 'Measure again' : phaseWords(stage, words),
    value: valueMm === null ? '' : digits(valueMm, unit),
    unit,
    uncertainty: u95Mm === null || valueMm === null ? '' : uncertainty(u95Mm, unit),
    valueLabel: result ? result.value_title : (words?.so_far ?? ''),
    counted: stage === 'working' && count === null ? '' : countWords(count, result === null ? wanted : 0, words?.counted ?? ''),
    fraction: count === null || wanted <= 0 ? 0 : Math.min(1, Math.max(0, count / wanted)),
    wanted,
    speed: stage === 'running' && !gauge.trouble ? speedWords(progress?.turns_per_s ?? null) : '',
    sampling: stage === 'running' && !gauge.trouble && progress !== null ? samplingWords(progress, unit) : '',
    sentence: !onPoint ? '' : result ? (result.missing ?? result.sentence ?? '') : gauge.trouble ? gauge.detail : stage === 'working' ? '' : (progress?.sentence ?? ''),
    setup: stage === 'waiting' || stage === 'result' ? (bay?.setup ?? '') : '',
    heed: stage === 'waiting' ? (bay?.heed ?? []) : [],
    takesMarks: bay?.takes_marks ?? true,
    dial: dialOf(result),
    verdict: result ? verdictOf(result) : null,
    warnings: (result ?? (stage === 'running' || stage === 'waiting' ? progress : null))?.warnings.map((warning) => warning.sentence) ?? [],
    limit: onPoint ? limitWords(state, unit) : '',
    stop: stopOf(bay, result),
    gauge: onPoint ? gauge : null,
    gauges: stage === 'idle' ? [...state.gauges.values()].map(inOneLine) : [],
    places: placesOf(bay),
    cautions: stage === 'cautions' ? (bay?.cautions ?? []) : [],
    next: stage === 'result' && bay?.next ? { title: bay.next.point_title, at: bay.next.at } : null,
    back: stage === 'result' && bay?.next ? 'Stay at this point' : stage === 'waiting' && bay?.before ? `Back to ${bay.before}` : '',
    recordedAt: result?.at ?? '',
  };
}

/** Text that is written from right to left keeps its place among its neighbours (Unicode UAX #9, first strong isolate). */
function inItsOwnOrder(text: string): string {
  return /[\p{Script=Hebrew}\p{Script=Arabic}\p{Script=Syriac}\p{Script=Thaana}\p{Script=Nko}]/u.test(text) ? `\u2068${text}\u2069` : text;
}

function stopOf(bay: Bay | null, result: Result | null): BayView['stop'] {
  const gate = bay?.gate;
  if (!gate || result === null) return null;
  const tell = result.verdict === 'over' ? gate.if_over : result.verdict === 'undecided' ? gate.if_undecided : null;
  return tell === null ? null : { tell, address: gate.address };
}

function placesOf(bay: Bay | null): BayView['places'] {
  if (bay === null || bay.at_work.length < 2) return [];
  const jobs = new Set(bay.at_work.map((place) => place.job)).size;
  return bay.at_work.map((place) => ({
    title: jobs === 1 ? place.point_title : `${place.point_title}, job ${place.job}`,
    address: `/bay?gauge=${encodeURIComponent(place.gauge)}`,
    here: place.gauge === bay.gauge,
  }));
}

function inOneLine(gauge: GaugeState): string {
  const { title, detail, unreadable } = gaugeWords(gauge);
  return [detail || `${title}: ${gauge.gauge}.`, unreadable && `${unreadable}.`].filter(Boolean).join(' ');
}

function countWords(count: number | null, wanted: number, what: string): string {
  if (count === null) return wanted > 0 ? `0 of ${wanted} ${what}` : '';
  const seen = what.startsWith('turns') ? count.toFixed(1) : String(Math.floor(count));
  return wanted > 0 ? `${seen} of ${wanted} ${what}` : `${seen} ${what}`;
}

function speedWords(turnsPerSecond: number | null): string {
  if (turnsPerSecond === null || !(turnsPerSecond > 0)) return '';
  return `${Math.round(turnsPerSecond * 60)} turns a minute`;
}

function samplingWords(progress: Progress, unit: Unit): string {
  const { readings_per_turn: perTurn, hidden_peak_mm: hidden, spread_mm: spread } = progress;
  if (spread !== null && spread !== undefined) return `${digits(spread, unit)}\u00a0${unit} from smallest to largest`;
  if (!perTurn || !(perTurn > 0)) return '';
  const closely = `${Math.round(perTurn)} readings a turn`;
  return hidden === null || hidden === undefined ? closely : `${closely}; up to ${roundedUp(hidden, unit)} could hide between two`;
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

/** What to say about the line to the station; empty while it is silent for no longer than it may be. */
export function contactWords(silentForMs: number, patienceMs: number): string {
  if (silentForMs < patienceMs) return '';
  const seconds = Math.floor(silentForMs / 1000);
  const age = seconds < 120 ? `${seconds} s` : `${Math.floor(seconds / 60)} min`;
  return `No contact with the station for ${age}`;
}

/** What comes by itself, before it comes. */
export function nextWords(title: string, milliseconds: number): string {
  const seconds = Math.max(0, Math.ceil(milliseconds / 1000));
  return `Next: ${title}, ${seconds > 0 ? `in ${seconds} s` : 'now'}. Any key: stay here.`;
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
