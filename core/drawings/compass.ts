/** The rose beside the plan: true north, and where the sun stands low in working hours. */
import { type Vec, viewPoint } from '../base/points.ts';
import { inches, radians } from '../base/quantity.ts';
import { type Brief } from '../brief/types.ts';
import { clockText, type LowSun, lowSuns, sunSite } from '../checks/index.ts';
import { PENS } from '../drafting/kit.ts';
import { type CalloutSpec, type Shape } from '../drafting/model.ts';
import { type Pen } from '../drafting/primitives.ts';
import { say } from '../text/index.ts';

export interface Compass {
  readonly shapes: readonly Shape[];
  readonly callouts: readonly CalloutSpec[];
}

/** Low suns nearer than this to one another round the horizon, and on one side of the meridian, are one stretch; degrees. */
const APART = 15;

/** The rose of a site whose bearing is known, about a point of the plan; `radius` in plan inches. Null where the brief gives no bearing. */
export function compass(brief: Brief, center: Vec, radius: number): Compass | null {
  const { bearing } = brief.site;
  if (bearing === null) return null;
  // +y lies at the site's bearing: an azimuth's way in the plan, counter-clockwise from +x.
  const wayOf = (azimuth: number): number => Math.PI / 2 + bearing - (azimuth * Math.PI) / 180;
  const at = (azimuth: number, reach: number): Vec => {
    const way = wayOf(azimuth);
    return { x: center.x + Math.cos(way) * reach, y: center.y + Math.sin(way) * reach };
  };
  const line = (a: Vec, b: Vec, pen: Pen): Shape => ({ kind: 'curve', curve: { kind: 'line', a: viewPoint(a.x, a.y), b: viewPoint(b.x, b.y) }, pen });
  const site = sunSite(brief);
  const stretches = 'work' in site ? stretchesOf(lowSuns(site)) : [];
  return {
    shapes: [
      { kind: 'circle', center: viewPoint(center.x, center.y), radius: inches(radius), pen: PENS.thin },
      ...northArrow(at, radius, line),
      ...[90, 180, 270].map((azimuth) => line(at(azimuth, 0.85 * radius), at(azimuth, radius), PENS.thin)),
      ...stretches.flatMap(({ from, to }): Shape[] => [
        {
          kind: 'curve', pen: PENS.outline,
          curve: {
            kind: 'arc', center: viewPoint(center.x, center.y), radius: inches(1.12 * radius), start: radians(wayOf(to)), sweep: radians(((to - from) * Math.PI) / 180),
          },
        },
        line(at(from, 0), at(from, 1.12 * radius), PENS.thin),
        line(at(to, 0), at(to, 1.12 * radius), PENS.thin),
      ]),
    ],
    callouts: stretches.map(({ from, to, first, last }): CalloutSpec => {
      const target = at((from + to) / 2, 1.12 * radius);
      return {
        text: first === last ? say('drawings.compass.once', { at: clockText(first) }) : say('drawings.compass.sun', { from: clockText(first), to: clockText(last) }), target: viewPoint(target.x, target.y), piece: null,
        toward: { x: target.x - center.x, y: target.y - center.y }, layer: 'NOTES', optional: true,
      };
    }),
  };
}

/** An arrow through the rose and an upright N of three strokes past its tip. */
function northArrow(at: (azimuth: number, reach: number) => Vec, radius: number, line: (a: Vec, b: Vec, pen: Pen) => Shape): Shape[] {
  const tip = at(0, radius);
  const middle = at(0, 1.6 * radius);
  const corner = (side: 1 | -1, up: 1 | -1): Vec => ({ x: middle.x + side * 0.22 * radius, y: middle.y + up * 0.32 * radius });
  return [
    line(at(180, radius), tip, PENS.outline),
    line(tip, at(12, 0.6 * radius), PENS.outline),
    line(tip, at(-12, 0.6 * radius), PENS.outline),
    line(corner(-1, -1), corner(-1, 1), PENS.outline),
    line(corner(-1, 1), corner(1, -1), PENS.outline),
    line(corner(1, -1), corner(1, 1), PENS.outline),
  ];
}

/** Azimuths at which the sun is low in working hours, and from when to when by the clock. */
interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly first: number;
  readonly last: number;
}

function stretchesOf(suns: readonly LowSun[]): readonly Stretch[] {
  const found: Stretch[] = [];
  for (const { azimuth, minute } of [...suns].sort((a, b) => a.azimuth - b.azimuth)) {
    const before = found.at(-1);
    if (before === undefined || azimuth - before.to > APART || (before.to < 180 && azimuth >= 180)) found.push({ from: azimuth, to: azimuth, first: minute, last: minute });
    else found[found.length - 1] = { ...before, to: azimuth, first: Math.min(before.first, minute), last: Math.max(before.last, minute) };
  }
  return found;
}
