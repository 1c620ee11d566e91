import assert from 'node:assert/strict';
import { test } from 'node:test';
import { digits, inUnit, takeOn, uncertainty } from '../src/units';

test('one inch is 25.4 mm exactly (by definition since 1959)', () => {
  assert.equal(inUnit(25.4, 'in'), 1);
  assert.equal(inUnit(25.4, 'mm'), 25.4);
});

test('a length has four decimals in inches and three in millimetres', () => {
  assert.equal(digits(0.0791, 'in'), '0.0031');
  assert.equal(digits(0.0791, 'mm'), '0.079');
});

test('an uncertainty is rounded up, so that it is never shown smaller than it is', () => {
  assert.equal(uncertainty(0.0042, 'mm'), '±\u00a00.005\u00a0mm');
  assert.equal(uncertainty(0.0042, 'in'), '±\u00a00.0002\u00a0in');
  assert.equal(uncertainty(0.0001, 'in'), '±\u00a00.0001\u00a0in');
});

test('an uncertainty that is whole at its last decimal stays as it is', () => {
  for (let step = 1; step < 1000; step++) {
    assert.equal(uncertainty((step / 10_000) * 25.4, 'in'), `±\u00a0${(step / 10_000).toFixed(4)}\u00a0in`);
    assert.equal(uncertainty(step / 1000, 'mm'), `±\u00a0${(step / 1000).toFixed(3)}\u00a0mm`);
  }
});

test('a negative length wears a minus sign, and a rounded zero none', () => {
  assert.equal(digits(-0.308, 'mm'), '\u22120.308');
  assert.equal(digits(-0.0001, 'mm'), '0.000');
});

test('the shop says how many places are shown, of its own unit', () => {
  takeOn('in-3');
  assert.equal(digits(0.0791, 'in'), '0.003');
  assert.equal(uncertainty(0.0042, 'in'), '±\u00a00.001\u00a0in');
  assert.equal(digits(0.0791, 'mm'), '0.079');
  for (const nothing of [undefined, '', 'cm-3', 'in-9', 'in']) takeOn(nothing);
  assert.equal(digits(0.0791, 'in'), '0.003');
  takeOn('in-4');
  assert.equal(digits(0.0791, 'in'), '0.0031');
});
