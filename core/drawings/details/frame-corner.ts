/** The upper corner of a gate's frame on its free side, from the front: mitre, the highest bar coped to the stile, the skin's stitches. */
import { type Inches } from '../../base/quantity.ts';
import { PENS } from '../../drafting/kit.ts';
import { type Brief } from '../../brief/types.ts';
import { barWeld, buttWeld, gateSkinWeld, latchWeld } from '../../schedules/index.ts';
import { parseSection, parseSheet } from '../../steel/index.ts';
import { say } from '../../text/index.ts';
import { boundsOf } from '../bounds.ts';
import { type Detail } from '../detail.ts';
import { type GatePiece, straight } from '../gate-outline.ts';
import { size, weldAt, word } from './say-size.ts';

/** Null where the leaf has no mitred frame. x from the frame's outer edge to the left, y from its top down. */
export function frameCorner(brief: Brief, mark: string, pieces: readonly GatePiece[]): Detail | null {
  const stile = pieces.find(({ piece, place }) => place.part === 'stile' && piece.ends.some((end) => end.kind === 'mitre'));
  const bars = pieces.filter(({ place }) => place.part === 'bar').flatMap(({ piece, place: { outline } }) => (outline.kind === 'bar' ? [{ piece, y: outline.a.y }] : []));
  const frame = stile === undefined ? null : parseSection(stile.piece.section);
  if (stile === undefined || frame === null || stile.place.outline.kind !== 'bar') return null;
  const edge = Math.max(...pieces.flatMap(({ place: { part, outline } }) => (part === 'stile' && outline.kind === 'bar' ? [outline.b.y + outline.size / 2] : [])));
  const highest = bars.toSorted((a, b) => b.y - a.y)[0];
  const bar = highest === undefined ? null : parseSection(highest.piece.section);
  const w = frame.across;
  const down = highest === undefined || bar === null ? null : edge - highest.y;
  const depth = down === null || bar === null ? 4 * w : Math.min(down + bar.across, 9 * w);
  const wide = Math.max(5 * w, depth * 0.7);
  const shown = down !== null && bar !== null && down + bar.across <= 9 * w;
  const skin = pieces.find(({ place }) => place.part === 'skin');
  const thickness = skin === undefined ? null : parseSheet(skin.piece.section)?.thickness ?? null;
  const top = skin?.place.outline.kind === 'plate' ? edge - skin.place.outline.top : null;
  const gusset = gussetAt(pieces, edge, w);
  const ring = gusset?.ring ?? [];
  return {
    id: `frame corner ${mark}`,
    title: say('drawings.detail.frameCorner', { mark, frame: frame.name }),
    bounds: boundsOf([{ x: -wide, y: -depth }, { x: 0, y: 0 }]),
    shapes: [
      straight(PENS.outline, -wide, 0, 0, 0), straight(PENS.outline, -wide, -w, -w, -w), straight(PENS.outline, 0, 0, 0, -depth), straight(PENS.outline, -w, -w, -w, -depth),
      straight(PENS.outline, 0, 0, -w, -w),
      ...(gusset === null ? [] : ring.map(([x, y], i) => straight(PENS.outline, x, y, ...ring[(i + 1) % ring.length]!))),
      ...(shown ? [-down + bar.across / 2, -down - bar.across / 2].map((y) => straight(PENS.outline, -wide, y, -w, y)) : []),
    ],
    dimensions: (h) => [
      size(h, 'x', [-w, -depth], [0, -depth], -1),
      ...(shown ? [size(h, 'y', [0, -down], [0, 0], 1)] : []),
    ],
    callouts: [
      word('drawings.gate.stile', [-w / 2, -depth * 0.8], [1, -0.3]),
      ...(gusset === null ? [] : [word('drawings.detail.gusset', [-w - 1, -w - 1], [-1, -1], { mark: gusset.mark })]),
      ...(shown ? [word('drawings.detail.bar', [-wide * 0.8, -down], [-0.5, -1])] : []),
    ],
    welds: [
      weldAt(buttWeld(brief, 'frame-corner', frame.wall, 0, false), [-w / 2, -w / 2], [0.7, 1]),
      ...(shown ? [weldAt(barWeld(brief, bar, frame), [-w, -down + bar.across / 2], [-1, 0.7])] : []),
      ...(gusset === null ? [] : [weldAt(latchWeld(brief, 'gusset-frame', gusset.thinner < frame.wall ? gusset.thinner : frame.wall), [-w, -w - gusset.size * 0.6], [-0.6, -1])]),
      ...(thickness === null || top === null || top > depth - w ? [] : [weldAt(gateSkinWeld(brief, thickness, frame.wall), [-wide * 0.75, -Math.max(w, top)], [-0.4, -1])]),
    ],
  };
}

interface Gusset {
  readonly mark: string;
  /** From the frame's outer edge to the left, from its top down. */
  readonly ring: readonly (readonly [number, number])[];
  readonly size: number;
  readonly thinner: Inches;
}

/** The gusset in the corner that is shown. */
function gussetAt(pieces: readonly GatePiece[], edge: number, w: number): Gusset | null {
  const right = Math.max(...pieces.flatMap(({ place: { part, outline } }) => (part === 'stile' && outline.kind === 'bar' ? [outline.a.x + outline.size / 2] : [])));
  for (const { piece, place: { part, outline } } of pieces) {
    const thinner = parseSheet(piece.section)?.thickness;
    if (part !== 'gusset' || outline.kind !== 'plate' || outline.corners === undefined || thinner === undefined) continue;
    if (right - outline.right > w + 0.1 || edge - outline.top > w + 0.1) continue;
    return { mark: piece.mark, ring: outline.corners.map(({ x, y }) => [x - right, y - edge] as const), size: piece.length, thinner };
  }
  return null;
}
