import { describe, expect, it } from 'vitest';
import { degrees, inches } from '../../core/base/quantity.ts';
import { type Brief } from '../../core/brief/types.ts';
import { compass } from '../../core/drawings/compass.ts';
import { glareTable } from '../../core/drawings/glare-table.ts';
import { makeBrief, straight } from '../support/brief-builder.ts';
import { laidOut } from '../support/laid-out.ts';

const sited = (bearing: number): Brief => {
  const brief = makeBrief({ chute: { width: inches(28), runs: [straight(240)] } });
  return { ...brief, site: { ...brief.site, latitude: 0, longitude: 0, timeZone: 'UTC', bearing: degrees(bearing), work: { from: 360, to: 1080, months: [3] } } };
};

describe('the compass on the plan', () => {
  it.each([[0, 0, 1], [90, -1, 0], [15, -Math.sin(Math.PI / 12), Math.cos(Math.PI / 12)]])('points its arrow to true north where +y lies at %d deg', (bearing, x, y) => {
    const rose = compass(sited(bearing), { x: 7, y: -3 }, 10)!;
    const arrow = rose.shapes[1]!;
    if (arrow.kind !== 'curve' || arrow.curve.kind !== 'line') throw new Error(arrow.kind);
    const { a, b } = arrow.curve;
    expect((b.x - a.x) / 20).toBeCloseTo(x, 9);
    expect((b.y - a.y) / 20).toBeCloseTo(y, 9);
  });

  it('shows a low sun in the east before noon and in the west after it, by hours worked by hand (tests/checks/sun/glare.test.ts)', () => {
    const { callouts } = compass(sited(0), { x: 0, y: 0 }, 10)!;
    expect(callouts[0]!.text).toBe('sun low 06:10 to 08:10');
    expect(callouts[0]!.toward.x).toBeGreaterThan(0);
    expect(callouts[1]!.toward.x).toBeLessThan(0);
    expect(callouts[1]!.text).toMatch(/^sun low 16:10 to 18:00$/);
  });

  it('is left out where the brief gives no bearing', () => {
    expect(compass(makeBrief(), { x: 0, y: 0 }, 10)).toBeNull();
    expect(glareTable({ brief: makeBrief(), layout: laidOut(makeBrief()) })).toBeNull();
  });
});

it('the table of glare says where each run leads and when the sun stands there', () => {
  const brief = sited(90);
  const rows = glareTable({ brief, layout: laidOut(brief) })!.rows;
  expect(rows.map(([run, heading]) => [run, heading])).toEqual([['alley-1', '270°'], ['crowd-pen', '090°'], ['junction', '090°'], ['chute-1', '090°']]);
  expect(rows[3]!.at(-1)).toBe('Mar 06:10 to 08:10');
});
