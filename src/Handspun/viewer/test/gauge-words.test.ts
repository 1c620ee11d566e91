import assert from 'node:assert/strict';
import { test } from 'node:test';
import { gaugeWords } from '../src/gauge-words';
import { gauge } from './sample';

const at = new Date(2026, 2, 14, 9, 5, 3).toISOString();

test('a gauge that has stopped says when it was last heard', () => {
  assert.equal(gaugeWords({ ...gauge, state: 'lost', sentence: 'Plug it in.', last_reading: at }).detail, 'Plug it in. Its last reading came at 09:05:03.');
  assert.equal(gaugeWords({ ...gauge, state: 'silent', sentence: 'Switch it on.', last_reading: null }).detail, 'Switch it on.');
  assert.equal(gaugeWords({ ...gauge, last_reading: at }).detail, gauge.sentence);
});
