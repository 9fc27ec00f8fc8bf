/** A word on a leader that looks for its own place: near the target first, on the side asked for, then farther and all round. */
import { inches } from '../base/quantity.ts';
import { type Vec, add, angleOf, scale, unitAt } from '../base/points.ts';
import { DOT } from './band.ts';
import { type Kit, PENS, makeText, measureText } from './kit.ts';
import { type Callout, type LayerName, type Pen, type Stroke } from './primitives.ts';
import { dotStroke, lineStroke, toSheet } from './strokes.ts';

/** Leader lengths to try, in letter heights, and turns from the side asked for, in degrees. */
export const REACHES = [3, 4.5, 6.5, 9, 12, 16, 21, 27, 34];
/** The longest leader of a word that is better dropped than far off, letter heights. */
const NEAR = 6.5;
export const TURNS = [0, 20, -20, 40, -40, 60, -60, 85, -85, 110, -110, 140, -140, 170];

export interface CalloutInput {
  readonly view: string;
  readonly text: string;
  readonly piece: string | null;
  readonly target: Vec;
  /** Where else its leader may end. */
  readonly others?: readonly Vec[];
  /** No long leader. */
  readonly near?: boolean;
  readonly toward: Vec;
  readonly layer: Extract<LayerName, 'MARKS' | 'NOTES'>;
}

export function* calloutPlaces(kit: Kit, input: CalloutInput): Generator<Callout> {
  const pen: Pen = input.layer === 'MARKS' ? PENS.mark : PENS.note;
  const heading = angleOf(input.toward);
  const shelf = 1.2 * kit.h;
  const targets = [input.target, ...(input.others ?? [])];
  for (const reach of REACHES) {
    if (input.near === true && reach > NEAR) return;
    for (const target of targets) {
      for (const turn of TURNS) {
        const way = unitAt(heading + (turn * Math.PI) / 180);
        const elbow = add(target, scale(way, reach * kit.h));
        const side = way.x >= 0 ? 1 : -1;
        const end = add(elbow, { x: side * shelf, y: 0 });
        const at = { x: end.x + side * 1.6 * kit.clear, y: end.y - (kit.up - kit.down) / 2 };
        const strokes: Stroke[] = [
          lineStroke(pen, target, elbow),
          lineStroke(pen, elbow, end),
          dotStroke(input.layer, target, DOT),
          makeText(kit, input.layer, input.text, toSheet(at), side > 0 ? 'start' : 'end'),
        ];
        yield calloutOf({ ...input, target }, input.text, strokes);
      }
    }
  }
}

/** A numbered bubble on a leader, for a text that found no room: the text then stands in a table. */
export function* bubblePlaces(kit: Kit, input: CalloutInput, number: number): Generator<Callout> {
  const pen: Pen = input.layer === 'MARKS' ? PENS.mark : PENS.note;
  const heading = angleOf(input.toward);
  const label = String(number);
  const radius = Math.hypot(measureText(kit, label) / 2, (kit.up + kit.down) / 2) + kit.clear + 0.01;
  for (const reach of [...REACHES, 44, 56, 70]) {
    for (const turn of TURNS) {
      const way = unitAt(heading + (turn * Math.PI) / 180);
      const center = add(input.target, scale(way, reach * kit.h + radius));
      const strokes: Stroke[] = [
        lineStroke(pen, input.target, add(input.target, scale(way, reach * kit.h))),
        { kind: 'circle', pen, center: toSheet(center), radius: inches(radius) },
        dotStroke(input.layer, input.target, DOT),
        makeText(kit, input.layer, label, toSheet({ x: center.x, y: center.y - (kit.up - kit.down) / 2 }), 'middle'),
      ];
      yield calloutOf(input, label, strokes);
    }
  }
}

const calloutOf = (input: CalloutInput, text: string, strokes: readonly Stroke[]): Callout => ({
  kind: 'callout',
  view: input.view,
  text,
  pieces: input.piece === null ? [] : [input.piece],
  targets: [toSheet(input.target)],
  strokes,
});
