import assert from 'node:assert/strict';
import { test } from 'node:test';
import { dialOf, dialPicture } from '../src/dial';
import { result } from './sample';

const spot = { high_spot_deg: 160.4, high_spot_u95_deg: 8.2, angle_reference: 'mark' };

test('a high spot from the mark says how far to turn on and where to paint', () => {
  assert.equal(dialOf({ ...result, ...spot })?.sentence, 'High spot: turn on 160° from the mark (± 9°). It is then under the plunger: paint it there.');
});

test('an angle from the first reading, or one too unsure for a brush, is no place for paint', () => {
  assert.equal(dialOf({ ...result, ...spot, angle_reference: 'first-reading' }), null);
  assert.equal(dialOf({ ...result, ...spot, high_spot_u95_deg: 75 }), null);
  assert.equal(dialOf(result), null);
  assert.equal(dialOf(null), null);
});

test('an angle just short of a whole turn is told as none', () => {
  assert.match(dialOf({ ...result, ...spot, high_spot_deg: 359.7 })?.sentence ?? '', /turn on 0°/);
});

test('a quarter turn is drawn to the right of the top', () => {
  const dial = dialOf({ ...result, ...spot, high_spot_deg: 90 });
  assert.ok(dial);
  assert.match(dialPicture(dial), /cx="186.00" cy="100.00"/);
});
