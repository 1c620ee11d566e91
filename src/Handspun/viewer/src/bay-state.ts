// What the bay knows, and how each message changes it. Pure: no clock, no page, no network.

import type { Bay, GaugeState, Progress, Result } from './wire';

export type Message =
  | { readonly kind: 'snapshot'; readonly bay: Bay }
  | { readonly kind: 'progress'; readonly progress: Progress }
  | { readonly kind: 'gauge'; readonly gauge: GaugeState }
  | { readonly kind: 'result'; readonly result: Result };

/** Turns seen at one moment of the gauge's clock. */
export interface TurnsAt {
  readonly t: number;
  readonly turns: number;
}

export interface BayState {
  /** Null until the first snapshot. */
  readonly bay: Bay | null;
  readonly progress: Progress | null;
  readonly result: Result | null;
  readonly gauges: ReadonlyMap<string, GaugeState>;
  /** The turns of the present or last spin, oldest first. */
  readonly turnsAt: readonly TurnsAt[];
  /** The capture whose spin ended and whose result is still to come; null when none is. */
  readonly awaited: { readonly capture: string; readonly patience: number } | null;
  /** The station speaks of something this state does not know: a new snapshot is needed. */
  readonly stale: boolean;
}

/** A result that has not come after this many reports of the next capture will not come. */
const reportsToWait = 5;

export const nothingKnown: BayState = {
  bay: null,
  progress: null,
  result: null,
  gauges: new Map(),
  turnsAt: [],
  awaited: null,
  stale: true,
};

export function apply(state: BayState, message: Message): BayState {
  switch (message.kind) {
    case 'snapshot':
      return fromSnapshot(state, message.bay);
    case 'progress':
      return withProgress(state, message.progress);
    case 'gauge':
      return { ...state, gauges: new Map(state.gauges).set(message.gauge.gauge, message.gauge) };
    case 'result':
      return withResult(state, message.result);
  }
}

/** The gauge that serves the point, as last heard of; null when it is not known. */
export function gaugeOf(state: BayState): GaugeState | null {
  const gauge = state.bay?.gauge;
  return gauge ? (state.gauges.get(gauge) ?? null) : null;
}

/** What the screen is about. */
export type Stage = 'unknown' | 'idle' | 'cautions' | 'waiting' | 'running' | 'working' | 'result';

export function stageOf(state: BayState): Stage {
  const { bay, progress, result } = state;
  if (bay === null) return 'unknown';
  if (bay.job === null || bay.point === null || bay.phase === 'idle') return 'idle';
  if (progress?.phase === 'running') return 'running';
  if (state.awaited !== null) return 'working';
  if (bay.cautions.length > 0 && !bay.cautions_read) return 'cautions';
  return result !== null ? 'result' : 'waiting';
}

function fromSnapshot(state: BayState, bay: Bay): BayState {
  const sameSpin = bay.progress !== null && bay.progress.capture === state.progress?.capture;
  return {
    bay,
    progress: bay.progress,
    result: bay.result,
    gauges: new Map(bay.gauges.map((gauge) => [gauge.gauge, gauge])),
    turnsAt: sameSpin ? state.turnsAt : noted([], bay.progress),
    awaited: awaitedAfter(null, bay.progress, null, bay.result),
    stale: false,
  };
}

function withProgress(state: BayState, progress: Progress): BayState {
  const known = state.bay?.at_work.find((place) => place.gauge === progress.gauge);
  const isKnown = known?.job === progress.job && known.point === progress.point;
  const isHere = isKnown && state.bay?.gauge === progress.gauge;
  if (progress.phase === 'stood-down') {
    const isGone = isHere ? progress.capture === (state.progress?.capture ?? state.bay.capture) : isKnown;
    return isGone ? { ...state, stale: true } : state;
  }
  if (!isKnown) return { ...state, stale: true };
  if (!isHere) return state;   // another gauge's own affair
  if (isOlder(progress, state.progress)) return state;

  const newSpin = progress.phase === 'running' && state.progress?.phase !== 'running';
  return {
    ...state,
    progress,
    turnsAt: noted(newSpin ? [] : state.turnsAt, progress),
    awaited: awaitedAfter(state.awaited, progress, state.progress, state.result),
  };
}

function withResult(state: BayState, result: Result): BayState {
  if (!isOurs(state, result)) return state;
  const isOld = state.result !== null && Date.parse(result.at) < Date.parse(state.result.at);
  if (isOld) return state;
  return { ...state, result, awaited: state.awaited?.capture === result.capture ? null : state.awaited };
}

function isOurs(state: BayState, of: { job: string; point: string }): boolean {
  return state.bay !== null && state.bay.job === of.job && state.bay.point === of.point;
}

/** Whether a message tells of an earlier moment of the same capture than what is known. */
function isOlder(progress: Progress, known: Progress | null): boolean {
  if (known === null || known.capture !== progress.capture) return false;
  const order = { waiting: 0, running: 1, ended: 2, 'stood-down': 2 };
  if (order[progress.phase] !== order[known.phase]) return order[progress.phase] < order[known.phase];
  return progress.now !== null && known.now !== null && progress.now < known.now;
}

/** A result is awaited from the end of a spin, which the wait of the next capture tells as well as its own last report. */
function awaitedAfter(awaited: BayState['awaited'], progress: Progress | null, before: Progress | null, result: Result | null): BayState['awaited'] {
  if (progress === null || progress.phase === 'running') return null;
  const ended =
    progress.phase === 'ended' ? progress.capture
    : before?.phase === 'running' && before.capture !== progress.capture ? before.capture
    : null;
  if (ended !== null) return ended === result?.capture ? null : { capture: ended, patience: reportsToWait };
  return awaited !== null && awaited.patience > 0 ? { ...awaited, patience: awaited.patience - 1 } : null;
}

function noted(turnsAt: readonly TurnsAt[], progress: Progress | null): readonly TurnsAt[] {
  if (progress === null || progress.phase === 'waiting' || progress.now === null) return turnsAt;
  const start = turnsAt.length === 0 && progress.started !== null ? [{ t: progress.started, turns: 0 }] : turnsAt;
  return [...start, { t: progress.now, turns: progress.count }];
}
