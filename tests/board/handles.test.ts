import { describe, expect, it } from 'vitest';
import { figureAt, handles } from '../../core/board/index.ts';
import { layOut } from '../../core/layout/index.ts';
import { randomBriefObject } from '../support/random-brief-object.ts';

const laid = Array.from({ length: 120 }, (_, seed) => randomBriefObject(seed)).flatMap((brief) => {
  const result = layOut(brief);
  return result.ok ? [{ brief, layout: result.layout }] : [];
});

describe('a handle', () => {
  it('is there for most random briefs', () => {
    expect(laid.length).toBeGreaterThan(60);
  });

  it('has at its own place its own figure', () => {
    for (const { brief, layout } of laid) {
      for (const handle of handles(brief, layout)) expect(figureAt(handle.drag, handle.at, handle.value), handle.id).toBeCloseTo(handle.value, 9);
    }
  });

  it('has a name of its own', () => {
    for (const { brief, layout } of laid) {
      const ids = handles(brief, layout).map((handle) => handle.id);
      expect(new Set(ids).size).toBe(ids.length);
    }
  });
});
