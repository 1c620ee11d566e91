import assert from 'node:assert/strict';
import { test } from 'node:test';
import { apply, nothingKnown, type BayState, type Message } from '../src/bay-state';
import { viewOf } from '../src/bay-view';
import { momentBetween, spoken, type Moment } from '../src/moments';
import { isPedal } from '../src/pedal';
import { bay, gauge, progress, result, turning } from './sample';

const snapshot: Message = { kind: 'snapshot', bay };
const onTopic = (changes = {}): Message => ({ kind: 'progress', progress: { ...turning, ...changes } });

/** The moments of a story, one message after another. */
function momentsOf(...messages: Message[]): (Moment | null)[] {
  let state: BayState = nothingKnown;
  return messages.map((message) => {
    const before = viewOf(state);
    state = apply(state, message);
    return momentBetween(before, viewOf(state));
  });
}

test('a spin starts, is enough, and ends in a verdict, each told once', () => {
  assert.deepEqual(
    momentsOf(snapshot, onTopic({ count: 0.2 }), onTopic({ now: 16, count: 3.1 }), onTopic({ now: 17, count: 3.4 }), onTopic({ phase: 'ended', now: 18, count: 3.4 }), { kind: 'result', result }),
    [null, 'started', 'enough', null, null, 'within'],
  );
});

test('a result that was there before the screen looked is told to nobody', () => {
  assert.deepEqual(momentsOf({ kind: 'snapshot', bay: { ...bay, result } }, { kind: 'progress', progress: { ...progress, now: 13 } }), [null, null]);
});

test('a cable that comes out is told', () => {
  assert.deepEqual(momentsOf(snapshot, { kind: 'gauge', gauge: { ...gauge, state: 'lost' } }), [null, 'trouble']);
});

test('the verdict is spoken with the value as a mechanic says it', () => {
  const view = viewOf([snapshot, onTopic(), onTopic({ phase: 'ended', now: 18 }), { kind: 'result', result } as Message].reduce(apply, nothingKnown));
  assert.equal(spoken('within', view), 'Pinion shaft runout. 3.1 thousandths. Within the limit');
});

test('any key is the pedal, but none that moves about, types or is held down', () => {
  const key = (name: string, more = {}) => ({ key: name, repeat: false, ctrlKey: false, altKey: false, metaKey: false, ...more });
  assert.equal(isPedal(key('b'), false), true);
  assert.equal(isPedal(key('PageDown'), false), true);
  assert.equal(isPedal(key('Tab'), false), false);
  assert.equal(isPedal(key('F5'), false), false);
  assert.equal(isPedal(key('b', { repeat: true }), false), false);
  assert.equal(isPedal(key('r', { ctrlKey: true }), false), false);
  assert.equal(isPedal(key('b'), true), false);
});
