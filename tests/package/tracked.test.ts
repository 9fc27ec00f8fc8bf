import { describe, expect, it } from 'vitest';
import { reuse } from '../../core/package/reuse.ts';
import { tracked } from '../../core/package/tracked.ts';

interface Input {
  readonly title: string;
  readonly runs: readonly number[];
  readonly spare?: number;
}

describe('a tracked step', () => {
  const counting = (): { step: (input: Input, factor: { n: number }) => { sum: number }; calls: () => number } => {
    let calls = 0;
    return {
      calls: () => calls,
      step: tracked((input: Input, factor: { n: number }) => {
        calls += 1;
        return { sum: input.runs.reduce((sum, run) => sum + run, 0) * factor.n };
      }),
    };
  };

  it('is done once for one input, and not again for a field that it did not read', () => {
    const { step, calls } = counting();
    const runs = [3, 4];
    const two = { n: 2 };
    const first = step({ title: 'a', runs }, two);
    expect(first.sum).toBe(14);
    expect(step({ title: 'b', runs }, two)).toBe(first);
    expect(calls()).toBe(1);
  });

  it('is done again when what it read, or what it was given beside it, is another thing', () => {
    const { step, calls } = counting();
    const two = { n: 2 };
    step({ title: 'a', runs: [3, 4] }, two);
    expect(step({ title: 'a', runs: [3, 5] }, two).sum).toBe(16);
    expect(step({ title: 'a', runs: [3, 5] }, { n: 3 }).sum).toBe(24);
    expect(calls()).toBe(3);
  });

  it('has read a field that it only asked after, and all of what it copied', () => {
    const has = tracked((input: Input) => ['spare' in input]);
    expect(has({ title: 'a', runs: [] })).toEqual([false]);
    expect(has({ title: 'a', runs: [], spare: 1 })).toEqual([true]);
    const copy = tracked((input: Input) => ({ ...input }));
    expect(copy({ title: 'a', runs: [] }).title).toBe('a');
    expect(copy({ title: 'b', runs: [] }).title).toBe('b');
  });

  it('keeps nothing of a call that threw', () => {
    let fail = true;
    const step = tracked((input: Input) => {
      if (fail) throw new Error(input.title);
      return [input.title];
    });
    const input = { title: 'a', runs: [] };
    expect(() => step(input)).toThrow('a');
    fail = false;
    expect(step(input)).toEqual(['a']);
  });
});

describe('what is read again', () => {
  it('is the very same thing where it is equal, part by part', () => {
    const before = { a: { x: [1, 2] }, b: [{ y: 1 }, { y: 2 }], c: null };
    const after = reuse(before, { a: { x: [1, 2] }, b: [{ y: 1 }, { y: 3 }], c: null });
    expect(after).toEqual({ a: { x: [1, 2] }, b: [{ y: 1 }, { y: 3 }], c: null });
    expect(after.a).toBe(before.a);
    expect(after.b[0]).toBe(before.b[0]);
    expect(after.b[1]).not.toBe(before.b[1]);
    expect(reuse(before, structuredClone(before))).toBe(before);
  });

  it('is another thing where a field, an order, a kind or a length differs', () => {
    for (const [before, after] of [
      [{ a: 1 }, { a: 1, b: undefined }],
      [{ a: 1, b: 2 }, { b: 2, a: 1 }],
      [[1, 2], [1]],
      [[], {}],
      [{ a: 0 }, { a: -0 }],
      [{ a: undefined }, { b: undefined }],
      [null, { a: 1 }],
    ]) {
      const out = reuse(before, after);
      expect(out).not.toBe(before);
      expect(out).toEqual(after);
      expect(Object.keys(out ?? {})).toEqual(Object.keys(after ?? {}));
    }
    expect(reuse({ a: NaN }, { a: NaN })).toEqual({ a: NaN });
  });
});
