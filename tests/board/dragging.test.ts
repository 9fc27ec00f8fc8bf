/** A drag and the set-out agree: the field set to what a drag asks for puts the handle where the pointer was. */
import { describe, expect, it } from 'vitest';
import { draggedValue, figureAt, handles, type Handle } from '../../core/board/index.ts';
import { planPoint } from '../../core/base/points.ts';
import { degrees, inches } from '../../core/base/quantity.ts';
import { type Brief } from '../../core/brief/types.ts';
import { layOut } from '../../core/layout/index.ts';
import { arc, makeBrief, straight } from '../support/brief-builder.ts';
import { seeded } from '../support/random.ts';
import { randomBriefObject } from '../support/random-brief-object.ts';

type Group = Record<string, unknown>;

/** The brief with the figure at a path (`chute.runs[1].angle`) replaced. */
function withFigure(brief: Brief, path: string, value: number): Brief {
  const copy = structuredClone(brief);
  const steps = path.split(/[.[\]]+/).filter((step) => step !== '');
  const last = steps.pop() ?? '';
  const group = steps.reduce<Group>((at, step) => at[step] as Group, copy as unknown as Group);
  if (typeof group[last] !== 'number') throw new Error(`no figure at ${path}`);
  group[last] = value;
  return copy;
}

const handlesOf = (brief: Brief): readonly Handle[] | null => {
  const result = layOut(brief);
  return result.ok ? handles(brief, result.layout) : null;
};

const briefs = Array.from({ length: 80 }, (_, seed) => randomBriefObject(seed));

describe('a dragged handle', () => {
  it('stands under the pointer once the field is what the drag asks for', () => {
    const seen = new Map<string, number>();
    for (const [seed, brief] of briefs.entries()) {
      const random = seeded(seed + 1);
      for (const handle of handlesOf(brief) ?? []) {
        // A spacing's posts divide their fence anew: see below.
        if (handle.path.endsWith('postSpacing')) continue;
        const wanted = Math.min(handle.greatest, Math.max(handle.least, handle.value * random.between(0.7, 1.3)));
        const moved = handlesOf(withFigure(brief, handle.path, wanted))?.find((one) => one.id === handle.id);
        // What can't be set out so, or runs on into the next run, has no handle there to be held.
        if (moved === undefined || moved.run !== handle.run) continue;
        expect(Math.abs(figureAt(handle.drag, moved.at, handle.value) - wanted), `brief ${String(seed)}, ${handle.id}`).toBeLessThan(1e-6);
        const kind = `${handle.path.replace(/\[\d+\]/, '')} ${brief.crowdPen.hand}`;
        seen.set(kind, (seen.get(kind) ?? 0) + 1);
      }
    }
    const kinds = [
      'crowdPen.radius', 'crowdPen.sweep', 'crowdPen.funnelAngle', 'chute.width', 'alley.runs.length', 'alley.runs.insideRadius', 'alley.runs.angle',
      'chute.runs.length', 'chute.runs.insideRadius', 'chute.runs.angle', 'openings.at',
    ];
    for (const kind of kinds) for (const hand of ['left', 'right']) expect(seen.get(`${kind} ${hand}`) ?? 0, `${kind} ${hand}`).toBeGreaterThan(3);
  });

  it('moves the way its arrow points when the figure grows', () => {
    for (const brief of briefs.slice(0, 60)) {
      for (const handle of handlesOf(brief) ?? []) {
        const ahead = planPoint(handle.at.x + 1e-3 * Math.cos(handle.grows), handle.at.y + 1e-3 * Math.sin(handle.grows));
        expect(figureAt(handle.drag, ahead, handle.value), handle.id).toBeGreaterThan(handle.value);
      }
    }
  });

  it('of a post spacing changes the figure by as much as the post is moved', () => {
    for (const brief of briefs.slice(0, 60)) {
      for (const handle of (handlesOf(brief) ?? []).filter((one) => one.path.endsWith('postSpacing'))) {
        const moved = planPoint(handle.at.x + 0.01 * Math.cos(handle.grows), handle.at.y + 0.01 * Math.sin(handle.grows));
        expect(figureAt(handle.drag, moved, handle.value) - handle.value).toBeCloseTo(0.01, 5);
      }
    }
  });
});

describe('a figure of a handle, by hand', () => {
  const value = (brief: Brief, path: string, x: number, y: number, near?: number): number => {
    const handle = handlesOf(brief)?.find((one) => one.path === path);
    if (handle === undefined) throw new Error(`no handle ${path}`);
    return figureAt(handle.drag, planPoint(x, y), near ?? handle.value);
  };
  /** Hand left: pivot at 0, 0, the chute's outer face at x = 144. Hand right is its mirror. */
  const left = makeBrief();
  const right = makeBrief({ crowdPen: { hand: 'right' } });

  it.each([['left', left, 1], ['right', right, -1]] as const)('hand %s', (_, brief, way) => {
    expect(value(brief, 'crowdPen.radius', 0, -150)).toBeCloseTo(150, 9);
    // The entry a quarter turn short of the half round, and a quarter past it.
    expect(value(brief, 'crowdPen.sweep', 0, -144)).toBeCloseTo(Math.PI / 2, 9);
    expect(value(brief, 'crowdPen.sweep', way * -100, 100)).toBeCloseTo(degrees(225), 9);
    expect(value(brief, 'crowdPen.funnelAngle', way * 100, 100)).toBeCloseTo(degrees(45), 9);
    expect(value(brief, 'chute.width', way * 110, 12)).toBeCloseTo(34, 9);
    expect(value(brief, 'alley.runs[0].length', way * -80, 300)).toBeCloseTo(300, 9);
  });

  it('goes on past half a turn and a whole one, from the last figure on', () => {
    const brief = makeBrief({ chute: { width: inches(28), runs: [straight(120), arc(192, 90, 'right')] } });
    const handle = handlesOf(brief)!.find((one) => one.path === 'chute.runs[1].angle')!;
    if (handle.drag.kind !== 'round') throw new Error('an angle that is not dragged round');
    const { center, from, factor } = handle.drag;
    let near = handle.value;
    for (let angle = 90; angle <= 400; angle += 5) {
      const seen = from + degrees(angle) / factor;
      near = figureAt(handle.drag, planPoint(center.x + 50 * Math.cos(seen), center.y + 50 * Math.sin(seen)), near);
      expect(near).toBeCloseTo(degrees(angle), 9);
    }
    const past = planPoint(center.x + 50 * Math.cos(from + near / factor), center.y + 50 * Math.sin(from + near / factor));
    expect(draggedValue(handle, past, near, null)).toBe(degrees(270));
  });

  it('is kept to whole steps and to its range', () => {
    const handle = handlesOf(left)!.find((one) => one.path === 'crowdPen.radius')!;
    expect(draggedValue(handle, planPoint(0, -150.4), 144, 1)).toBe(150);
    expect(draggedValue(handle, planPoint(0, -150.4), 144, null)).toBeCloseTo(150.4, 12);
    expect(draggedValue(handle, planPoint(0, -10), 144, 1)).toBe(72);
    expect(draggedValue(handle, planPoint(0, -1000), 144, 1)).toBe(240);
    expect(() => draggedValue(handle, planPoint(0, -150), 144, 0)).toThrow('a step must be over 0: 0');
  });
});
