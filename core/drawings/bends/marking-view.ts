/** A rolled piece as the rolls leave it, seen on its top line: straight ends, straightedge, rise, and where it is marked. */
import { type Curve } from '../../base/curve.ts';
import { add, leftOf, scale, unitAt, type Vec, viewPoint, type ViewPoint } from '../../base/points.ts';
import { inches, radians } from '../../base/quantity.ts';
import { PENS } from '../../drafting/kit.ts';
import { type CalloutSpec, type Shape } from '../../drafting/model.ts';
import { type Pen } from '../../drafting/primitives.ts';
import { say, type StringKey } from '../../text/index.ts';
import { detailView } from '../detail.ts';
import { type Block } from '../flow.ts';
import { type Page } from '../input.ts';

/** The bend that is shown, inches: tighter than any that a brief allows, so that its rise is seen. */
const RADIUS = 26;
const PIPE = 2.4;
const GRIP = 8;
/** Half of the arc's angle, radians; the gauge chord takes less of it. */
const HALF = 0.72;
const GAUGE = 0.45;
const TALL = 2.35;

const at = (angle: number, radius: number): ViewPoint => {
  const { x, y } = scale(unitAt(angle), radius);
  return viewPoint(x, y - RADIUS);
};
const view = ({ x, y }: Vec): ViewPoint => viewPoint(x, y);
const TOP = Math.PI / 2;
/** Start at the right, so that along the piece the inside, below, is on the left. */
const [FROM, TO] = [TOP - HALF, TOP + HALF];

/** The picture as a block across the page. */
export function markingBlock(page: Page, label: string): Block {
  const { width } = page.room;
  const title = say('drawings.bend.show');
  return {
    width, height: TALL, label,
    place: (x, y) => ({
      views: [detailView(page, { id: 'marking', title, bounds: { left: -24, right: 24, low: -13, high: 4 }, shapes: shapes(), dimensions: () => [], callouts: callouts() }, { x, y, width, height: TALL }, 3)],
    }),
  };
}

function shapes(): readonly Shape[] {
  const curve = (pen: Pen, c: Curve<ViewPoint>): Shape => ({ kind: 'curve', curve: c, pen });
  const line = (pen: Pen, a: Vec, b: Vec): Shape => curve(pen, { kind: 'line', a: view(a), b: view(b) });
  const arc = (pen: Pen, radius: number): Shape =>
    curve(pen, { kind: 'arc', center: viewPoint(0, -RADIUS), radius: inches(radius), start: radians(FROM), sweep: radians(TO - FROM) });
  const [inner, outer] = [RADIUS - PIPE / 2, RADIUS + PIPE / 2];
  const grips = [FROM, TO].flatMap((angle) => {
    const way = scale(leftOf(unitAt(angle)), angle === FROM ? -GRIP : GRIP);
    const ends = [inner, outer].map((radius) => add(at(angle, radius), way));
    return [
      ...[inner, outer].map((radius, i) => line(PENS.hidden, at(angle, radius), ends[i]!)),
      line(PENS.hidden, ends[0]!, ends[1]!),
      line(PENS.outline, at(angle, inner), at(angle, outer)),
      line(PENS.center, at(angle, RADIUS), add(at(angle, RADIUS), way)),
    ];
  });
  const [a, b] = gaugeEnds();
  return [arc(PENS.outline, inner), arc(PENS.outline, outer), arc(PENS.center, RADIUS), ...grips, line(PENS.thin, a, b), line(PENS.thin, middle(), at(TOP, inner))];
}

const gaugeEnds = (): readonly [ViewPoint, ViewPoint] => [at(TOP - GAUGE, RADIUS - PIPE / 2), at(TOP + GAUGE, RADIUS - PIPE / 2)];
const middle = (): ViewPoint => view(scale(add(...gaugeEnds()), 0.5));

function callouts(): readonly CalloutSpec[] {
  const word = (key: StringKey, target: Vec, toward: Vec): CalloutSpec => ({ text: say(key), target: view(target), piece: null, toward, layer: 'NOTES' });
  const [right, left] = gaugeEnds();
  const grip = (angle: number, sign: number): Vec => add(at(angle, RADIUS), scale(leftOf(unitAt(angle)), (sign * GRIP) / 2));
  return [
    word('drawings.bend.show.start', at(FROM, RADIUS + PIPE / 2), { x: 1, y: 0.8 }),
    word('drawings.bend.show.grip', grip(FROM, -1), { x: 1, y: 0.1 }),
    word('drawings.bend.show.other', grip(TO, 1), { x: -1, y: 0.1 }),
    word('drawings.bend.show.top', at(TOP + 0.3, RADIUS), { x: -1, y: 0.9 }),
    word('drawings.bend.show.arc', at(TOP - 0.2, RADIUS), { x: 1, y: 0.9 }),
    word('drawings.bend.show.chord', add(scale(right, 0.75), scale(left, 0.25)), { x: 0.7, y: -1 }),
    word('drawings.bend.show.rise', scale(add(middle(), at(TOP, RADIUS - PIPE / 2)), 0.5), { x: -0.7, y: -1 }),
    word('drawings.bend.show.inside', at(TOP + 0.55, RADIUS - PIPE / 2), { x: -0.3, y: -1 }),
  ];
}
