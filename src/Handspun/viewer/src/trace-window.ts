// Which stretch of the gauge's clock the trace shows.

import type { BayState, Stage } from './bay-state';

export interface TraceWindow {
  readonly from: number;
  readonly to: number;
  /** The spin is over: its drawing stays as it is, also when the readings are forgotten. */
  readonly held: boolean;
}

const idleSeconds = 15;
const shortestSeconds = 8;
const longestSeconds = 60;
const leadSeconds = 0.5;

/** The whole spin while it lasts and after it; otherwise the last seconds. `now` is the gauge's clock at this moment. */
export function traceWindow(state: BayState, stage: Stage, now: number): TraceWindow {
  const { progress, turnsAt } = state;
  if (stage === 'running' && progress?.started != null) {
    const from = Math.max(progress.started - leadSeconds, now - longestSeconds);
    return { from: Math.min(from, now - shortestSeconds), to: now, held: false };
  }
  const spun = turnsAt.length > 1 && (stage === 'working' || stage === 'result');
  if (spun) {
    const to = turnsAt.at(-1)!.t;
    return { from: Math.max(turnsAt[0]!.t - leadSeconds, to - longestSeconds), to, held: true };
  }
  return { from: now - idleSeconds, to: now, held: false };
}
