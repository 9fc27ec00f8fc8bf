/** Where two rails meet end to end, so that both ends bear one match mark: side, post and row. */
import { type Layout } from '../../layout/index.ts';
import { type Parts, type Piece } from '../../parts/index.ts';

export interface SpliceRow {
  readonly run: string;
  readonly side: string;
  /** From 1, the lowest. */
  readonly row: number;
  /** Numbers of the posts, from the run's start: the bay that begins there. */
  readonly posts: readonly number[];
}

/** Match mark of a splice: `L4.2` is the second row from the ground at the left fence's post 4. */
export const matchMark = (side: string, post: number, row: number): string => `${side === 'left' ? 'L' : 'R'}${String(post)}.${String(row)}`;

/** The splices of every lapped fence, row by row. */
export function spliceRows(layout: Layout, parts: Parts): readonly SpliceRow[] {
  const rails = new Map<string, Piece[]>();
  for (const piece of parts.pieces) {
    if (piece.place.kind !== 'rail') continue;
    const key = `${piece.run} ${piece.side}`;
    const list = rails.get(key);
    if (list === undefined) rails.set(key, [piece]);
    else list.push(piece);
  }
  return layout.fences.filter(({ brief }) => brief.construction === 'lapped').flatMap(({ run, side, section }) => {
    const own = rails.get(`${run} ${side}`) ?? [];
    return section.rows.flatMap((_, row) => {
      const line = own.filter(({ place }) => place.kind === 'rail' && place.row === row);
      const begins = new Set(line.map(({ bay }) => bay));
      const posts = line.map(({ bay, bays }) => bay + bays).filter((post) => begins.has(post)).sort((a, b) => a - b);
      return posts.length === 0 ? [] : [{ run, side, row: row + 1, posts }];
    });
  });
}
