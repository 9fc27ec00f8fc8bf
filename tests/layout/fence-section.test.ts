import { describe, expect, it } from 'vitest';
import { inches } from '../../core/base/quantity.ts';
import { fenceSection } from '../../core/layout/fence-section.ts';
import { railRows } from '../../core/brief/index.ts';
import { fence, section } from '../support/brief-builder.ts';

describe('the build-up of a fence', () => {
  it('of coped panels stands rail and post on one line, a sheet and half a post from the face', () => {
    const coped = fenceSection(fence('fences.crowdPen', { construction: 'coped' }));
    expect(coped.kr).toBeCloseTo(0.1046 + 2.875 / 2, 12);
    expect(coped.k).toBe(coped.kr);
  });

  it('counts the sheet on an open fence too, so that rails stay in line, and none where there is no sheet', () => {
    expect(fenceSection(fence('', { solidTo: inches(0) })).kr).toBeCloseTo(0.1046 + 1.1875, 12);
    expect(fenceSection(fence('', { sheet: null, solidTo: inches(0) })).kr).toBe(1.1875);
  });

  it('takes a rectangular rail by its outward size for the build-up and by its upright size for the rows', () => {
    const tube = fence('', { rail: section('tube 2 x 3 x 3/16'), sheet: null, solidTo: inches(0) });
    const built = fenceSection(tube);
    expect([built.d, built.railHeight]).toEqual([tube.rail.across, tube.rail.along]);
    expect(built.rows.at(-1)).toBe(60 - tube.rail.along / 2);
  });
});

describe('the rows of rails', () => {
  it('run from the bottom rail to an upper edge at the fence height at one pitch', () => {
    const rows = railRows(fence('', {}));
    expect(rows[0]).toBe(12);
    expect(rows[4]).toBe(60 - 2.375 / 2);
    const pitch = (58.8125 - 12) / 4;
    rows.forEach((row, i) => expect(row).toBeCloseTo(12 + i * pitch, 12));
  });

  it('move the row nearest to where the sheet ends onto it', () => {
    // 12, 23.70, 35.41, 47.11, 58.81: 35.41 is nearest to 40.
    expect(railRows(fence('', { solidTo: inches(40) })).map((row) => Math.round(row * 100) / 100)).toEqual([12, 23.7, 40, 47.11, 58.81]);
  });

  it('never move the top row, nor any where the fence is open, solid to the top, or without a sheet', () => {
    expect(railRows(fence('', { solidTo: inches(58) })).map((row) => Math.round(row * 100) / 100)).toEqual([12, 23.7, 35.41, 58, 58.81]);
    const plain = railRows(fence('', {}));
    expect(railRows(fence('', { solidTo: inches(0) }))).toEqual(plain);
    expect(railRows(fence('', { sheet: null, solidTo: inches(40) }))).toEqual(plain);
  });

  it('of two rows are the bottom one and the top one', () => {
    expect(railRows(fence('', { rails: 2 }))).toEqual([12, 58.8125]);
  });
});
