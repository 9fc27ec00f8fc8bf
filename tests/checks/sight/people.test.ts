import { describe, expect, it } from 'vitest';
import { type Curve } from '../../../core/base/curve.ts';
import { planPoint, type PlanPoint } from '../../../core/base/points.ts';
import { inches } from '../../../core/base/quantity.ts';
import { isSeen } from '../../../core/checks/sight/line-of-sight.ts';
import { chuteEyes, padCrew, personSeen } from '../../../core/checks/sight/people.ts';
import { solidWalls, type SolidWall } from '../../../core/checks/sight/solid-walls.ts';
import { makeBrief, fences, straight } from '../../support/brief-builder.ts';
import { laidOut, runOf } from '../../support/laid-out.ts';

const wall = (a: readonly [number, number], b: readonly [number, number], from: number, to: number): SolidWall => {
  const face: Curve<PlanPoint> = { kind: 'line', a: planPoint(...a), b: planPoint(...b) };
  return { run: 'wall', side: 'left', face, from, to };
};

describe('a line of sight', () => {
  const eye = { at: { x: 0, y: 0 }, height: 50 };

  it('is broken by what is closed at the height at which it passes, by similar triangles', () => {
    // From 50 in at 0 to 66 in at 80 the line stands 50 + 16·(30/80) = 56 in high at 30.
    const head = { at: { x: 80, y: 0 }, height: 66 };
    const up = (from: number, to: number): boolean => isSeen(eye, head, [wall([30, -10], [30, 25], from, to)]);
    expect([up(0, 55.9), up(0, 56.1), up(56.1, 90), up(55.9, 90), up(2, 60)]).toEqual([true, false, true, false, false]);
  });

  it('passes a wall\'s end, and a wall beyond the point', () => {
    const head = { at: { x: 80, y: 40 }, height: 66 };
    // At x 30 the line stands at y 15.
    expect(isSeen(eye, head, [wall([30, -20], [30, 14.9], 0, 96)])).toBe(true);
    expect(isSeen(eye, head, [wall([30, -20], [30, 15.1], 0, 96)])).toBe(false);
    expect(isSeen(eye, head, [wall([81, -20], [81, 60], 0, 96)])).toBe(true);
  });

  it('takes a face as it is built: closed from solidFrom to solidTo, open without a sheet, and not a ramp\'s', () => {
    const layout = laidOut(makeBrief({ fences: fences({ solidFrom: inches(4), solidTo: inches(40) }) }));
    expect(new Set(solidWalls(layout).map(({ from, to }) => `${String(from)}-${String(to)}`))).toEqual(new Set(['4-40']));
    expect(solidWalls(laidOut(makeBrief({ fences: fences({ sheet: null }) })))).toEqual([]);
    expect(solidWalls(laidOut(makeBrief({ fences: fences({ solidTo: inches(0), solidFrom: inches(0) }) })))).toEqual([]);
  });
});

describe('people in sight of the cattle (a standing person of 66 in: from memory, no source)', () => {
  // A straight chute of 28 in, 200 in long; past it somebody 37 in off its centerline, hidden by a closed side as long as the line to
  // him crosses it: 37·200/(200 + p) > 14, p < 328.57 in past the chute's end, by similar triangles.
  const layout = laidOut(makeBrief({ chute: { width: inches(28), runs: [straight(200)] }, fences: fences({ height: inches(96), solidFrom: inches(0), solidTo: inches(96) }) }));
  const { x, y } = layout.mouth;
  const chute = layout.runs.filter((run) => run.from !== null);
  const mouth = { at: { x, y }, height: 50 };
  const somebody = (past: number) => ({ at: planPoint(x + 37, y + 200 + past), floor: 0 });

  it('are hidden by a closed side until they stand far enough past its end', () => {
    expect([300, 328, 329, 400].map((past) => personSeen(somebody(past), [mouth], solidWalls(layout)))).toEqual([false, false, true, true]);
  });

  it('are seen over a side that is closed too low', () => {
    // Beside the chute, 37 in off and 100 in on: the line to the head (66 in) stands 50 + 16·14/37 = 56.05 in high where it crosses the face.
    const low = (solidTo: number) => {
      const of = laidOut(makeBrief({ chute: { width: inches(28), runs: [straight(200)] }, fences: fences({ height: inches(60), solidFrom: inches(0), solidTo: inches(solidTo) }) }));
      return personSeen({ at: planPoint(x + 37, y + 100), floor: 0 }, [mouth], solidWalls(of));
    };
    expect([low(56), low(56.1)]).toEqual([true, false]);
  });

  it('on a deck they stand higher', () => {
    // On a deck of 18 in the head is 84 in up: 50 + 34·14/37 = 62.9 in at the face.
    const of = (solidTo: number) => laidOut(makeBrief({ chute: { width: inches(28), runs: [straight(200)] }, fences: fences({ height: inches(72), solidFrom: inches(0), solidTo: inches(solidTo) }) }));
    const onDeck = { at: planPoint(x + 37, y + 100), floor: 18 };
    expect([62.8, 63].map((solidTo) => personSeen(onDeck, [mouth], solidWalls(of(solidTo))))).toEqual([true, false]);
  });

  it('are looked for from all along the chute, but for its last body length', () => {
    const stations = (bodyLength: number, most: number) => chuteEyes(chute, bodyLength, 50, most).map(({ at }) => Math.round((at.y - y) * 1e6) / 1e6);
    expect(stations(96, 12)).toEqual([0, 104]);
    expect(stations(36, 3)).toEqual([0, 82, 164]);
    expect(stations(130, 12)).toEqual([0]);
  });

  it('stand at the pad on both sides, half way out', () => {
    const pad = { ...runOf(layout, 'chute-1'), name: 'squeeze-pad', width: inches(120) };
    const crew = padCrew(pad, 28);
    expect(crew.map(({ at }) => Math.round(Math.abs(at.x - x) * 1e6) / 1e6)).toEqual(Array.from({ length: 10 }, () => 37));
    expect(crew.map(({ at }) => Math.round((at.y - y) * 1e6) / 1e6).filter((_, i) => i % 2 === 0)).toEqual([20, 60, 100, 140, 180]);
  });
});
