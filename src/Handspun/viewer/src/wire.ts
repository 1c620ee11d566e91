// What the station sends, as it sends it. Lengths are millimetres, angles degrees, times seconds unless a name says otherwise.

export type Unit = 'in' | 'mm';

/** One batch of readings; `t` counts on the gauge's own clock, which read zero at the wall-clock time `t0`. */
export interface Readings {
  readonly t0: string;
  readonly t: readonly number[];
  readonly mm: readonly number[];
}

export type GaugeCondition = 'reading' | 'silent' | 'absent' | 'not-permitted' | 'lost' | 'offline';

export interface GaugeState {
  readonly gauge: string;
  readonly state: GaugeCondition;
  /** Plain words: what is wrong and what to do. */
  readonly sentence: string;
  readonly since?: string | null;
  readonly profile?: string | null;
  readonly port?: string | null;
  readonly readings?: number;
  readonly unreadable?: number;
  readonly unreadable_per_s?: number;
  readonly readings_per_s?: number;
  readonly not_sent?: number;
}

export interface Progress {
  readonly capture: string;
  readonly job: string;
  readonly point: string;
  readonly gauge: string;
  readonly phase: 'waiting' | 'turning' | 'ended' | 'stood-down';
  /** Gauge clock where the capture starts; null while waiting. */
  readonly started: number | null;
  /** Gauge clock of the newest reading. */
  readonly now: number | null;
  readonly turns: number;
  readonly turns_wanted: number;
  readonly turns_per_s: number | null;
  readonly readings: number;
  readonly readings_per_turn: number | null;
  readonly tir_mm: number | null;
  readonly tir_u95_mm: number | null;
  readonly sentence: string | null;
}

export interface Limit {
  readonly lower_mm: number | null;
  readonly upper_mm: number | null;
  readonly source: string | null;
  readonly confirmed: boolean;
  readonly confirmed_by: string | null;
}

export interface Warning {
  readonly code: string;
  readonly sentence: string;
}

export interface Result {
  readonly record: string;
  readonly job: string;
  readonly point: string;
  readonly capture: string;
  readonly gauge: string;
  readonly at: string;
  readonly status: 'ok' | 'incomplete';
  readonly ended: string;
  readonly turns: number | null;
  readonly tir_mm: number | null;
  readonly tir_u95_mm: number | null;
  readonly verdict: 'within' | 'over' | 'undecided' | null;
  readonly limit: Limit | null;
  readonly warnings: readonly Warning[];
  /** What is missing for a result, when there is none. */
  readonly missing: string | null;
  readonly sentence: string | null;
}

/** The whole of what the bay shows at one moment. */
export interface Bay {
  readonly phase: 'idle' | 'waiting' | 'turning';
  readonly unit: Unit;
  readonly job: string | null;
  readonly job_title: string | null;
  readonly bike: string | null;
  readonly point: string | null;
  readonly point_title: string | null;
  readonly gauge: string | null;
  readonly capture: string | null;
  readonly turns_wanted: number | null;
  readonly limit: Limit | null;
  readonly progress: Progress | null;
  readonly trace: { readonly t: readonly number[]; readonly mm: readonly number[] } | null;
  readonly result: Result | null;
  readonly gauges: readonly GaugeState[];
  readonly cautions: readonly string[];
  readonly cautions_read: boolean;
}
