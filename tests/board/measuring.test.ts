/** What is measured from, what is measured, and what is clicked: on the project contract's example, whose places are known. */
import { describe, expect, it } from 'vitest';
import { measureBetween, pieceNear, sightLines, snap, type Snap } from '../../core/board/index.ts';
import { planPoint } from '../../core/base/points.ts';
import { makeBrief } from '../support/brief-builder.ts';
import { laidOut, partsOf } from '../support/laid-out.ts';

const brief = makeBrief();
const layout = laidOut(brief);
const input = { layout, parts: partsOf(brief) };
const at = (x: number, y: number, reach = 6): Snap => {
  const found = snap(layout, planPoint(x, y), reach);
  if (found === null) throw new Error(`nothing near ${String(x)}, ${String(y)}`);
  return found;
};

describe('what is worth measuring from', () => {
  it('is the pivot post, the mouth, a post, the end of a face, or the nearest place on a face', () => {
    expect(at(1, 1)).toMatchObject({ kind: 'pivot', at: { x: 0, y: 0 } });
    // Mouth: R - w/2 = 130, m = 116 / tan 30° = 200.9179 (geometry contract, worked values).
    expect(at(131, 200)).toMatchObject({ kind: 'mouth' });
    expect(at(131, 200).at.y).toBeCloseTo(200.9179, 4);
    // The post line stands k = 3.9171 outside the face (worked values): the pen's first post, at the entry.
    const post = at(-149, 1);
    expect(post).toMatchObject({ kind: 'post' });
    expect(post.at.x).toBeCloseTo(-147.9171, 4);
    expect(at(144, 2, 3)).toMatchObject({ kind: 'face-end', at: { x: 144 } });
    const face = at(-103, -103);
    expect(face.kind).toBe('face');
    expect(Math.hypot(face.at.x, face.at.y)).toBeCloseTo(144, 9);
    expect(face.on[0]).toMatchObject({ run: 'crowd-pen', side: 'right' });
    expect(face.on[0]?.along).toBeCloseTo(144 * (Math.PI / 4), 9);
  });

  it('is nothing beyond its reach', () => {
    expect(snap(layout, planPoint(-60, -60), 6)).toBeNull();
    expect(snap(layout, planPoint(0, -140), 3.9)).toBeNull();
    expect(snap(layout, planPoint(0, -140), 4.1)?.kind).toBe('face');
  });
});

describe('the measure between two things', () => {
  it('is straight, across and up, and along a face that both lie on', () => {
    const pivot = at(0, 0);
    const mouth = at(130, 201);
    const straight = measureBetween(pivot, mouth);
    expect(straight.straight).toBeCloseTo(Math.hypot(130, 200.9179), 4);
    expect([straight.dx, straight.along]).toEqual([130, null]);
    expect(straight.dy).toBeCloseTo(200.9179, 4);
    const round = measureBetween(at(-103, -103), at(103, -103));
    expect(round.straight).toBeCloseTo(144 * Math.SQRT2, 9);
    expect(round.along).toMatchObject({ run: 'crowd-pen', side: 'right' });
    expect(round.along?.length).toBeCloseTo(144 * (Math.PI / 2), 9);
    expect(measureBetween(mouth, pivot).dx).toBe(-130);
  });

  it('joins a post that two fences share to either of them', () => {
    const joint = at(-148, 0);
    expect(measureBetween(joint, at(-103, -103)).along?.length).toBeCloseTo(144 * (Math.PI / 4), 9);
    const alley = layout.posts.find((post) => post.run === 'alley-1' && post.side === 'right')!;
    const far = at(alley.at.x, alley.at.y);
    expect(measureBetween(joint, far).along).toMatchObject({ run: 'alley-1', side: 'right' });
  });
});

describe('a click', () => {
  it('finds each post, plate and rail where it stands', () => {
    for (const piece of input.parts.pieces) {
      if (piece.place.kind === 'post') expect(pieceNear(input, piece.place.at, 0.1)).toBe(piece.key);
      if (piece.place.kind === 'plate') {
        const { a, b } = piece.place;
        expect(pieceNear(input, planPoint((a.x + b.x) / 2, (a.y + b.y) / 2), 0.01)).toBe(piece.key);
      }
    }
    // Rail axes of the pen stand at 145.2921 (worked values), the skin's face at 144.
    expect(pieceNear(input, planPoint(-145.2921 * Math.SQRT1_2, -145.2921 * Math.SQRT1_2), 0.1)).toMatch(/^rail\/crowd-pen\/right\/\d+\/4$/);
    expect(pieceNear(input, planPoint(-143.5 * Math.SQRT1_2, -143.5 * Math.SQRT1_2), 1)).toMatch(/^skin\/crowd-pen\/right\/\d+\/0$/);
  });

  it('finds nothing where nothing stands', () => {
    expect(pieceNear(input, planPoint(-60, -60), 6)).toBeNull();
  });
});

describe('the sight line', () => {
  it('is the one behind the see-ahead rule: seen length 218.435 in (geometry contract, Sight: i 192, w 28, L 120)', () => {
    const [line] = sightLines(brief, layout);
    expect(line?.from).toEqual(layout.mouth);
    const arc = layout.runs.find((run) => run.name === 'chute-2')!.path;
    if (line === undefined || arc.kind !== 'arc') throw new Error('no sight line, or no arc');
    const turned = Math.abs(Math.atan2(line.to.y - arc.center.y, line.to.x - arc.center.x) - arc.start);
    expect(120 + arc.radius * turned).toBeCloseTo(218.435, 3);
    expect(Math.hypot(line.graze!.x - arc.center.x, line.graze!.y - arc.center.y)).toBeCloseTo(192, 6);
  });
});
