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
  /** When the newest reading came, by the station's wall clock. */
  readonly last_reading?: string | null;
  readonly pulses?: number;
  readonly not_sent?: number;
}

export interface Progress {
  readonly capture: string;
  readonly job: string;
  readonly point: string;
  readonly gauge: string;
  readonly phase: 'waiting' | 'running' | 'ended' | 'stood-down';
  /** Gauge clock where the capture starts; null while waiting. */
  readonly started: number | null;
  /** Gauge clock of the newest reading. */
  readonly now: number | null;
  readonly readings: number;
  /** Turns, cycles or passes. */
  readonly count: number;
  readonly wanted: number;
  /** What is held against the limit, so far. */
  readonly value_mm: number | null;
  readonly value_u95_mm: number | null;
  readonly sentence: string | null;
  /** What makes the result so far less sure than it looks. */
  readonly warnings: readonly Warning[];
  /** Only where a shaft turns. */
  readonly turns_per_s?: number | null;
  readonly readings_per_turn?: number | null;
  /** The largest peak that could hide between two readings. */
  readonly hidden_peak_mm?: number | null;
  readonly least_s_per_turn?: number | null;
  readonly s_to_go?: number | null;
  /** Only where a shaft is pushed and pulled, or a gauge is rocked: largest less smallest of what was found each time. */
  readonly spread_mm?: number | null;
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

/** A narrow place on a shaft that came back every turn. */
export interface Fault {
  readonly kind: 'raised' | 'scratch' | 'recess';
  readonly at_deg: number;
  readonly width_deg: number;
  readonly height_mm: number;
  readonly height_u95_mm: number;
  readonly seen_on_turns: number;
  readonly of_turns: number;
  readonly sentence: string;
}

/** The newest check of a gauge at the time of a record. */
export interface GaugeCheck {
  readonly at: string;
  readonly due_on: string;
  readonly by: string;
  readonly against: string;
  readonly error_mm: number;
  readonly error_u95_mm: number;
  readonly found: 'good' | 'undecided' | 'failed';
}

export interface Result {
  readonly record: string;
  readonly job: string;
  readonly point: string;
  readonly capture: string;
  readonly gauge: string;
  /** Null where it was never checked. */
  readonly gauge_check?: GaugeCheck | null;
  readonly at: string;
  readonly status: 'ok' | 'incomplete';
  readonly ended: string;
  readonly kind: string;
  readonly value_title: string;
  readonly value_mm: number | null;
  readonly value_u95_mm: number | null;
  /** Turns, cycles or passes that it rests on, as its kind counts. */
  readonly turns?: number | null;
  readonly cam_turns?: number | null;
  readonly cycles?: number | null;
  readonly passes?: number | null;
  /** Only where a shaft was pushed and pulled. */
  readonly by_cycle_mm?: readonly number[] | null;
  readonly spread_mm?: number | null;
  /** Only where a shaft turned; null where it is not known. */
  readonly high_spot_deg?: number | null;
  readonly high_spot_u95_deg?: number | null;
  /** Where zero degrees is: `first-reading`, `mark`, `index` or `encoder`. */
  readonly angle_reference?: string | null;
  readonly tir_by_turn_mm?: readonly number[] | null;
  readonly tir_with_faults_mm?: number | null;
  readonly faults?: readonly Fault[] | null;
  readonly verdict: 'within' | 'over' | 'undecided' | null;
  readonly limit: Limit | null;
  readonly warnings: readonly Warning[];
  /** What is missing for a result, when there is none. */
  readonly missing: string | null;
  readonly sentence: string | null;
}

export interface Words {
  readonly waiting: string;
  readonly running: string;
  readonly again: string;
  readonly so_far: string;
  readonly counted: string;
}

/** What one gauge of the bay measures. */
export interface Place {
  readonly gauge: string;
  readonly job: string;
  readonly point: string;
  readonly point_title: string;
}

/** What is said at a point that the rest of the job waits for. */
export interface Gate {
  readonly address: string;
  readonly if_over: string;
  readonly if_undecided: string;
}

/** One thing to type or to choose before a capture. */
export interface SetupField {
  readonly name: string;
  readonly label: string;
  readonly value: string;
  readonly choices: readonly { readonly code: string; readonly words: string }[] | null;
}

/** The whole of what the bay shows of one point at one moment. */
export interface Bay {
  readonly phase: 'idle' | 'waiting' | 'running';
  readonly unit: Unit;
  readonly job: string | null;
  readonly job_title: string | null;
  readonly bike: string | null;
  readonly point: string | null;
  readonly point_title: string | null;
  readonly gauge: string | null;
  readonly capture: string | null;
  readonly wanted: number | null;
  readonly kind: string | null;
  /** Null where the point is no gate. */
  readonly gate?: Gate | null;
  /** What is said of this kind of measurement. */
  readonly words: Words | null;
  /** Whether a mark of the mechanic says anything here. */
  readonly takes_marks?: boolean;
  /** What was said of the point before it is measured, in words. */
  readonly setup?: string | null;
  /** What of it changes from capture to capture, to be typed or chosen at the bay. */
  readonly place?: readonly SetupField[];
  /** What to heed at this point. */
  readonly heed?: readonly string[];
  readonly limit: Limit | null;
  readonly progress: Progress | null;
  readonly trace: { readonly t: readonly number[]; readonly mm: readonly number[] } | null;
  readonly result: Result | null;
  /** The step to the plan's next point that comes by itself. */
  readonly next?: { readonly point: string; readonly point_title: string; readonly at: string } | null;
  /** The point that such a step came from, where it can be taken back. */
  readonly before?: string | null;
  /** What all gauges of the bay measure, the point given last at the end. */
  readonly at_work: readonly Place[];
  readonly gauges: readonly GaugeState[];
  readonly cautions: readonly string[];
  readonly cautions_read: boolean;
}
