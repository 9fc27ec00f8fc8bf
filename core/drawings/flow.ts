/** Sets blocks (views, tables, notes) on pages in reading order: along a row while it has room, then a new row, then a new page. */
import { type Note, type Table, type View } from '../drafting/model.ts';
import { type Page } from './input.ts';

/** A block knows its size and, once it has a place, what stands in it. `x`, `y` are its lower left corner. */
export interface Block {
  readonly width: number;
  readonly height: number;
  /** What a drawing's title says of it. */
  readonly label: string;
  /** Stays on the page of the block before it where a page can hold both. */
  readonly follows?: boolean;
  place(x: number, y: number): Placed;
}
export interface Placed {
  readonly views?: readonly View[];
  readonly tables?: readonly Table[];
  readonly notes?: readonly Note[];
}

/** Blocks that stay one under the other, as one. */
export function stacked(blocks: readonly Block[]): Block {
  const width = Math.max(...blocks.map((block) => block.width));
  const height = blocks.reduce((sum, block) => sum + BETWEEN + block.height, -BETWEEN);
  return {
    width,
    height,
    label: blocks[0]!.label,
    place: (x, y) => {
      let top = y + height;
      const placed = blocks.map((block) => {
        top -= block.height;
        const here = block.place(x, top);
        top -= BETWEEN;
        return here;
      });
      return {
        views: placed.flatMap((one) => one.views ?? []),
        tables: placed.flatMap((one) => one.tables ?? []),
        notes: placed.flatMap((one) => one.notes ?? []),
      };
    },
  };
}

export interface Filled {
  readonly labels: readonly string[];
  readonly views: readonly View[];
  readonly tables: readonly Table[];
  readonly notes: readonly Note[];
}

/** Paper between two blocks, inches. */
const BETWEEN = 0.25;

/** Blocks one under the other. */
type Stack = readonly Block[];
interface Row {
  readonly stacks: readonly Stack[];
  readonly height: number;
}

const stackHeight = (stack: Stack): number => stack.reduce((sum, { height }) => sum + height + BETWEEN, -BETWEEN);
const stackWidth = (stack: Stack): number => Math.max(...stack.map(({ width }) => width));

/** Along a row while it has room; under the block before, where one beside it is taller by as much. */
function rowsOf(page: Page, blocks: readonly Block[]): Row[] {
  const rows: Row[] = [];
  let open: Block[][] = [];
  const close = (): void => {
    if (open.length > 0) rows.push({ stacks: open, height: Math.max(...open.map(stackHeight)) });
    open = [];
  };
  for (const block of blocks) {
    const last = open[open.length - 1];
    const tallest = Math.max(0, ...open.map(stackHeight));
    if (last !== undefined && stackHeight([...last, block]) <= tallest && block.width <= stackWidth(last)) {
      last.push(block);
      continue;
    }
    const width = open.reduce((sum, stack) => sum + stackWidth(stack) + BETWEEN, 0) + block.width;
    if (width > page.room.width) close();
    open.push([block]);
  }
  close();
  return rows;
}

/** Groups of rows that want to stand on one page: a row that begins with a following block belongs to the one before. */
function groupsOf(rows: readonly Row[]): Row[][] {
  const groups: Row[][] = [];
  for (const row of rows) {
    const last = groups[groups.length - 1];
    if (row.stacks[0]![0]!.follows === true && last !== undefined) last.push(row);
    else groups.push([row]);
  }
  return groups;
}

const heightOf = (rows: readonly Row[]): number => rows.reduce((sum, row) => sum + row.height + BETWEEN, -BETWEEN);

/** Paper left under these blocks on the last page that they fill. */
export function freeUnder(page: Page, lists: readonly (readonly Block[])[]): number {
  const last = pagesOf(page, lists).at(-1) ?? [];
  return page.room.height - heightOf(last) - BETWEEN;
}

/** The pages that these blocks fill. `lists`: each inner list begins on a new row. */
export const flowBlocks = (page: Page, lists: readonly (readonly Block[])[]): Filled[] => pagesOf(page, lists).map((rows) => fill(page, rows));

function pagesOf(page: Page, lists: readonly (readonly Block[])[]): readonly (readonly Row[])[] {
  const pages: Row[][] = [];
  let open: Row[] = [];
  for (const group of lists.flatMap((blocks) => groupsOf(rowsOf(page, blocks)))) {
    if (open.length > 0 && heightOf([...open, ...group]) > page.room.height) {
      pages.push(open);
      open = [];
    }
    for (const row of group) {
      if (open.length > 0 && heightOf([...open, row]) > page.room.height) {
        pages.push(open);
        open = [];
      }
      open.push(row);
    }
  }
  if (open.length > 0) pages.push(open);
  return pages;
}

function fill(page: Page, rows: readonly Row[]): Filled {
  const views: View[] = [];
  const tables: Table[] = [];
  const notes: Note[] = [];
  let top = page.room.y + page.room.height;
  for (const row of rows) {
    let x = page.room.x;
    for (const stack of row.stacks) {
      let under = top;
      for (const block of stack) {
        const placed = block.place(x, under - block.height);
        views.push(...(placed.views ?? []));
        tables.push(...(placed.tables ?? []));
        notes.push(...(placed.notes ?? []));
        under -= block.height + BETWEEN;
      }
      x += stackWidth(stack) + BETWEEN;
    }
    top -= row.height + BETWEEN;
  }
  return { labels: [...new Set(rows.flatMap((row) => row.stacks.flat().map((block) => block.label)))], views, tables, notes };
}

