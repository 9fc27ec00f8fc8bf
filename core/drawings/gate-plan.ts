/** Gates seen from above: leaf where it is shut, the ground that it swings over, a backstop's frame across the chute. */
import { inches, radians } from '../base/quantity.ts';
import { add, scale, unitAt, type Vec, viewPoint } from '../base/points.ts';
import { PENS } from '../drafting/kit.ts';
import { type CalloutSpec, type Shape } from '../drafting/model.ts';
import { type Pen } from '../drafting/primitives.ts';
import { isSwingGate, type CrowdGate, type Layout, type Opening, type Swing, type SwingGate } from '../layout/index.ts';
import { gateMarks } from '../parts/index.ts';

/** Half of a backstop's leaf and guides along the walk, inches, as drawn. */
const SLIDE = 1.25;

/** The gates that belong to these runs. */
export function gatePlanShapes(layout: Layout, runs: ReadonlySet<string>): Shape[] {
  const { crowdGate } = layout;
  return [
    ...(runs.has(crowdGate.run) ? crowdShapes(crowdGate) : []),
    ...layout.openings.filter(({ run }) => runs.has(run)).flatMap(openingShapes),
  ];
}

/** Each gate by its name, beside its leaf. */
export function gateCallouts(layout: Layout, runs: ReadonlySet<string>, middle: Vec): CalloutSpec[] {
  const marks = gateMarks(layout);
  return [layout.crowdGate, ...layout.openings].filter(({ run }) => runs.has(run)).map((gate): CalloutSpec => {
    const at = gate.kind === 'backstop' ? gate.at : leafMiddle(gate.swing);
    const away = { x: at.x - middle.x, y: at.y - middle.y };
    return { text: marks.get(gate.path)!, target: viewPoint(at.x, at.y), piece: null, toward: Math.hypot(away.x, away.y) < 1 ? { x: 1, y: 0 } : away, layer: 'NOTES' };
  });
}

const leafMiddle = (swing: Swing): Vec => add(swing.pin, scale(unitAt(swing.shut), swing.reach / 2));

const openingShapes = (one: Opening): Shape[] => (isSwingGate(one) ? swingShapes(one) : backstopShapes(one));

/** The end of a leaf that points this way. */
export const leafTip = ({ pin, reach }: Swing, direction: number): Vec => add(pin, scale(unitAt(direction), reach));

function swingShapes({ swing }: SwingGate): Shape[] {
  const open = swing.shut + swing.turn;
  return [
    line(swing.pin, leafTip(swing, swing.shut), PENS.outline),
    line(swing.pin, leafTip(swing, open), PENS.hidden),
    arc(swing, swing.shut, swing.turn),
  ];
}

function crowdShapes({ swing, rest }: CrowdGate): Shape[] {
  const back = rest === null ? 0 : rest.turn;
  return [
    line(swing.pin, leafTip(swing, swing.shut), PENS.outline),
    ...(rest === null ? [] : [line(swing.pin, leafTip(swing, swing.shut + back), PENS.hidden), arc(swing, swing.shut + back, -back)]),
  ];
}

function backstopShapes({ sides }: Extract<Opening, { kind: 'backstop' }>): Shape[] {
  const [a, b] = [sides.left.post, sides.right.post];
  const size = Math.hypot(b.x - a.x, b.y - a.y);
  const along = scale({ x: -(b.y - a.y) / size, y: (b.x - a.x) / size }, SLIDE);
  return [along, scale(along, -1)].map((off) => line(add(a, off), add(b, off), PENS.thin));
}

const line = (a: Vec, b: Vec, pen: Pen): Shape => ({ kind: 'curve', pen, curve: { kind: 'line', a: viewPoint(a.x, a.y), b: viewPoint(b.x, b.y) } });

const arc = ({ pin, reach }: Swing, start: number, sweep: number): Shape => ({
  kind: 'curve',
  pen: PENS.hidden,
  curve: { kind: 'arc', center: viewPoint(pin.x, pin.y), radius: inches(reach), start: radians(start), sweep: radians(sweep) },
});
