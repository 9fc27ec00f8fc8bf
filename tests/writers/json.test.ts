/** JSON: in full, in order, never minus zero. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { writeJson } from '../../core/writers/index.ts';

describe('JSON', () => {
  test('keeps the order of keys and ends with a newline', () => {
    expect(writeJson({ b: 1, a: [true, null] })).toBe('{\n  "b": 1,\n  "a": [\n    true,\n    null\n  ]\n}\n');
  });

  test('keeps every digit of a figure', () => {
    fc.assert(fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), (figure) => {
      expect(Math.abs(JSON.parse(writeJson(figure)) as number)).toBe(Math.abs(figure));
    }));
  });

  test('writes minus zero as zero', () => {
    expect(writeJson({ at: [-0] })).not.toContain('-');
  });

  test.each([NaN, Infinity, -Infinity])('throws on %s and names its key', (figure) => {
    expect(() => writeJson({ run: { length: figure } })).toThrow(`length is not finite: ${String(figure)}`);
  });

  test('throws on what JSON has no word for', () => {
    expect(() => writeJson(undefined)).toThrow('undefined');
  });
});
