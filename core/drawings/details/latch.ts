/** The slide bolt of a pen gate or alley gate where it shuts, from the front, by the outlines of its own pieces. */
import { PENS } from '../../drafting/kit.ts';
import { type Inches } from '../../base/quantity.ts';
import { type Brief } from '../../brief/types.ts';
import { latchWeld } from '../../schedules/index.ts';
import { parseSection, parseSheet } from '../../steel/index.ts';
import { say } from '../../text/index.ts';
import { boundsOf } from '../bounds.ts';
import { type Detail } from '../detail.ts';
import { gateShapes, type GatePiece, straight } from '../gate-outline.ts';
import { size, weldAt, word } from './say-size.ts';

interface Box {
  readonly x0: number;
  readonly x1: number;
  readonly y0: number;
  readonly y1: number;
}

function boxOf({ place: { outline } }: GatePiece): Box {
  if (outline.kind === 'plate') return { x0: outline.left, x1: outline.right, y0: outline.bottom, y1: outline.top };
  const r = outline.size / 2;
  const [{ a, b }, upright] = [outline, Math.abs(outline.b.y - outline.a.y) > Math.abs(outline.b.x - outline.a.x)];
  const [x0, x1, y0, y1] = [Math.min(a.x, b.x), Math.max(a.x, b.x), Math.min(a.y, b.y), Math.max(a.y, b.y)];
  return upright ? { x0: x0 - r, x1: x1 + r, y0, y1 } : { x0, x1, y0: y0 - r, y1: y1 + r };
}

/** Null where the gate has no bolt. x from the hinges' pin, y from the ground. */
export function latchDetail(brief: Brief, mark: string, pieces: readonly GatePiece[], jamb: Inches): Detail | null {
  const of = (part: GatePiece['place']['part']): readonly GatePiece[] => pieces.filter(({ place }) => place.part === part);
  const [bolt, keeper] = [of('bolt')[0], of('keeper')[0]];
  const sleeves = of('sleeve').toSorted((a, b) => boxOf(a).x0 - boxOf(b).x0);
  const [inner, outer] = sleeves;
  const stile = of('stile').map(boxOf).toSorted((a, b) => b.x1 - a.x1)[0];
  if (bolt === undefined || keeper === undefined || inner === undefined || outer === undefined || stile === undefined) return null;
  const shown = [bolt, keeper, inner, outer, ...of('handle')];
  const boxes = shown.map(boxOf);
  const [b, k, i, o] = [boxOf(bolt), boxOf(keeper), boxOf(inner), boxOf(outer)];
  const low = Math.min(...boxes.map(({ y0 }) => y0)) - 2;
  const high = Math.max(...boxes.map(({ y1 }) => y1)) + 1;
  const wall = (one: GatePiece): Inches => parseSheet(one.piece.section)?.thickness ?? parseSection(one.piece.section)?.wall ?? jamb;
  const thinner = (one: GatePiece, other: Inches): Inches => (wall(one) < other ? wall(one) : other);
  const frame = parseSection(of('stile')[0]!.piece.section)?.wall ?? jamb;
  return {
    id: `latch ${mark}`,
    title: say('drawings.detail.latch', { mark }),
    bounds: boundsOf([{ x: b.x0, y: low }, { x: Math.max(b.x1, k.x1), y: high }]),
    shapes: [
      ...gateShapes(shown),
      ...[stile.x0, stile.x1].map((x) => straight(PENS.thin, x, low, x, high)),
      straight(PENS.center, b.x0 - 1, (b.y0 + b.y1) / 2, Math.max(b.x1, k.x1) + 1, (b.y0 + b.y1) / 2),
    ],
    dimensions: (h) => [
      size(h, 'x', [i.x0, i.y0], [i.x1, i.y0], -1),
      size(h, 'x', [i.x1, i.y0], [o.x0, o.y0], -1),
      size(h, 'x', [stile.x1, high], [k.x1, high], 1),
      size(h, 'y', [k.x1, k.y0], [k.x1, k.y1], 1, false),
    ],
    callouts: [
      word('drawings.detail.bolt', [b.x0 + 0.5, (b.y0 + b.y1) / 2], [-1, 0.8], { bolt: bolt.piece.section }), word('drawings.detail.sleeve', [(i.x0 + i.x1) / 2, i.y1], [-0.3, 1], { sleeve: inner.piece.section }),
      word('drawings.gate.stile', [(stile.x0 + stile.x1) / 2, low + 1], [-0.4, -1]), word('drawings.detail.keeper', [(k.x0 + k.x1) / 2, k.y1], [1, 1]),
    ],
    welds: [
      weldAt(latchWeld(brief, 'latch-leaf', thinner(outer, frame)), [o.x0, o.y1], [-0.6, 1]),
      weldAt(latchWeld(brief, 'latch-jamb', thinner(keeper, jamb)), [k.x1, k.y0], [1, -0.8]),
    ],
  };
}
