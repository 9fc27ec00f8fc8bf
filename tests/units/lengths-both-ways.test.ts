import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { inches } from '../../core/base/quantity.ts';
import { parseLength, printLength } from '../../core/units/index.ts';

const RUNS = { seed: 20260302, numRuns: 2000 };
const sixteenths = fc.integer({ min: -16 * 20000, max: 16 * 20000 });
const lengths = fc.double({ min: -20000, max: 20000, noNaN: true });

/** How people write so many sixteenths of an inch: made here, apart from the printer. */
function writings(parts: number): readonly string[] {
  const sign = parts < 0 ? '-' : '';
  const size = Math.abs(parts);
  const [feet, rest, whole, odd] = [Math.floor(size / 192), size % 192, Math.floor(size / 16), size % 16];
  const inch = (count: number, unit: string): string => `${String(Math.floor(count / 16))} ${String(count % 16)}/16${unit}`;
  return [
    `${sign}${String(feet)}'-${inch(rest, '"')}`, `${sign}${String(feet)} ft ${inch(rest, ' in')}`, `${sign}${String(feet)}' ${inch(rest, '"')}`,
    `${sign}${inch(size, '"')}`, `${sign}${inch(size, ' in')}`, `${sign}${String(whole)}-${String(odd)}/16`, `${sign}${String(size)}/16`, `${sign}${String(size / 16)}`,
    `${sign}${String(Number((size * 1.5875).toFixed(4)))} mm`, `${sign}${String(Number((size * 0.15875).toFixed(5)))} cm`,
  ];
}

test('every sixteenth is read exactly, however it is written', () => {
  fc.assert(fc.property(sixteenths, (parts) => {
    for (const text of writings(parts)) expect(parseLength(text), text).toBe(parts === 0 ? 0 : parts / 16);
  }), RUNS);
});

test('what is printed in inches is read back as printed, within half a sixteenth of the length', () => {
  fc.assert(fc.property(lengths, fc.constantFrom('feet' as const, 'inches' as const), (length, form) => {
    const back = parseLength(printLength(inches(length), 'in', form)) ?? NaN;
    expect(back * 16).toBe(Math.round(back * 16));
    expect(Math.abs(back - length)).toBeLessThanOrEqual(1 / 32 + 1e-9);
  }), RUNS);
});

test('what is printed in millimeters is read back within half of the last place', () => {
  fc.assert(fc.property(lengths, (length) => {
    const whole = parseLength(printLength(inches(length), 'mm')) ?? NaN;
    const fine = parseLength(printLength(inches(length), 'mm', 'bracket')) ?? NaN;
    expect(Math.abs(whole - length) * 25.4).toBeLessThanOrEqual(0.5 + 1e-6);
    expect(Math.abs(fine - length) * 25.4).toBeLessThanOrEqual(0.05 + 1e-6);
  }), RUNS);
});

test('a printed length has feet only over a foot, less than 12 in behind them, and a fraction in lowest terms', () => {
  fc.assert(fc.property(lengths, (length) => {
    const text = printLength(inches(length), 'in');
    const match = /^-?(?:(\d+)'-)?(?:(\d+)|(?:(\d+) )?(\d+)\/(2|4|8|16))"$/.exec(text);
    expect(match, text).not.toBeNull();
    const [, feet, plain, whole, top, bottom] = (match ?? []).map((part) => (part === undefined ? undefined : Number(part)));
    if (feet !== undefined) expect(feet).toBeGreaterThan(0);
    expect(plain ?? whole ?? 0).toBeLessThan(12);
    if (top !== undefined && bottom !== undefined) expect([top % 2, top < bottom]).toEqual([1, true]);
  }), RUNS);
});

test('the sign of a length turns nothing but the sign of its print', () => {
  fc.assert(fc.property(lengths, (length) => {
    const [plus, minus] = [printLength(inches(Math.abs(length)), 'in'), printLength(inches(-Math.abs(length)), 'in')];
    expect(minus).toBe(plus === '0"' ? plus : `-${plus}`);
  }), RUNS);
});

test('no text is ever read as something that is no length', () => {
  const alphabet = fc.constantFrom(...`0123456789 .-/'"ftinmc½×`);
  fc.assert(fc.property(fc.oneof(fc.string(), fc.string({ unit: alphabet, maxLength: 14 })), (text) => {
    const length = parseLength(text);
    expect(length === null || Number.isFinite(length)).toBe(true);
  }), { ...RUNS, numRuns: 10000 });
});
