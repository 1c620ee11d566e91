import assert from 'node:assert/strict';
import { test } from 'node:test';
import { apply, nothingKnown, stageOf } from '../src/bay-state';
import { limitScale } from '../src/limit-scale';
import { TraceMemory } from '../src/trace-memory';
import { traceWindow } from '../src/trace-window';
import { turnMarks } from '../src/turn-marks';
import { bay, result, turning } from './sample';

const t0 = '2026-11-25T10:00:00.000Z';

test('readings come back in order, and twice-told ones once', () => {
  const memory = new TraceMemory();
  memory.push([1, 2, 3], [0.1, 0.2, 0.3], t0);
  memory.push([2, 3, 4], [9, 9, 0.4], t0);
  assert.deepEqual([...memory.between(0, 10).t], [1, 2, 3, 4]);
  assert.deepEqual([...memory.between(0, 10).mm], [0.1, 0.2, 0.3, 0.4]);
});

test('a stretch is cut at both of its ends', () => {
  const memory = new TraceMemory();
  memory.push([1, 2, 3, 4, 5], [1, 2, 3, 4, 5]);
  assert.deepEqual([...memory.between(2, 4).mm], [2, 3, 4]);
});

test('a minute is kept and no more, for as long as the screen is on', () => {
  const memory = new TraceMemory();
  for (let second = 0; second < 1000; second++) {
    const t = Array.from({ length: 100 }, (_, i) => second + i / 100);
    memory.push(t, t, t0);
  }
  assert.equal(memory.size, 6001);
  assert.equal(memory.newest, 999.99);
  assert.equal(memory.between(0, 1000).t[0], 939.99);
});

test('a faster gauge than memory was made for keeps its newest readings', () => {
  const memory = new TraceMemory();
  const t = Array.from({ length: 100_000 }, (_, i) => i / 2000);
  memory.push(t, t, t0);
  assert.equal(memory.newest, 99_999 / 2000);
  assert.ok(memory.size >= 12_000 && memory.size <= 24_000);
});

test('a gauge whose clock was started anew starts a new trace', () => {
  const memory = new TraceMemory();
  memory.push([50, 51], [1, 1], t0);
  memory.push([0.1, 0.2], [2, 2], '2026-11-25T10:00:55.000Z');
  assert.deepEqual([...memory.between(0, 100).mm], [2, 2]);
});

test('a clock that was started anew is also seen when only its times tell', () => {
  const memory = new TraceMemory();
  memory.push([50, 51], [1, 1]);
  memory.push([0.1, 0.2], [2, 2], t0);
  assert.equal(memory.size, 2);
});

test('what is not a number is not drawn', () => {
  const memory = new TraceMemory();
  memory.push([1, Number.NaN, 3], [1, 2, Number.POSITIVE_INFINITY], t0);
  assert.equal(memory.size, 1);
});

test('whole turns are marked between the reports that enclose them', () => {
  const marks = turnMarks([{ t: 10, turns: 0 }, { t: 12, turns: 0.5 }, { t: 14, turns: 1.5 }, { t: 18, turns: 3.5 }]);
  assert.deepEqual(marks, [{ turn: 1, t: 13 }, { turn: 2, t: 15 }, { turn: 3, t: 17 }]);
});

test('a turn that ends exactly at a report is marked once', () => {
  assert.deepEqual(turnMarks([{ t: 0, turns: 0 }, { t: 2, turns: 1 }, { t: 4, turns: 1.9 }]), [{ turn: 1, t: 2 }]);
});

test('the trace follows a spin from its start and holds it afterwards', () => {
  let state = apply(nothingKnown, { kind: 'snapshot', bay });
  assert.deepEqual(traceWindow(state, stageOf(state), 12), { from: -3, to: 12, held: false });
  state = apply(state, { kind: 'progress', progress: { ...turning, now: 25 } });
  assert.deepEqual(traceWindow(state, stageOf(state), 25.1), { from: 12.5, to: 25.1, held: false });
  state = apply(state, { kind: 'progress', progress: { ...turning, phase: 'ended', now: 26, count: 3.1 } });
  state = apply(state, { kind: 'result', result });
  assert.deepEqual(traceWindow(state, stageOf(state), 90), { from: 12.5, to: 26, held: true });
});

test('the scale puts the result, its uncertainty and the limit in proportion', () => {
  const scale = limitScale(0.05, 0.01, { lower_mm: null, upper_mm: 0.1, source: null, confirmed: true, confirmed_by: null });
  assert.ok(scale);
  assert.ok(Math.abs(scale.value / scale.upper! - 0.5) < 1e-12);
  assert.ok(Math.abs((scale.to - scale.from) / scale.value - 0.4) < 1e-12);
});

test('a size is drawn about its limits, where a scale from zero would show nothing', () => {
  const scale = limitScale(21.412, 0.002, { lower_mm: 21.4, upper_mm: 21.425, source: null, confirmed: true, confirmed_by: null });
  assert.ok(scale);
  assert.ok(Math.abs((scale.value - scale.lower!) / (scale.upper! - scale.lower!) - 12 / 25) < 1e-9);
  assert.ok(scale.lower! > 0.1 && scale.upper! < 0.9);
});

test('there is no scale without a limit or without a value', () => {
  assert.equal(limitScale(0.05, 0.01, null), null);
  assert.equal(limitScale(null, null, result.limit), null);
});

test('a result far over the limit is still on the scale', () => {
  const scale = limitScale(1, 0.1, result.limit);
  assert.ok(scale && scale.to < 1 && scale.upper! < scale.value);
});
