import { describe, expect, test } from 'vitest';
import { inches } from '../../core/base/quantity.ts';
import { printDecimalInches, printLength, printStep, roundLength } from '../../core/units/index.ts';

describe('a length is printed as the trade writes it', () => {
  test.each([
    [147.625, `12'-3 5/8"`, `147 5/8"`], [120, `10'-0"`, `120"`], [12, `1'-0"`, `12"`], [11.5, `11 1/2"`, `11 1/2"`], [0.0625, `1/16"`, `1/16"`],
    [0, `0"`, `0"`], [144.5, `12'-0 1/2"`, `144 1/2"`], [7.75, `7 3/4"`, `7 3/4"`], [-3.5, `-3 1/2"`, `-3 1/2"`], [-147.625, `-12'-3 5/8"`, `-147 5/8"`],
  ])('%f in is %s, or %s', (length, feet, plain) => {
    expect(printLength(inches(length), 'in')).toBe(feet);
    expect(printLength(inches(length), 'in', 'inches')).toBe(plain);
  });

  test('the rounding carries into inches and feet', () => {
    expect(printLength(inches(15 + 31 / 32), 'in')).toBe(`1'-4"`);
    expect(printLength(inches(11 + 31 / 32), 'in')).toBe(`1'-0"`);
    expect(printLength(inches(23.999), 'in')).toBe(`2'-0"`);
    expect(printLength(inches(11 + 31 / 32), 'in', 'inches')).toBe(`12"`);
    expect(printLength(inches(15.96), 'in')).toBe(`1'-3 15/16"`);
  });

  test('there is no negative zero', () => {
    for (const length of [-0, -0.01, -1e-9]) {
      expect(printLength(inches(length), 'in')).toBe(`0"`);
      expect(printLength(inches(length), 'mm')).toBe('0 mm');
    }
    expect(printLength(inches(-0.001), 'mm', 'bracket')).toBe('0.0 mm');
    expect(printDecimalInches(inches(-0.0001))).toBe('0.00');
  });

  test('bends and plates bear the decimal behind the fraction', () => {
    expect(printLength(inches(145.25), 'in', 'bracket')).toBe(`12'-1 1/4" (145.25)`);
    expect(printLength(inches(145.2921), 'in', 'bracket')).toBe(`12'-1 5/16" (145.292)`);
    expect(printLength(inches(-2.5), 'in', 'bracket')).toBe(`-2 1/2" (-2.50)`);
  });
});

describe('a metric length is printed in millimeters, never meters', () => {
  test.each([
    [3500 / 25.4, '3500 mm', '3500.0 mm'], [12000 / 25.4, '12000 mm', '12000.0 mm'], [1, '25 mm', '25.4 mm'], [1.5 / 25.4, '2 mm', '1.5 mm'], [-2.54, '-65 mm', '-64.5 mm'],
  ])('%f in is %s, or %s on bends and plates', (length, whole, fine) => {
    expect(printLength(inches(length), 'mm')).toBe(whole);
    expect(printLength(inches(length), 'mm', 'bracket')).toBe(fine);
  });

  test('a view that says its unit leaves it off', () => {
    expect(printLength(inches(100), 'mm', 'feet', false)).toBe('2540');
  });
});

test('a rounded length is what is read from the paper', () => {
  expect(roundLength(inches(15.96), 'in')).toBe(15.9375);
  expect(roundLength(inches(3500.4 / 25.4), 'mm')).toBeCloseTo(3500 / 25.4, 12);
  expect(roundLength(inches(3500.44 / 25.4), 'mm', true)).toBeCloseTo(3500.4 / 25.4, 12);
  expect(printStep('in')).toBe(1 / 16);
  expect(printStep('mm')).toBeCloseTo(1 / 25.4, 15);
});

test('what is not finite is a programmer\'s mistake', () => {
  for (const value of [NaN, Infinity]) {
    expect(() => printLength(inches(value), 'in')).toThrow(String(value));
    expect(() => printLength(inches(value), 'mm')).toThrow(String(value));
    expect(() => printDecimalInches(inches(value))).toThrow(String(value));
  }
});
