// Draws the trace. The line breaks where readings are missing; whole turns are ruled across it.

import uPlot from 'uplot';
import { gapSeconds, type TraceMemory } from './trace-memory';
import type { TraceWindow } from './trace-window';
import type { TurnMark } from './turn-marks';
import { inDigits, inUnit } from './units';
import type { Unit } from './wire';

/** The least height of the drawing: a shaft at rest is a flat line, not its noise blown up. */
const leastSpanMm = 0.02;

/** Readings of a spin that has ended may still be on their way for this long. */
const settleSeconds = 2;

export class Trace {
  readonly #host: HTMLElement;
  readonly #plot: uPlot;
  #x = new Float64Array(1024);
  #y = new Float64Array(1024);
  #marks: readonly TurnMark[] = [];
  #unit: Unit = 'in';
  #to = 0;
  #span = 15;
  #drawn = '';

  constructor(host: HTMLElement) {
    this.#host = host;
    this.#plot = new uPlot(this.#options(), [[], []], host);
    new ResizeObserver(() => this.#fit()).observe(host);
    matchMedia('(prefers-color-scheme: dark)').addEventListener('change', () => this.#plot.redraw(false));
  }

  draw(memory: TraceMemory, window: TraceWindow, marks: readonly TurnMark[], unit: Unit): void {
    const settled = window.held && memory.newest > window.to + settleSeconds;
    const key = settled ? `${window.from} ${window.to} ${unit}` : '';
    if (settled && key === this.#drawn) return;
    this.#drawn = key;
    const { t, mm } = memory.between(window.from, window.to);
    if (this.#x.length < t.length) {
      this.#x = new Float64Array(t.length * 2);
      this.#y = new Float64Array(t.length * 2);
    }
    for (let i = 0; i < t.length; i++) {
      this.#x[i] = t[i]! - window.to;
      this.#y[i] = inUnit(mm[i]!, unit);
    }
    this.#marks = marks;
    this.#unit = unit;
    this.#to = window.to;
    this.#span = window.to - window.from;
    this.#plot.setData([this.#x.subarray(0, t.length), this.#y.subarray(0, t.length)]);
  }

  #fit(): void {
    const { clientWidth, clientHeight } = this.#host;
    if (clientWidth > 0 && clientHeight > 0) this.#plot.setSize({ width: clientWidth, height: clientHeight });
  }

  #colour(name: string): string {
    return getComputedStyle(this.#host).getPropertyValue(name).trim();
  }

  #options(): uPlot.Options {
    const axis = {
      font: '500 15px "Barlow Semi Condensed", sans-serif',
      stroke: () => this.#colour('--ink-soft'),
      grid: { stroke: () => this.#colour('--line-faint'), width: 1 },
      ticks: { show: false },
    };
    return {
      width: this.#host.clientWidth || 300,
      height: this.#host.clientHeight || 150,
      cursor: { show: false },
      legend: { show: false },
      scales: {
        x: { time: false, range: () => [-(this.#span || 1), 0] },
        y: { range: (_, low, high) => padded(low, high, inUnit(leastSpanMm, this.#unit)) },
      },
      axes: [
        { ...axis, size: 28, space: 110, values: (_, splits) => splits.map((at) => (at === 0 ? '' : `\u2212${Math.round(-at * 10) / 10} s`)) },
        { ...axis, size: 74, space: 24, values: (_, splits) => splits.map((at) => inDigits(at, this.#unit)) },
      ],
      series: [
        {},
        {
          stroke: () => this.#colour('--trace'),
          width: 2.5,
          points: { show: false },
          gaps: (plot, _, from, to) => gaps(plot, from, to),
        },
      ],
      hooks: { draw: [(plot) => this.#ruleTurns(plot)] },
    };
  }

  #ruleTurns(plot: uPlot): void {
    const { ctx, bbox } = plot;
    const px = devicePixelRatio;
    ctx.save();
    ctx.font = `600 ${Math.round(16 * px)}px "Barlow Semi Condensed", sans-serif`;
    ctx.textAlign = 'right';
    ctx.textBaseline = 'top';
    ctx.lineJoin = 'round';
    for (const { turn, t } of this.#marks) {
      const at = t - this.#to;
      if (at < -this.#span || at > 0) continue;
      const x = Math.round(plot.valToPos(at, 'x', true));
      ctx.strokeStyle = this.#colour('--line');
      ctx.lineWidth = 1.5 * px;
      ctx.beginPath();
      ctx.moveTo(x, bbox.top);
      ctx.lineTo(x, bbox.top + bbox.height);
      ctx.stroke();
      // A halo keeps the number readable where the trace runs through it.
      ctx.strokeStyle = this.#colour('--well');
      ctx.lineWidth = 5 * px;
      ctx.strokeText(String(turn), x - 6 * px, bbox.top + 3 * px);
      ctx.fillStyle = this.#colour('--ink');
      ctx.fillText(String(turn), x - 6 * px, bbox.top + 3 * px);
    }
    ctx.restore();
  }
}

function gaps(plot: uPlot, from: number, to: number): uPlot.Series.Gaps {
  const x = plot.data[0];
  const found: uPlot.Series.Gaps = [];
  for (let i = Math.max(from, 1); i <= to; i++) {
    if (x[i]! - x[i - 1]! > gapSeconds) {
      found.push([Math.round(plot.valToPos(x[i - 1]!, 'x', true)), Math.round(plot.valToPos(x[i]!, 'x', true))]);
    }
  }
  return found;
}

function padded(low: number | null, high: number | null, leastSpan: number): [number, number] {
  if (low === null || high === null) return [-leastSpan / 2, leastSpan / 2];
  const middle = (low + high) / 2;
  const half = Math.max((high - low) * 0.58, leastSpan / 2);
  return [middle - half, middle + half];
}
