import { describe, expect, it } from 'vitest';
import { degrees, inches, radians } from '../../core/base/quantity.ts';
import { layOut } from '../../core/layout/index.ts';
import { stations, type Stations } from '../../core/schedules/index.ts';
import { arc, makeBrief, straight } from '../support/brief-builder.ts';
import { laidOut } from '../support/laid-out.ts';
import { randomBriefObject } from '../support/random-brief-object.ts';

const runNamed = (path: Stations, name: string) => path.runs.find((run) => run.run === name)!;

describe('the stations, run to run', () => {
  it('keeps headings in (-180, 180], due west as 180 from either hand', () => {
    for (const hand of ['left', 'right'] as const) {
      const brief = makeBrief({ chute: { width: inches(28), runs: [arc(100, 90, 'left'), straight(50), arc(100, 90, 'right'), arc(100, 270, 'right'), straight(20)] }, crowdPen: { hand } });
      const path = stations(brief, laidOut(brief));
      expect(runNamed(path, 'chute-2').headingStartDeg).toBe(180);
      expect(runNamed(path, 'chute-5').headingEndDeg).toBe(180);
    }
  });

  it('writes a heading that rounding alone keeps from due west as 180, from either side', () => {
    const brief = makeBrief();
    const layout = laidOut(brief);
    const west = radians(-Math.PI + 1e-13);
    const runs = layout.runs.map((run) => ({ ...run, headings: [west, radians(-Math.PI)] as const }));
    for (const run of stations(brief, { ...layout, runs }).runs) expect([run.headingStartDeg, run.headingEndDeg]).toEqual([180, 180]);
  });

  it('joins run to run: stations, ends and headings, over random briefs', () => {
    let built = 0;
    for (let seed = 0; seed < 60; seed++) {
      const brief = randomBriefObject(seed);
      const laid = layOut(brief);
      if (!laid.ok) continue;
      built++;
      const path = stations(brief, laid.layout);
      const shoulder = (wanted: string): readonly string[] => laid.layout.runs.flatMap(({ name }) => (name === wanted ? [name] : []));
      expect(path.runs.map((run) => run.run)).toEqual([
        ...brief.holdingPens.map(({ name }) => name), ...brief.alley.runs.map((_, i) => `alley-${String(i + 1)}`), 'crowd-pen', 'junction', ...brief.chute.runs.map((_, i) => `chute-${String(i + 1)}`),
        ...shoulder('pad-shoulder'), ...(brief.squeezePad === null ? [] : ['squeeze-pad']), ...shoulder('sort-shoulder'), ...brief.sortPens.map(({ name }) => name),
      ]);
      const first = path.runs.findIndex(({ run }) => run === 'chute-1');
      path.runs.slice(first + 1).forEach((run, i) => {
        const { end, headingEndDeg } = path.runs[first + i]!;
        expect(Math.hypot(run.start[0] - end[0], run.start[1] - end[1])).toBeLessThan(1e-6);
        expect(Math.cos(((run.headingStartDeg - headingEndDeg) * Math.PI) / 180)).toBeCloseTo(1, 9);
      });
      const chute = path.runs.filter((run) => run.from !== null);
      chute.forEach((run, i) => {
        const before = chute[i - 1];
        expect(run.from).toBeCloseTo(before === undefined ? 0 : before.from! + before.length, 6);
        const [x, y] = before?.end ?? path.mouth;
        expect(Math.hypot(run.start[0] - x, run.start[1] - y)).toBeLessThan(1e-6);
        const turn = run.hand === null ? 0 : run.angleDeg! * (run.hand === 'left' ? 1 : -1);
        expect(Math.cos(((run.headingStartDeg + turn - run.headingEndDeg) * Math.PI) / 180)).toBeCloseTo(1, 9);
      });
      for (const { headingStartDeg, headingEndDeg } of path.runs) {
        for (const heading of [headingStartDeg, headingEndDeg]) {
          expect(heading).toBeGreaterThan(-180);
          expect(heading).toBeLessThanOrEqual(180);
          expect(Object.is(heading, -0)).toBe(false);
        }
      }
    }
    expect(built).toBeGreaterThan(30);
  });

  it('keeps a junction of no length, whose funnel still stands', () => {
    const brief = makeBrief({ crowdPen: { funnelAngle: degrees(90) } });
    expect(runNamed(stations(brief, laidOut(brief)), 'junction')).toMatchObject({ length: 0, headingStartDeg: 90, headingEndDeg: 90 });
  });
});
