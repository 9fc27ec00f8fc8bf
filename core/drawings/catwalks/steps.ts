/** A flight of steps from its side: stringers, treads and rails, every rise and run. */
import { radians } from '../../base/quantity.ts';
import { viewPoint, type Vec } from '../../base/points.ts';
import { PENS } from '../../drafting/kit.ts';
import { type CalloutSpec, type DimensionSpec, type Shape } from '../../drafting/model.ts';
import { type Catwalk, type StepFlight } from '../../layout/index.ts';
import { say } from '../../text/index.ts';
import { printAngle } from '../../units/index.ts';
import { type Block } from '../flow.ts';
import { besideSteel, frontBlock, type FrontView, RIGHT } from '../front-view.ts';
import { type Page } from '../input.ts';
import { line, outline, rectangle } from '../ramps/shapes.ts';
import { type Scale, scalesOf } from '../scales.ts';
import { type DeckPiece } from './shapes.ts';

/** How much of the deck is drawn, inches. */
const STUB = 8;

export function stepsBlock(page: Page, catwalk: Catwalk, flight: StepFlight, pieces: readonly DeckPiece[], mark: string): Block | null {
  if (flight.risers < 2) return null;
  const { risers, riser, tread, angle, at, height } = flight;
  const own = pieces.filter(({ place }) => place.flight?.at === at);
  // Of two that hide one another from the side, the first.
  const shown = own.filter(({ place }, i) => own.findIndex((one) => same(one.place.flight!.side, place.flight!.side)) === i);
  const reach = risers * tread;
  const stub = height + STUB * stubRise(catwalk, flight);
  const view: FrontView = {
    id: `steps ${mark} ${at}`,
    title: say(`drawings.catwalk.steps.${at}`, { mark, risers, angle: printAngle(angle) }),
    label: mark,
    left: -STUB, right: reach, low: 0, high: Math.max(height, stub, ...own.map(({ place }) => place.high)),
    shapes: [
      line(PENS.thin, { x: -STUB, y: 0 }, { x: reach + 6, y: 0 }),
      line(PENS.thin, { x: -STUB, y: stub }, { x: 0, y: height }),
      ...shown.flatMap(({ piece, place }): Shape[] => outline(PENS.outline, place.flight!.side, piece.key)),
      ...rectangle(PENS.thin, -2, 0, Math.max(0, height - 2.1875), height - 0.1875),
    ],
    labels: [],
    callouts: marks(shown),
    dimensions: (h) => [
      { measure: 'angle', required: false, center: viewPoint(reach, 0), from: radians(Math.PI - angle), to: radians(Math.PI), offsets: [14, 20, 28].map((by) => by * h) },
      ...railHeight(own, height, h),
    ],
    // The upright of the deck's end is where a tape is hooked.
    datum: 0,
    widths: Array.from({ length: risers - 1 }, (_, i) => (i + 1) * tread),
    heights: Array.from({ length: risers }, (_, i) => (i + 1) * riser),
  };
  return frontBlock(page, view, stepsScale(page, view, reach));
}

/** The largest scale at which a flight takes half of the page's height at most, and as much paper right of it as it has steel. */
function stepsScale(page: Page, { high, heights }: FrontView, reach: number): Scale {
  const list = scalesOf(page.block.units);
  const room = page.room.width - besideSteel(page, heights) - RIGHT * page.kit.h;
  return list.find(({ scale }) => scale <= 1 / 6 && (STUB + 2 * reach) * scale <= room && high * scale <= page.room.height * 0.5) ?? list[list.length - 1]!;
}

/** The handrail over the deck's edge, to its upper side: where the steps have one. */
function railHeight(own: readonly DeckPiece[], height: number, h: number): DimensionSpec[] {
  const tops = own.filter(({ place }) => place.part === 'step-rail').flatMap(({ place }) => place.flight!.side);
  if (tops.length === 0) return [];
  const top = tops.reduce((best, point) => (point.y > best.y ? point : best));
  return [{ measure: 'linear', along: 'y', required: true, from: viewPoint(top.x, height), to: viewPoint(top.x, top.y), offsets: [3, 5, 7, -3, -5, -8].map((by) => by * h) }];
}

/** How steeply the deck rises away from its steps: level but where they go on in line from a slope. */
function stubRise({ stretches }: Catwalk, { at, inLine }: StepFlight): number {
  if (!inLine) return 0;
  const parts = stretches.flatMap((stretch) => stretch.parts);
  return at === 'start' ? Math.tan(parts[0]!.slope) : -Math.tan(parts[parts.length - 1]!.slope);
}

const same = (a: readonly Vec[], b: readonly Vec[]): boolean => a.every(({ x, y }, i) => Math.abs(x - b[i]!.x) < 1e-9 && Math.abs(y - b[i]!.y) < 1e-9);

function marks(shown: readonly DeckPiece[]): CalloutSpec[] {
  const seen = new Set<string>();
  return shown.flatMap(({ piece, place }): CalloutSpec[] => {
    if (seen.has(piece.mark)) return [];
    seen.add(piece.mark);
    const side = place.flight!.side;
    const at = { x: side.reduce((sum, { x }) => sum + x, 0) / side.length, y: side.reduce((sum, { y }) => sum + y, 0) / side.length };
    const toward = place.part === 'stringer' ? { x: -0.6, y: -1 } : { x: 1, y: 0.8 };
    return [{ text: piece.mark, target: viewPoint(at.x, at.y), piece: piece.key, toward, layer: 'MARKS' }];
  });
}
