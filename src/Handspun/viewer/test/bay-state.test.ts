import assert from 'node:assert/strict';
import { test } from 'node:test';
import { apply, gaugeOf, nothingKnown, stageOf, type BayState, type Message } from '../src/bay-state';
import type { Bay } from '../src/wire';
import { bay, gauge, progress, result, turning } from './sample';

const after = (...messages: Message[]): BayState => messages.reduce(apply, nothingKnown);
const snapshot = (changes: Partial<Bay> = {}): Message => ({ kind: 'snapshot', bay: { ...bay, ...changes } });
const onTopic = (changes = {}): Message => ({ kind: 'progress', progress: { ...turning, ...changes } });

test('before the first snapshot nothing is known and one is needed', () => {
  assert.equal(stageOf(nothingKnown), 'unknown');
  assert.equal(nothingKnown.stale, true);
});

test('a snapshot of an idle bay shows an idle bay', () => {
  assert.equal(stageOf(after(snapshot({ phase: 'idle', job: null, point: null, progress: null }))), 'idle');
});

test('a snapshot in mid-capture is turning at once, with the turns it tells', () => {
  const state = after(snapshot({ phase: 'running', progress: turning }));
  assert.equal(stageOf(state), 'running');
  assert.deepEqual(state.turnsAt, [{ t: 13, turns: 0 }, { t: 15, turns: 1.2 }]);
});

test('cautions nobody has read come before everything but a spin', () => {
  const unread = { cautions: ['The wheel is off the ground.'], cautions_read: false, result };
  assert.equal(stageOf(after(snapshot(unread))), 'cautions');
  assert.equal(stageOf(after(snapshot(unread), onTopic())), 'running');
});

test('a spin that ended waits for its result, not for an older one', () => {
  const older = { ...result, record: 'r0', capture: 'c6', at: '2026-11-25T09:00:00Z' };
  const ended = onTopic({ phase: 'ended', now: 20, count: 3.1 });
  assert.equal(stageOf(after(snapshot({ result: older }), onTopic(), ended)), 'working');
  assert.equal(stageOf(after(snapshot({ result: older }), onTopic(), ended, { kind: 'result', result })), 'result');
});

test('a result stays while the next capture waits and leaves when its spin starts', () => {
  const done = after(snapshot(), onTopic(), onTopic({ phase: 'ended' }), { kind: 'result', result });
  const rearmed = apply(done, { kind: 'progress', progress: { ...progress, capture: 'c8', now: 22 } });
  assert.equal(stageOf(rearmed), 'result');
  assert.equal(stageOf(apply(rearmed, onTopic({ capture: 'c8', started: 30, now: 31, count: 0.2 }))), 'running');
});

test('the wait of the next capture tells that a spin ended, and its result is awaited', () => {
  const rearmed: Message = { kind: 'progress', progress: { ...progress, capture: 'c8', now: 22 } };
  const state = after(snapshot(), onTopic(), rearmed);
  assert.equal(stageOf(state), 'working');
  assert.equal(stageOf(apply(state, { kind: 'result', result })), 'result');
});

test('a result that never comes is not awaited for ever', () => {
  const reports = Array.from({ length: 10 }, (_, i): Message => ({ kind: 'progress', progress: { ...progress, capture: 'c8', now: 22 + i } }));
  assert.equal(stageOf(after(snapshot(), onTopic(), ...reports)), 'waiting');
});

test('a new spin counts its turns anew', () => {
  const state = after(snapshot(), onTopic(), onTopic({ phase: 'ended' }), onTopic({ capture: 'c8', started: 30, now: 31, count: 0.2 }));
  assert.deepEqual(state.turnsAt, [{ t: 30, turns: 0 }, { t: 31, turns: 0.2 }]);
});

test('a message from an earlier moment of the capture changes nothing', () => {
  const state = after(snapshot(), onTopic({ now: 16, count: 1.6 }));
  assert.equal(apply(state, onTopic({ now: 15 })), state);
  assert.equal(apply(state, { kind: 'progress', progress }), state);
});

test('a result older than the one shown does not replace it', () => {
  const state = after(snapshot({ result }));
  const older = { ...result, record: 'r0', at: '2026-11-24T10:00:00Z' };
  assert.equal(apply(state, { kind: 'result', result: older }).result?.record, 'r1');
});

test('a result of another point is passed over', () => {
  assert.equal(after(snapshot(), { kind: 'result', result: { ...result, point: 'cam-end-play' } }).result, null);
});

for (const [what, change] of Object.entries({
  job: { job: '1041' },
  point: { point: 'cam-end-play' },
  gauge: { gauge: 'other' },
  end: { phase: 'stood-down' },
})) {
  test(`progress that tells of another ${what} asks for a new snapshot`, () => {
    const state = after(snapshot());
    assert.equal(state.stale, false);
    assert.equal(apply(state, onTopic(change)).stale, true);
  });
}

test('an idle bay that hears of a capture asks for a new snapshot', () => {
  assert.equal(after(snapshot({ phase: 'idle', job: null, point: null, progress: null, at_work: [] }), onTopic()).stale, true);
});

const beside = { gauge: 'other', job: '1042', point: 'drive-side-runout', point_title: 'Drive-side shaft runout' };

test('another gauge that measures its own point changes nothing here, and is missed when it is let go', () => {
  const both = after(snapshot({ at_work: [...bay.at_work, beside] }));
  assert.equal(apply(both, onTopic(beside)), both);
  assert.equal(apply(both, onTopic({ ...beside, point: 'cam-end-play' })).stale, true);
  assert.equal(apply(both, onTopic({ ...beside, phase: 'stood-down' })).stale, true);
});

test('the end of a capture this bay never had is none of its business', () => {
  assert.equal(after(snapshot(), onTopic({ capture: 'elsewhere', phase: 'stood-down' })).stale, false);
});

test('a gauge that drops out is known at once', () => {
  const state = after(snapshot(), { kind: 'gauge', gauge: { ...gauge, state: 'lost', sentence: 'The cable came out.' } });
  assert.equal(gaugeOf(state)?.state, 'lost');
});

test('a new snapshot of the same spin keeps the turns already seen', () => {
  const state = after(snapshot(), onTopic({ now: 14, count: 0.5 }), onTopic(), snapshot({ phase: 'running', progress: turning }));
  assert.equal(state.turnsAt.length, 3);
});
