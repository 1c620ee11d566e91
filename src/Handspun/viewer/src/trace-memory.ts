// The readings of the last minute, in two arrays of fixed size: a screen that stays on for a week uses no more memory
// than one that stays on for a minute.

const secondsKept = 60;
const mostReadings = 24_000;

/** Seconds without a reading after which the line is broken: it does not claim what was not measured. */
export const gapSeconds = 0.75;

/** Two readings of a clock's start that differ by more than this are two clocks. */
const sameClockSeconds = 1;

/** How far back a batch may reach while the clock's start is not known; batches held back during a snapshot do so. */
const lateSeconds = 5;

export class TraceMemory {
  readonly #t = new Float64Array(mostReadings);
  readonly #mm = new Float64Array(mostReadings);
  #start = 0;
  #end = 0;
  #t0 = Number.NaN;

  get size(): number {
    return this.#end - this.#start;
  }

  /** The gauge clock of the newest reading; NaN when there is none. */
  get newest(): number {
    return this.size > 0 ? this.#t[this.#end - 1]! : Number.NaN;
  }

  get newestMm(): number {
    return this.size > 0 ? this.#mm[this.#end - 1]! : Number.NaN;
  }

  clear(): void {
    this.#start = this.#end = 0;
    this.#t0 = Number.NaN;
  }

  /**
   * Takes readings in; those already held are passed over. A gauge clock that was started anew (another `t0` or, where
   * none is known, times well before the newest) empties the memory first.
   */
  push(t: readonly number[], mm: readonly number[], t0?: string): void {
    const wall = t0 === undefined ? Number.NaN : Date.parse(t0);
    const first = t[0];
    const anotherClock = Number.isNaN(this.#t0)
      ? first !== undefined && first < this.newest - lateSeconds
      : Math.abs(wall - this.#t0) > sameClockSeconds * 1000;
    if (anotherClock) this.clear();
    if (!Number.isNaN(wall)) this.#t0 = wall;

    const count = Math.min(t.length, mm.length);
    for (let i = 0; i < count; i++) {
      const at = t[i]!;
      const value = mm[i]!;
      if (!Number.isFinite(at) || !Number.isFinite(value) || at <= this.newest) continue;
      if (this.#end === mostReadings) this.#makeRoom();
      this.#t[this.#end] = at;
      this.#mm[this.#end] = value;
      this.#end++;
    }
    this.#forget();
  }

  /** The readings from `from` to `to` (gauge clock), as views that hold until the next push. */
  between(from: number, to: number): { t: Float64Array; mm: Float64Array } {
    const first = this.#firstAt(from);
    let last = this.#firstAt(to);
    while (last < this.#end && this.#t[last]! <= to) last++;
    return { t: this.#t.subarray(first, last), mm: this.#mm.subarray(first, last) };
  }

  #firstAt(time: number): number {
    let low = this.#start;
    let high = this.#end;
    while (low < high) {
      const middle = (low + high) >> 1;
      if (this.#t[middle]! < time) low = middle + 1;
      else high = middle;
    }
    return low;
  }

  #forget(): void {
    const oldest = this.newest - secondsKept;
    while (this.#start < this.#end && this.#t[this.#start]! < oldest) this.#start++;
  }

  #makeRoom(): void {
    const kept = Math.min(this.size, mostReadings >> 1);
    this.#t.copyWithin(0, this.#end - kept, this.#end);
    this.#mm.copyWithin(0, this.#end - kept, this.#end);
    this.#start = 0;
    this.#end = kept;
  }
}
