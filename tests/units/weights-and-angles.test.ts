import { expect, test } from 'vitest';
import { degrees, pounds, radians } from '../../core/base/quantity.ts';
import { parseWeight, printAngle, printWeight } from '../../core/units/index.ts';

test('a weight is pounds, or kilograms of 2.2046226218 lb (the pound is 0.45359237 kg by definition, 1959)', () => {
  expect(parseWeight(1250)).toBe(1250);
  expect(parseWeight('1250 lb')).toBe(1250);
  expect(parseWeight('1250')).toBe(1250);
  expect(parseWeight('1 kg')).toBeCloseTo(2.2046226218, 10);
  expect(parseWeight('600kg')).toBeCloseTo(1322.77357, 5);
  expect(parseWeight('68.0388555 kg')).toBe(150);
});

test.each(['', 'kg', '600 g', '1,250 lb', '12 stone', '-5 kg', '1e3', NaN, Infinity, '9'.repeat(400)])('%j is no weight', (value) => {
  expect(parseWeight(value)).toBeNull();
});

test('a weight is printed in the units of the project', () => {
  expect(printWeight(pounds(12.34), 'in')).toBe('12.3 lb');
  expect(printWeight(pounds(1250.4), 'in')).toBe('1250 lb');
  expect(printWeight(pounds(100), 'mm')).toBe('45.4 kg');
  expect(printWeight(pounds(-0.01), 'in')).toBe('0.0 lb');
  expect(() => printWeight(pounds(NaN), 'in')).toThrow('NaN');
});

test('an angle is printed in degrees, without zeros at its end', () => {
  expect(printAngle(degrees(22.5))).toBe('22.5°');
  expect(printAngle(degrees(90))).toBe('90°');
  expect(printAngle(degrees(100))).toBe('100°');
  expect(printAngle(degrees(33.3333))).toBe('33.33°');
  expect(printAngle(degrees(-0.001))).toBe('0°');
  expect(printAngle(degrees(7), 0)).toBe('7°');
  expect(() => printAngle(radians(Infinity))).toThrow('Infinity');
});
