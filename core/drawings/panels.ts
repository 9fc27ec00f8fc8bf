/** Panels of every fenced run: rolled out flat, the arc in plan under it, and a table of its pieces. */
import { bandWidth } from '../drafting/band.ts';
import { type Drawing } from '../drafting/model.ts';
import { isRampFence } from '../parts/index.ts';
import { say } from '../text/index.ts';
import { arcBlock } from './arc-plan.ts';
import { type Stretch, elevationBlock, marksWidth, piecesIn } from './elevation.ts';
import { type Block,  flowBlocks, stacked } from './flow.ts';
import { drawingOf } from './drawing-of.ts';
import { type DrawInput, type Page, pageOf } from './input.ts';
import { type FenceParts, fenceParts } from './panel-parts.ts';
import { pieceTable } from './piece-table.ts';
import { type Scale, scalesOf } from './scales.ts';
import { tableBlocks } from './table-blocks.ts';

/** Share of a page's height that a fence's own height may take. */
const TALL = 0.34;

/** The largest scale at which the fence is not too tall: a larger one where its marks would crowd, a smaller one where the page is low. */
function scaleFor(page: Page, panel: FenceParts): Scale {
  const list = scalesOf(page.block.units);
  const { height } = panel.fence.brief;
  const first = panel.x(panel.posts[0]!.u);
  const last = panel.x(panel.posts[panel.posts.length - 1]!.u);
  const needed = marksWidth(panel, (text) => bandWidth(page.kit, text)) / Math.max(1, last - first);
  const fits = list.filter(({ scale }) => scale <= 1 / 8 && height * scale <= page.room.height * TALL);
  const wanted = fits[0] ?? list[list.length - 1]!;
  const larger = list.filter(({ scale }) => scale >= needed && height * scale <= page.room.height * 0.6);
  const chosen = wanted.scale >= needed ? wanted : (larger[larger.length - 1] ?? wanted);
  const longest = Math.max(...panel.posts.slice(1).map((post, i) => panel.x(post.u) - panel.x(panel.posts[i]!.u)));
  const low = (scale: Scale): boolean => longest * scale.scale <= roomAlong(page) && stretchesOf(page, panel, scale).every((stretch) => elevationBlock(page, stretch, scale).height <= page.room.height);
  return list.slice(list.indexOf(chosen)).find(low) ?? chosen;
}

/** Paper inches along which a stretch may reach: its heights stand beside it. */
const roomAlong = (page: Page): number => page.room.width - 22 * page.kit.h;

/** The fence cut at posts into stretches that fit the page side by side with their heights, their marks above them. */
function stretchesOf(page: Page, panel: FenceParts, scale: Scale): Stretch[] {
  const room = roomAlong(page);
  const bays = panel.posts.length - 1;
  const whole = panel.x(panel.posts[bays]!.u) - panel.x(panel.posts[0]!.u);
  const marks = marksWidth(panel, (text) => bandWidth(page.kit, text));
  const most = Math.max(1, Math.floor(Math.min(room / ((whole / bays) * scale.scale), (0.8 * page.room.width) / (marks / bays))));
  const cut = (count: number): Stretch[] => Array.from({ length: count }, (_, i) => ({
    panel,
    from: Math.round((i * bays) / count),
    to: Math.round(((i + 1) * bays) / count),
  }));
  // Openings make bays unequal: as many stretches more as the longest of them asks for.
  const wide = ({ from, to }: Stretch): boolean => to - from > 1 && (panel.x(panel.posts[to]!.u) - panel.x(panel.posts[from]!.u)) * scale.scale > room;
  let count = Math.ceil(bays / most);
  while (count < bays && cut(count).some(wide)) count += 1;
  return cut(count);
}

function blocksOf(page: Page, input: DrawInput, stretch: Stretch, scale: Scale): Block[][] {
  const elevation = elevationBlock(page, stretch, scale);
  const { fence } = stretch.panel;
  const table = pieceTable(input.brief.units, piecesIn(stretch), fence.brief.rail, input.brief.shop.gaugeChord);
  const name = say('drawings.fence.name', { run: fence.run, side: fence.side });
  const left = page.room.height - elevation.height - 0.5;
  const tables = tableBlocks(page, name, say('drawings.panel.table', { fence: name }), table.columns, table.rows, { follows: true, height: Math.max(left, 12 * page.kit.pitch) });
  if (fence.faceRadius === null) {
    const together = stacked([elevation, ...tables]);
    return together.height <= page.room.height ? [[together]] : [[elevation, ...tables]];
  }
  const beside = page.room.width - (tables[0]?.width ?? 0) - 0.3;
  const width = beside >= 50 * page.kit.h ? beside : page.room.width;
  const arc = arcBlock(input, page, stretch, scale, { width, height: Math.max(left, 32 * page.kit.h) });
  return [[elevation], [arc, ...tables]];
}

export function panelDrawings(input: DrawInput): Drawing[] {
  const page = pageOf(input);
  const groups = fenceParts(input.layout, input.parts).filter(({ fence }) => !isRampFence(input.layout, fence)).flatMap((panel) => {
    const scale = scaleFor(page, panel);
    return stretchesOf(page, panel, scale).map((stretch) => blocksOf(page, input, stretch, scale).flat());
  });
  const lists = joined(groups);
  return flowBlocks(page, lists).map((filled, i) => drawingOf(page, filled, '3', i, say('drawings.panel.title', { fences: filled.labels.join(', ') }), say('drawings.panel.file')));
}

/** Short panels share a row: single blocks that follow each other go in one list. */
function joined(groups: readonly (readonly Block[])[]): Block[][] {
  const lists: Block[][] = [];
  let open = false;
  for (const group of groups) {
    const single = group.length === 1;
    if (single && open) lists[lists.length - 1]!.push(group[0]!);
    else lists.push([...group]);
    open = single;
  }
  return lists;
}
