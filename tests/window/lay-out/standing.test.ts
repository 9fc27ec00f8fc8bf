import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { planPoint } from '../../../core/base/points.ts';
import { type Handle } from '../../../core/board/index.ts';
import { dotPlaces } from '../../../renderer/places/lay-out/board/dot-places.ts';
import { shownHandles } from '../../../renderer/places/lay-out/board/shown-handles.ts';

const handle = (id: string, run: string, x: number): Handle => ({
  id, path: id, label: id, figure: 'length', at: planPoint(x, 0), grows: 0, value: 1, least: 0, greatest: 2, run, drag: { kind: 'away', center: planPoint(0, 0), factor: 1, offset: 0 },
});
const at = (one: Handle) => one.at;

describe('handles on the board', () => {
  const all = [handle('a', 'chute-1', 0), handle('b', 'chute-2', 10), handle('c', 'chute-2', 25), handle('d', 'chute-3', 200), handle('fences.crowdPen.postSpacing', 'chute-1', 400)];
  const ids = (run: string | null, held: readonly string[] = []): string[] => shownHandles(all, run, at, new Set(held)).map(({ id }) => id);

  it('keep clear of each other where no run is chosen', () => {
    expect(ids(null)).toEqual(['a', 'd']);
  });

  it('are all there of the chosen run, its post spacing too', () => {
    expect(ids('chute-2')).toEqual(['b', 'c', 'd']);
    expect(ids('chute-1')).toEqual(['a', 'fences.crowdPen.postSpacing', 'd']);
  });

  it('never go while one has the focus', () => {
    expect(ids(null, ['c'])).toContain('c');
  });
});

describe('numbers of findings', () => {
  const point = fc.record({ x: fc.integer({ min: 0, max: 900 }), y: fc.integer({ min: 0, max: 500 }) });

  it('stand clear of each other and of the rings where there is room', () => {
    const stand = dotPlaces([{ x: 100, y: 100 }, { x: 100, y: 100 }, { x: 104, y: 98 }], [{ x: 100, y: 100 }]);
    const all = [...stand, { x: 100, y: 100 }];
    all.forEach((one, i) => { all.slice(i + 1).forEach((other) => { expect(Math.hypot(one.x - other.x, one.y - other.y)).toBeGreaterThanOrEqual(32); }); });
  });

  it('stay where they were beside their place while that is clear', () => {
    const before = [{ x: -60, y: 0 }];
    expect(dotPlaces([{ x: 300, y: 100 }], [], before)).toEqual([{ x: 240, y: 100 }]);
    expect(dotPlaces([{ x: 300, y: 100 }], [{ x: 238, y: 101 }], before)).not.toEqual([{ x: 240, y: 100 }]);
  });

  it('are as many as the places, each within reach of its own', () => {
    fc.assert(fc.property(fc.array(point, { maxLength: 60 }), fc.array(point, { maxLength: 10 }), (places, taken) => {
      const stand = dotPlaces(places, taken);
      expect(stand).toHaveLength(places.length);
      stand.forEach((one, i) => { expect(Math.hypot(one.x - (places[i]?.x ?? NaN), one.y - (places[i]?.y ?? NaN))).toBeLessThan(89); });
    }), { seed: 4 });
  });
});
