/** What is wrong with a file for a cutting table, by what another library reads in it and another still makes of its outlines. */
import * as flatten from '@flatten-js/core';
import { byDxfParser, type Seen } from '../writers/seen.ts';

/** A gap, and the least edge, of the drawings contract. */
const GAP = 1e-6;

type Point = readonly [number, number];

interface Edge {
  readonly from: Point;
  readonly to: Point;
  readonly seen: Omit<Seen, 'text'>;
}

const near = ([ax, ay]: Point, [bx, by]: Point): boolean => Math.hypot(ax - bx, ay - by) <= GAP;
const around = (x: number, y: number, radius: number, angle: number): Point => [x + radius * Math.cos((angle * Math.PI) / 180), y + radius * Math.sin((angle * Math.PI) / 180)];

function edgeOf(seen: Omit<Seen, 'text'>): Edge {
  const [a, b, c, d, e] = seen.figures as [number, number, number, number, number];
  return seen.type === 'LINE' ? { from: [a, b], to: [c, d], seen } : { from: around(a, b, c, d), to: around(a, b, c, e), seen };
}

const sizeOf = (seen: Omit<Seen, 'text'>): number => {
  const [a, b, c, d, e] = seen.figures as [number, number, number, number, number];
  if (seen.type === 'LINE') return Math.hypot(c - a, d - b);
  return seen.type === 'CIRCLE' ? c : c * ((((e - d) % 360) + 360) % 360) * (Math.PI / 180);
};

/** Outlines of what was read: a circle each, and chains of edges that meet end to end. */
export function outlinesIn(cut: readonly Omit<Seen, 'text'>[]): { readonly outlines: readonly flatten.Polygon[]; readonly open: number } {
  const outlines: flatten.Polygon[] = [];
  let open = 0;
  const left = cut.filter(({ type }) => type !== 'CIRCLE').map(edgeOf);
  for (const { figures: [x, y, r] } of cut.filter(({ type }) => type === 'CIRCLE')) {
    outlines.push(new flatten.Polygon([new flatten.Circle(new flatten.Point(x, y), r!).toArc()]));
  }
  while (left.length > 0) {
    const first = left.shift()!;
    const chain = [first];
    let end = first.to;
    for (;;) {
      const next = left.findIndex((edge) => near(edge.from, end) || near(edge.to, end));
      if (next < 0) break;
      const [edge] = left.splice(next, 1) as [Edge];
      const forward = near(edge.from, end);
      chain.push(edge);
      end = forward ? edge.to : edge.from;
      if (near(end, first.from)) break;
    }
    if (chain.length > 1 && near(end, first.from)) outlines.push(polygonOf(chain));
    else open += 1;
  }
  return { outlines, open };
}

/** The chain as that library's polygon: its edges, each turned to follow the one before. */
function polygonOf(chain: readonly Edge[]): flatten.Polygon {
  let at = chain.length > 1 && !near(chain[0]!.to, chain[1]!.from) && !near(chain[0]!.to, chain[1]!.to) ? chain[0]!.to : chain[0]!.from;
  const shapes = chain.map(({ from, to, seen }) => {
    const forward = near(from, at);
    at = forward ? to : from;
    if (seen.type === 'LINE') return new flatten.Segment(new flatten.Point(...(forward ? from : to)), new flatten.Point(...(forward ? to : from)));
    const [x, y, r, start, end] = seen.figures as [number, number, number, number, number];
    const [a, b] = [(start * Math.PI) / 180, (end * Math.PI) / 180];
    return forward ? new flatten.Arc(new flatten.Point(x, y), r, a, b, true) : new flatten.Arc(new flatten.Point(x, y), r, b, a, false);
  });
  const polygon = new flatten.Polygon();
  polygon.addFace(shapes);
  return polygon;
}

/** All that a table could not cut, a sentence each; `parts` is how many outer outlines there must be, `pierces` how many outlines. */
export function tableBreaches(text: string, { parts, pierces }: { readonly parts: number; readonly pierces: number }): string[] {
  const { model } = byDxfParser(text);
  const out: string[] = [];
  const cut = model.filter(({ layer }) => layer === 'CUT');
  for (const { type, layer } of model) {
    if (layer === 'CUT' ? !['LINE', 'ARC', 'CIRCLE'].includes(type) : layer !== 'ETCH' || type !== 'LINE') out.push(`${type} on ${layer}`);
  }
  for (const seen of model) if (!(sizeOf(seen) > GAP)) out.push(`${seen.type} of no size at ${seen.figures.join(' ')}`);
  const named = model.map(({ type, layer, figures }) => `${layer} ${type} ${sorted(type, figures).map((value) => (Math.round(value / GAP) + 0).toString()).join(' ')}`);
  if (new Set(named).size !== named.length) out.push('an entity twice');
  const { outlines, open } = outlinesIn(cut);
  if (open > 0) out.push(`${String(open)} outlines that do not close`);
  if (outlines.length !== pierces) out.push(`${String(outlines.length)} outlines, ${String(pierces)} wanted`);
  const holds = (a: flatten.Polygon, b: flatten.Polygon): boolean => a !== b && a.contains(b);
  const depth = outlines.map((one) => outlines.filter((other) => holds(other, one)).length);
  // A part in the hole of another is an outer outline too: even depths are outer ones.
  const outer = depth.filter((deep) => deep % 2 === 0).length;
  if (outer !== parts) out.push(`${String(outer)} parts, ${String(parts)} wanted`);
  return out;
}

/** A line drawn the other way is the same line. */
function sorted(type: string, figures: readonly number[]): readonly number[] {
  if (type !== 'LINE') return figures;
  const [a, b, c, d] = figures as [number, number, number, number];
  return a < c || (a === c && b <= d) ? figures : [c, d, a, b];
}
