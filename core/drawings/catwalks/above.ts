/** A catwalk as it lies beside its fence: chords, width and radius of its parts, its steps. */
import { inches, radians } from '../../base/quantity.ts';
import { angleOf, sub, viewPoint, type Vec } from '../../base/points.ts';
import { PENS } from '../../drafting/kit.ts';
import { type CalloutSpec, type DimensionSpec, type Shape } from '../../drafting/model.ts';
import { faceCurve, type Catwalk, type Fence } from '../../layout/index.ts';
import { type Parts } from '../../parts/index.ts';
import { say } from '../../text/index.ts';
import { boundsOf, extremesOf, turnPlan } from '../bounds.ts';
import { type Detail } from '../detail.ts';
import { outline } from '../ramps/shapes.ts';
import { piecesOf, stepLines } from './shapes.ts';

const seen = ({ x, y }: Vec): ReturnType<typeof viewPoint> => viewPoint(x, y);
const AS_IT_LIES = turnPlan({ x: 0, y: 0 }, 0);

export function aboveDetail(catwalk: Catwalk, fences: readonly Fence[], parts: Parts, mark: string): Detail {
  const decks = piecesOf(parts, catwalk).filter(({ place }) => place.part === 'deck');
  const beside = catwalk.stretches.map((stretch) => ({ stretch, fence: fences.find(({ run, side }) => run === stretch.run && side === stretch.side)! }));
  const faces = beside.map(({ stretch, fence }) => faceCurve(fence, stretch.from, stretch.to, 0));
  const corners = [...decks.flatMap(({ place }) => place.plan), ...catwalk.flights.flatMap((flight) => flight.corners)];
  return {
    id: `plan ${mark}`,
    title: say('drawings.catwalk.plan', { mark, run: catwalk.brief.run, side: say(`drawings.side.${catwalk.side}`) }),
    bounds: boundsOf([...corners, ...faces.flatMap(extremesOf)]),
    shapes: [
      ...faces.map((curve): Shape => ({ kind: 'curve', pen: PENS.outline, curve: AS_IT_LIES.curve(curve) })),
      ...beside.flatMap(({ stretch, fence }) => stretch.posts.map(({ back, tip, reach }): Shape => {
        const r = fence.section.D / 2;
        return { kind: 'circle', pen: PENS.thin, center: viewPoint(back.x - ((tip.x - back.x) / reach) * r, back.y - ((tip.y - back.y) / reach) * r), radius: inches(r) };
      })),
      ...decks.flatMap(({ piece, place }) => outline(PENS.outline, place.plan, piece.key)),
      ...catwalk.flights.filter(({ length }) => length > 0).flatMap(stepLines),
    ],
    dimensions: (h) => [...beside.flatMap((one) => radiusOf(one)), ...firstOfMark(decks).flatMap(({ place }) => chords(place.plan, catwalk.side === 'left' ? 1 : -1, h)), ...across(decks[Math.floor(decks.length / 2)]?.place.plan ?? [], h)],
    callouts: firstOfMark(decks).map(({ piece, place: { plan } }): CalloutSpec => {
      const [a, b, c, d] = plan;
      const middle = { x: (a!.x + b!.x + c!.x + d!.x) / 4, y: (a!.y + b!.y + c!.y + d!.y) / 4 };
      return { text: piece.mark, target: seen(middle), piece: piece.key, toward: sub(middle, a!), layer: 'MARKS', optional: true };
    }),
  };
}

function firstOfMark<T extends { readonly piece: { readonly mark: string } }>(list: readonly T[]): readonly T[] {
  const found = new Set<string>();
  return list.filter(({ piece }) => !found.has(piece.mark) && found.add(piece.mark));
}

const between = (p: Vec, q: Vec): Vec => ({ x: (p.x + q.x) / 2, y: (p.y + q.y) / 2 });

function radiusOf({ stretch, fence }: { readonly stretch: Catwalk['stretches'][number]; readonly fence: Fence }): DimensionSpec[] {
  if (stretch.backRadius === null || fence.face.kind !== 'arc') return [];
  const { center } = fence.face;
  const angles = stretch.posts.map(({ back }) => radians(angleOf(sub(back, center))));
  return [{ measure: 'radius', required: false, center: seen(center), radius: stretch.backRadius, angles: angles.length > 0 ? angles : [radians(fence.face.start)] }];
}

const size = (from: Vec, to: Vec, offsets: readonly number[]): DimensionSpec =>
  ({ measure: 'aligned', required: false, decimal: true, from: seen(from), to: seen(to), offsets });

/** Both chords of a part; where they have no room the table tells them. */
function chords([a, b, c, d]: readonly Vec[], out: 1 | -1, h: number): DimensionSpec[] {
  if (a === undefined || b === undefined || c === undefined || d === undefined) return [];
  return [size(d, c, [3, 5, 7].map((by) => by * out * h)), size(a, b, [-5, -7, -9].map((by) => by * out * h))];
}

/** The width of a part: all of a deck are as wide. */
function across([a, b, c, d]: readonly Vec[], h: number): DimensionSpec[] {
  if (a === undefined || b === undefined || c === undefined || d === undefined) return [];
  return [size(between(a, b), between(d, c), [0, 2 * h, -2 * h])];
}
