import { type Vec } from '../../base/points.ts';

interface Edge {
  readonly a: Vec;
  readonly b: Vec;
}

interface Band {
  readonly low: Edge;
  readonly high: Edge;
  readonly from: number;
  to: number;
}

/**
 * Polygons (an outline and its holes, either way round) as convex ones that cover the same area, each counter-clockwise: the outline
 * itself where it is convex, else upright bands, each between two edges as far as both go.
 */
export function convexParts(outline: readonly Vec[], holes: readonly (readonly Vec[])[]): readonly (readonly Vec[])[] {
  if (holes.length === 0) {
    const ccw = signedArea(outline) > 0 ? outline : outline.toReversed();
    if (isConvex(ccw)) return [ccw];
  }
  const edges = [outline, ...holes].flatMap((ring) => ring.flatMap((p, i): Edge[] => {
    const q = ring[(i + 1) % ring.length]!;
    return p.x === q.x ? [] : [p.x < q.x ? { a: p, b: q } : { a: q, b: p }];
  }));
  const stops = [...new Set([outline, ...holes].flat().map(({ x }) => x))].toSorted((a, b) => a - b);
  const done: Band[] = [];
  let open: Band[] = [];
  for (const [i, from] of stops.slice(0, -1).entries()) {
    const to = stops[i + 1]!;
    const middle = (from + to) / 2;
    const here = edges.filter(({ a, b }) => a.x <= from && b.x >= to).toSorted((p, q) => heightAt(p, middle) - heightAt(q, middle));
    const bands: Band[] = [];
    for (let k = 0; k + 1 < here.length; k += 2) {
      const [low, high] = [here[k]!, here[k + 1]!];
      const known = open.find((band) => band.low === low && band.high === high);
      if (known === undefined) bands.push({ low, high, from, to });
      else {
        known.to = to;
        bands.push(known);
      }
    }
    done.push(...open.filter((band) => !bands.includes(band)));
    open = bands;
  }
  return [...done, ...open].map(cornersOf).filter((corners) => corners.length > 2);
}

const heightAt = ({ a, b }: Edge, x: number): number => (x === a.x ? a.y : x === b.x ? b.y : a.y + ((b.y - a.y) * (x - a.x)) / (b.x - a.x));

function cornersOf({ low, high, from, to }: Band): readonly Vec[] {
  const corners = [{ x: from, y: heightAt(low, from) }, { x: to, y: heightAt(low, to) }, { x: to, y: heightAt(high, to) }, { x: from, y: heightAt(high, from) }];
  return corners.filter((p, i) => {
    const next = corners[(i + 1) % 4]!;
    return p.x !== next.x || p.y !== next.y;
  });
}

export const signedArea = (ring: readonly Vec[]): number => ring.reduce((sum, p, i) => {
  const q = ring[(i + 1) % ring.length]!;
  return sum + p.x * q.y - q.x * p.y;
}, 0) / 2;

const isConvex = (ring: readonly Vec[]): boolean => ring.every((p, i) => {
  const [q, r] = [ring[(i + 1) % ring.length]!, ring[(i + 2) % ring.length]!];
  return (q.x - p.x) * (r.y - q.y) - (q.y - p.y) * (r.x - q.x) >= 0;
});
