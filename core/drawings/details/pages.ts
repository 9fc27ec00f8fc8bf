/** Details set side by side and one under the other, as many on a drawing as have room with all their figures. */
import { hasRoom } from '../../drafting/draft.ts';
import { type Drawing } from '../../drafting/model.ts';
import { largerPaper, paperNamed } from '../../drafting/paper.ts';
import { type Detail, detailView } from '../detail.ts';
import { drawingOf } from '../drawing-of.ts';
import { type DrawInput, type Page, pageOf } from '../input.ts';

/** Letter heights that a detail needs across and up to be worth trying. */
const LEAST = { wide: 42, tall: 32 };
const APART = 0.2;
const MARGINS = [5, 7, 9, 12, 15];

interface Grid {
  readonly columns: number;
  readonly rows: number;
}

export function detailPages(input: DrawInput, details: readonly Detail[], series: string, title: string, file: string): Drawing[] {
  const drawings: Drawing[] = [];
  let rest = details;
  while (rest.length > 0) {
    const { drawing, used } = nextPage(input, rest, (page, grid, margin, some) =>
      drawingOf(page, { views: tiled(page, grid, margin, some), tables: [], notes: [] }, series, drawings.length, some.length === 1 ? some[0]!.title : title, file));
    drawings.push(drawing);
    rest = rest.slice(used);
  }
  return drawings;
}

type Make = (page: Page, grid: Grid, margin: number, some: readonly Detail[]) => Drawing;

/** The fullest grid on the brief's paper in which all have room; one alone on a larger paper where not even that has. */
function nextPage(input: DrawInput, rest: readonly Detail[], make: Make): { readonly drawing: Drawing; readonly used: number } {
  let paper = paperNamed(input.brief.paper);
  for (let grids = gridsOn(pageOf(input, paper), rest.length); ; grids = [{ columns: 1, rows: 1 }]) {
    const page = pageOf(input, paper);
    for (const grid of grids) {
      const some = rest.slice(0, grid.columns * grid.rows);
      for (const margin of MARGINS) {
        const drawing = make(page, grid, margin, some);
        if (hasRoom(input.font, page.block, drawing)) return { drawing, used: some.length };
      }
    }
    const larger = largerPaper(paper);
    if (larger === null) return { drawing: make(page, { columns: 1, rows: 1 }, MARGINS[2]!, rest.slice(0, 1)), used: 1 };
    paper = larger;
  }
}

/** Grids from the fullest that a page could hold to one alone, none with an empty row or column. */
function gridsOn({ room, kit }: Page, count: number): readonly Grid[] {
  const columns = Math.max(1, Math.floor(room.width / (LEAST.wide * kit.h)));
  const rows = Math.max(1, Math.floor(room.height / (LEAST.tall * kit.h)));
  const grids = Array.from({ length: columns * rows }, (_, i) => ({ columns: columns - (i % columns), rows: rows - Math.floor(i / columns) }));
  const full = grids.map((grid) => {
    const across = Math.min(grid.columns, count);
    return { columns: across, rows: Math.min(grid.rows, Math.ceil(count / across)) };
  });
  return [...new Map(full.map((grid) => [`${String(grid.columns)} ${String(grid.rows)}`, grid])).values()]
    .sort((a, b) => empty(a, count) - empty(b, count));
}

/** How far a grid is from holding all that is left without an empty place: too small is worse than any empty place. */
const empty = ({ columns, rows }: Grid, count: number): number => (columns * rows >= count ? columns * rows - count : 1000 + count - columns * rows);

function tiled(page: Page, { columns, rows }: Grid, margin: number, details: readonly Detail[]): ReturnType<typeof detailView>[] {
  const width = (page.room.width - (columns - 1) * APART) / columns;
  const height = (page.room.height - (rows - 1) * APART) / rows;
  return details.map((detail, i) => {
    const [column, row] = [i % columns, Math.floor(i / columns)];
    return detailView(page, detail, { x: page.room.x + column * (width + APART), y: page.room.y + page.room.height - (row + 1) * height - row * APART, width, height }, margin);
  });
}
