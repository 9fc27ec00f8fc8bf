import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readBrief } from '../../core/brief/index.ts';
import { check } from '../../core/checks/index.ts';
import { laidOut, partsOf } from '../support/laid-out.ts';

const read = readBrief(readFileSync(new URL('../../shared/examples/winter-quill.penwright.json', import.meta.url), 'utf8'));

describe('the example with everything in it', () => {
  it('is read, and has something of every kind', () => {
    if (!read.ok) throw new Error(JSON.stringify(read.faults));
    const { brief } = read;
    const kinds = (list: readonly { readonly kind: string }[]): readonly string[] => [...new Set(list.map(({ kind }) => kind))].sort();
    expect(kinds(brief.openings)).toEqual(['alley-gate', 'backstop', 'man-gate', 'pen-gate']);
    expect(kinds(brief.ramps)).toEqual(['load', 'unload']);
    expect([brief.postLoad, brief.returnAlley].includes(null)).toBe(false);
    expect(Object.keys(brief.shop.prices).length).toBeGreaterThan(2);
  });

  it('is free of fouls, and nothing in it says Fix', () => {
    if (!read.ok) throw new Error(JSON.stringify(read.faults));
    const layout = laidOut(read.brief);
    expect(layout.fouls).toEqual([]);
    const wrong = check(read.brief, layout, partsOf(read.brief)).filter(({ result }) => result === 'fix');
    expect(wrong.map(({ id, where }) => `${id}: ${where}`)).toEqual([]);
  });
});
