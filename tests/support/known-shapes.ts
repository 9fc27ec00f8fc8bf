/** A known set of nesting: shapes0, 43 pieces of 4 shapes on a strip 40 wide (ESICUP/datasets, CC0-1.0; OR Spectrum 22 (2), 263-284). */
import { readFileSync } from 'node:fs';
import { straightPath, type FlatShape } from '../../core/base/flat-shape.ts';

export interface KnownShape {
  readonly id: string;
  readonly quantity: number;
  readonly shape: FlatShape;
}

export const SHAPES_0_WIDTH = 40;

/** The pieces of the set, as its file has them. */
export function shapes0(): readonly KnownShape[] {
  const xml = readFileSync(new URL('../shop/data/shapes0.xml', import.meta.url), 'utf8');
  const lot = /<lot>(.*?)<\/lot>/s.exec(xml)?.[1] ?? '';
  return [...lot.matchAll(/quantity="(\d+)">.*?idPolygon="(\w+)"/gs)].map(([, quantity, id]) => {
    const body = new RegExp(`<polygon id="${id!}".*?</polygon>`, 's').exec(xml)?.[0] ?? '';
    const points = [...body.matchAll(/<segment n="\d+" x0="([^"]*)" x1="[^"]*" y0="([^"]*)"/g)].map(([, x, y]) => ({ x: Number(x), y: Number(y) }));
    return { id: id!, quantity: Number(quantity), shape: { outer: straightPath(points), holes: [] } };
  });
}

/** The same on shelves, as longest-first rectangles: each in the box round it, on the first shelf with room, else on a new one. */
export function onShelves(boxes: readonly { readonly wide: number; readonly high: number; readonly count: number }[], width: number): number {
  const singles = boxes.flatMap(({ wide, high, count }) => Array.from({ length: count }, () => ({ wide, high }))).toSorted((a, b) => b.wide - a.wide);
  const shelves: { readonly wide: number; left: number }[] = [];
  for (const { wide, high } of singles) {
    const shelf = shelves.find(({ left }) => left >= high);
    if (shelf === undefined) shelves.push({ wide, left: width - high });
    else shelf.left -= high;
  }
  return shelves.reduce((sum, { wide }) => sum + wide, 0);
}
