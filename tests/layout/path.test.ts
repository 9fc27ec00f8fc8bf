import { describe, expect, it } from 'vitest';
import { curveHeading, curveLength, curvePoint } from '../../core/base/curve.ts';
import { degrees, inches, toDegrees } from '../../core/base/quantity.ts';
import { arc, makeBrief, straight } from '../support/brief-builder.ts';
import { laidOut, runOf } from '../support/laid-out.ts';
import { mirrorBrief, randomBriefObject } from '../support/random-brief-object.ts';
import { layOut } from '../../core/layout/index.ts';
import { walk } from '../support/walk-oracle.ts';

describe('the path', () => {
  it('has its runs in walking order with their stations from the mouth', () => {
    const { runs, mouth, mouthDistance } = laidOut(makeBrief());
    expect(runs.map((run) => [run.name, run.from])).toEqual([
      ['alley-1', null], ['crowd-pen', null], ['junction', null], ['chute-1', 0], ['chute-2', 120], ['chute-3', 120 + 206 * (Math.PI / 2)],
    ]);
    expect(mouth).toEqual({ x: 130, y: mouthDistance });
    // Worked in the package contract's example of stations.json.
    expect(runs[4]!.length).toBe(323.5840433197487);
  });

  it('heads as the geometry contract says: down the alley, up the chute, to the right after a right turn', () => {
    const { runs } = laidOut(makeBrief());
    expect(runs.map((run) => run.headings.map((h) => Math.round(toDegrees(h) * 1e9) / 1e9))).toEqual([
      [-90, -90], [-90, 90], [90, 90], [90, 90], [90, 0], [0, 0],
    ]);
  });

  it('ends where small steps along the headings end, for chutes of any runs', () => {
    const chute = { width: inches(26), runs: [arc(150, 37, 'left'), straight(81), arc(200, 110, 'right'), arc(90, 64, 'left')] };
    const layout = laidOut(makeBrief({ chute }));
    let at = { at: { x: layout.mouth.x, y: layout.mouth.y }, heading: Math.PI / 2 };
    chute.runs.forEach((run, i) => {
      at = walk(run, 26, at.at, at.heading);
      const end = curvePoint(runOf(layout, `chute-${String(i + 1)}`).path, 1);
      expect(end.x).toBeCloseTo(at.at.x, 4);
      expect(end.y).toBeCloseTo(at.at.y, 4);
    });
  });

  it('brings an alley of any runs and any sweep to the entry, walked from its far end', () => {
    const runs = [straight(100), arc(120, 50, 'right'), arc(100, 80, 'left'), straight(60)];
    for (const sweep of [120, 180, 200]) {
      const layout = laidOut(makeBrief({ alley: { runs }, crowdPen: { sweep: degrees(sweep), funnelAngle: degrees(60) } }));
      const first = runOf(layout, 'alley-1');
      let at = { at: { ...curvePoint(first.path, 0) } as { x: number; y: number }, heading: first.headings[0] as number };
      for (const run of runs) at = walk(run, 144, at.at, at.heading);
      // Between P and the start of the outer fence, a quarter turn off that radius.
      expect(at.at.x).toBeCloseTo(72 * Math.cos(degrees(-sweep)), 3);
      expect(at.at.y).toBeCloseTo(72 * Math.sin(degrees(-sweep)), 3);
      expect(Math.cos(at.heading - degrees(90 - sweep))).toBeCloseTo(1, 10);
    }
  });

  it('puts the alley\'s inner face through the pivot post and its outer face on the start of the pen\'s arc', () => {
    const layout = laidOut(makeBrief({ alley: { runs: [straight(80), arc(150, 40, 'left')] }, crowdPen: { sweep: degrees(150) } }));
    const { faces } = runOf(layout, 'alley-2');
    const inner = curvePoint(faces.left!, 1);
    const outer = curvePoint(faces.right!, 1);
    expect(Math.hypot(inner.x, inner.y)).toBeLessThan(1e-9);
    expect(outer.x).toBeCloseTo(144 * Math.cos(degrees(-150)), 9);
    expect(outer.y).toBeCloseTo(144 * Math.sin(degrees(-150)), 9);
  });

  it('runs tangent from one run into the next, the outer face without a kink through pen and junction', () => {
    for (let seed = 0; seed < 60; seed++) {
      const result = layOut(randomBriefObject(seed));
      if (!result.ok) continue;
      const runs = result.layout.runs.filter(({ aside }) => !aside);
      runs.slice(1).forEach((run, i) => expect(Math.cos(run.headings[0] - runs[i]!.headings[1])).toBeCloseTo(1, 9));
      for (const run of runs.filter((r) => r.length > 0)) {
        expect(Math.cos(curveHeading(run.path, 1) - run.headings[1])).toBeCloseTo(1, 9);
        expect(curveLength(run.path)).toBeCloseTo(run.length, 6);
      }
    }
  });

  it('keeps its clear width: faces are half a width to either side, inner wall at the inside radius', () => {
    const run = runOf(laidOut(makeBrief()), 'chute-2');
    expect(run).toMatchObject({ insideRadius: 192, centerlineRadius: 206, hand: 'right', width: 28 });
    expect(run.faces.right).toMatchObject({ radius: 192 });
    expect(run.faces.left).toMatchObject({ radius: 220 });
  });

  it('mirrors in the y axis for the other hand, hands of the runs as the cattle walk', () => {
    for (let seed = 0; seed < 40; seed++) {
      const brief = randomBriefObject(seed);
      const [one, other] = [layOut(brief), layOut(mirrorBrief(brief))];
      expect(one.ok).toBe(other.ok);
      if (!one.ok || !other.ok) continue;
      one.layout.runs.forEach((run, i) => {
        for (const f of [0, 0.5, 1]) {
          const [p, q] = [curvePoint(run.path, f), curvePoint(other.layout.runs[i]!.path, f)];
          expect(q.x).toBeCloseTo(-p.x, 6);
          expect(q.y).toBeCloseTo(p.y, 6);
        }
      });
    }
  });

  it('leaves out the junction\'s outer side at 90°, where it has no length, and keeps its headings', () => {
    const layout = laidOut(makeBrief({ crowdPen: { funnelAngle: degrees(90) } }));
    const junction = runOf(layout, 'junction');
    expect(layout.mouthDistance).toBe(0);
    expect(junction.faces.right).toBeNull();
    expect(junction.headings).toEqual([Math.PI / 2, Math.PI / 2]);
    expect(layout.fences.filter((fence) => fence.run === 'junction').map((fence) => fence.side)).toEqual(['left']);
    const joined = layout.posts.find((post) => post.run === 'chute-1' && post.side === 'right' && post.bay === 1);
    expect(joined?.alsoEnds).toMatchObject({ run: 'crowd-pen', side: 'right' });
  });
});
