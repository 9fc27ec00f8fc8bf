import { describe, expect, test } from 'vitest';
import { parseLength } from '../../core/units/index.ts';

describe('a length is read as the trade writes it', () => {
  test.each([
    [`12'-3 5/8"`, 147.625], ['10 ft', 120], [`10'-6 1/2"`, 126.5], ['3 1/2 in', 3.5], [`3-1/2"`, 3.5], [`12' 3"`, 147], [`12'3"`, 147], [`12'-3`, 147],
    ['12 ft 3 1/2 in', 147.5], ['10.5 ft', 126], ['2 1/2 ft', 30], [`0'-9"`, 9], [`12'-0 1/2"`, 144.5], ['96', 96], ['.25', 0.25], ['1/16', 0.0625],
    ['5/4 in', 1.25], ['96 inches', 96], ['1 foot', 12], ['3 in.', 3], [`  12'   -  3"  `, 147], ['12’-3 ½”', 147.5], ['12′ 3¾″', 147.75],
  ])('%s is %f in', (text, length) => {
    expect(parseLength(text)).toBe(length);
  });

  test.each([
    ['25.4 mm', 1], ['76.2 mm', 3], ['254 cm', 100], ['3.5 m', 35000 / 254], ['3500 mm', 35000 / 254], ['0.0762 m', 3], ['60 cm', 6000 / 254], ['3500MM', 35000 / 254],
  ])('%s is %f in, with 254 tenths of a millimeter to the inch', (text, length) => {
    expect(parseLength(text)).toBe(length);
  });

  test('a sign in front is for the whole', () => {
    expect(parseLength(`-12'-3 5/8"`)).toBe(-147.625);
    expect(parseLength('- 3 mm')).toBe(-30 / 254);
    expect(parseLength('+4 in')).toBe(4);
  });

  test('nothing is ever a negative zero', () => {
    for (const zero of ['-0', `-0'-0"`, '-0 mm', -0]) expect(Object.is(parseLength(zero), 0)).toBe(true);
  });

  test('a number is inches', () => {
    expect(parseLength(147.625)).toBe(147.625);
    expect(parseLength(-3)).toBe(-3);
  });
});

test.each([
  '', ' ', '-', '"', `'`, 'ft', 'mm', 'twelve', '12 yd', '12 x 3', '1/0', '1/0 in', '3 5/4 in', `5'-14"`, `5'-12"`, `5.5'-3"`, `5 1/2'-3"`, '1.2.3', '3 1/2 mm',
  '3,5 m', '1e3', '1e3 mm', 'NaN', 'Infinity', '--3', '12-3', '3 mm mm', `3" 5'`, '∞', `${'9'.repeat(400)}`, '0x10',
])('%j is no length', (text) => {
  expect(parseLength(text)).toBeNull();
});

test('what is not finite is no length', () => {
  for (const value of [NaN, Infinity, -Infinity]) expect(parseLength(value)).toBeNull();
});

test('hostile text is refused at once', () => {
  const started = performance.now();
  for (const text of ["1 ".repeat(1e6), "1/".repeat(1e6), "1'-".repeat(1e6), ' '.repeat(1e6)]) expect(parseLength(text)).toBeNull();
  expect(performance.now() - started).toBeLessThan(1000);
});
