import assert from 'node:assert/strict';
import { test } from 'node:test';
import { decimalsFor, digits, inUnit, length, uncertainty, uncertaintyDigits } from '../src/units';

test('one inch is 25.4 mm exactly (definition of 1959)', () => {
  assert.equal(inUnit(25.4, 'in'), 1);
  assert.equal(inUnit(25.4, 'mm'), 25.4);
});

test('a length without uncertainty has four decimals in inches and three in millimetres', () => {
  assert.equal(length(0.0791, 'in'), '0.0031\u00a0in');
  assert.equal(length(0.0791, 'mm'), '0.079\u00a0mm');
});

test('a length has no more decimals than two significant digits of its uncertainty need', () => {
  assert.equal(digits(1.2345, 'mm', 0.15), '1.23');
  assert.equal(digits(1.2345, 'mm', 0.015), '1.234');
  assert.equal(decimalsFor('mm', 12), 0);
});

test('a length is never finer than the unit allows, however small the uncertainty', () => {
  assert.equal(decimalsFor('in', 0.0000254), 4);
  assert.equal(decimalsFor('mm', 0.00001), 3);
});

test('an uncertainty is rounded up, so that it is never shown smaller than it is', () => {
  assert.equal(uncertaintyDigits(0.0042, 'mm'), '0.005');
  assert.equal(uncertaintyDigits(0.0042, 'in'), '0.0002');
  assert.equal(uncertaintyDigits(0.00001, 'in'), '0.0001');
  assert.equal(uncertainty(0.0042, 'in'), '±\u00a00.0002\u00a0in');
});

test('an uncertainty that is already whole at its last decimal stays as it is', () => {
  for (let tenths = 1; tenths < 100; tenths++) {
    const inches = tenths / 10_000;
    assert.equal(uncertaintyDigits(inches * 25.4, 'in'), inches.toFixed(decimalsFor('in', inches * 25.4)));
  }
});

test('a negative length wears a minus sign, and a rounded zero none', () => {
  assert.equal(digits(-0.308, 'mm'), '\u22120.308');
  assert.equal(digits(-0.0001, 'mm'), '0.000');
});
