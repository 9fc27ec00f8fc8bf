/** A ramp's own plan: faces, posts, steps or cleats; clear width, where its low end lies, which way the cattle walk. */
import { curvePoint } from '../../base/curve.ts';
import { inches } from '../../base/quantity.ts';
import { type Vec, sheetPoint, viewPoint } from '../../base/points.ts';
import { PENS, measureText, printSize } from '../../drafting/kit.ts';
import { type CalloutSpec, type Shape, type View } from '../../drafting/model.ts';
import { footHeight } from '../../drafting/view.ts';
import { faceCurve, type Ramp } from '../../layout/index.ts';
import { RAMP_PRACTICE } from '../../parts/index.ts';
import { say } from '../../text/index.ts';
import { turnPlan } from '../bounds.ts';
import { type Block } from '../flow.ts';
import { type DrawInput, type Page } from '../input.ts';
import { type Scale } from '../scales.ts';
import { postPieces } from '../site-view.ts';
import { rampShapes } from './from-above.ts';
import { line } from './shapes.ts';

/** Half the breadth that a ramp takes with its fences. */
const reachOf = (input: DrawInput, ramp: Ramp): number =>
  ramp.brief.width / 2 + Math.max(...input.layout.fences.filter((fence) => fence.run === ramp.name).map(({ section }) => section.k + section.D / 2));

export function aboveSize(input: DrawInput, page: Page, ramp: Ramp, { scale, text }: Scale): { readonly width: number; readonly height: number } {
  const { kit } = page;
  const width = Math.max((ramp.length + RAMP_PRACTICE.bumper.thick) * scale + 24 * kit.h, measureText(kit, lowEndText(input, ramp)) + 26 * kit.h);
  const foot = footHeight(kit, { title: say('drawings.ramp.above', { ramp: ramp.name }), scaleText: text }, page.block, width);
  return { width, height: foot + 2 * reachOf(input, ramp) * scale + 14 * kit.h };
}

export function aboveBlock(input: DrawInput, page: Page, ramp: Ramp, scale: Scale): Block {
  const { kit } = page;
  const size = aboveSize(input, page, ramp, scale);
  const title = say('drawings.ramp.above', { ramp: ramp.name });
  const foot = footHeight(kit, { title, scaleText: scale.text }, page.block, size.width);
  // The low end lies at the view's zero, the way up along +x.
  const turn = turnPlan(ramp.at, ramp.brief.kind === 'load' ? ramp.heading : ramp.heading + Math.PI);
  const pieceOf = postPieces(input.parts);
  const fences = input.layout.fences.filter((fence) => fence.run === ramp.name);
  const shapes: Shape[] = [
    ...fences.map((fence): Shape => ({ kind: 'curve', curve: turn.curve(faceCurve(fence, 0, fence.length, 0)), pen: PENS.outline })),
    ...rampShapes(ramp).flatMap((shape): Shape[] => {
      if (shape.kind !== 'curve' || shape.curve.kind !== 'line') return [];
      return [line(shape.pen, turn.point(shape.curve.a), turn.point(shape.curve.b))];
    }),
    line(PENS.center, { x: 0, y: 0 }, { x: ramp.length, y: 0 }),
    ...input.layout.posts.filter((post) => post.run === ramp.name).map((post): Shape => {
      const piece = pieceOf(post);
      const circle = { kind: 'circle', center: turn.point(post.at), radius: inches(post.section.across / 2), pen: PENS.thin } as const;
      return piece === undefined ? circle : { ...circle, piece: piece.key };
    }),
  ];
  return {
    ...size,
    label: ramp.name,
    place: (x, y) => {
      const view: View = {
        id: `above ${ramp.name}`,
        title,
        scale: scale.scale,
        scaleText: scale.text,
        at: sheetPoint(x + 10 * kit.h, y + foot + (size.height - foot) / 2),
        box: { x, y, ...size },
        shapes,
        dimensions: [{
          measure: 'linear', along: 'y', required: true, from: viewPoint(ramp.length, -ramp.brief.width / 2), to: viewPoint(ramp.length, ramp.brief.width / 2),
          offsets: [-4, -6, -8, -10].map((reach) => reach * kit.h),
        }],
        runnings: [],
        bands: [],
        callouts: calloutsOf(input, ramp),
      };
      return { views: [view] };
    },
  };
}

function lowEndText(input: DrawInput, ramp: Ramp): string {
  const print = (value: number): string => printSize({ units: input.brief.units }, value);
  return say('drawings.ramp.lowEnd', { x: print(ramp.at.x), y: print(ramp.at.y) });
}

function calloutsOf(input: DrawInput, ramp: Ramp): CalloutSpec[] {
  const note = (text: string, target: Vec, toward: Vec): CalloutSpec => ({ text, target: viewPoint(target.x, target.y), piece: null, toward, layer: 'NOTES' });
  const middle = curvePoint({ kind: 'line', a: viewPoint(0, 0), b: viewPoint(ramp.length, 0) }, 0.5);
  return [
    note(lowEndText(input, ramp), { x: 0, y: 0 }, { x: -0.6, y: 1 }),
    note(say(ramp.brief.kind === 'load' ? 'drawings.ramp.walkUp' : 'drawings.ramp.walkDown'), middle, { x: 0.3, y: 1 }),
  ];
}
