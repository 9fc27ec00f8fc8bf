/** A long template cut into pages that lie over one another at their edges. */

/** Paper that two pages share, inches. */
export const OVERLAP = 0.75;

/** One page's part of a length: what it shows, and where it is laid on the page before and after it (null at the ends). */
export interface Tile {
  readonly from: number;
  readonly to: number;
  readonly before: number | null;
  readonly after: number | null;
}

/** The fewest equal parts, each no longer than `room`, that share OVERLAP; the match line lies in the middle of what is shared. */
export function tilesOf(length: number, room: number): readonly Tile[] {
  if (!(room > 2 * OVERLAP)) throw new Error(`a page of ${String(room)} in is too small to lay two together`);
  const count = length <= room ? 1 : Math.ceil((length - OVERLAP) / (room - OVERLAP));
  const size = (length + (count - 1) * OVERLAP) / count;
  return Array.from({ length: count }, (_, i): Tile => {
    const from = i * (size - OVERLAP);
    return {
      from,
      to: i === count - 1 ? length : from + size,
      before: i === 0 ? null : from + OVERLAP / 2,
      after: i === count - 1 ? null : from + size - OVERLAP / 2,
    };
  });
}
