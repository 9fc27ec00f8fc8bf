/** Gates: each from the front with its pieces and bought parts. */
import { type Column, type Drawing } from '../drafting/model.ts';
import { printSize } from '../drafting/kit.ts';
import { gateMarks } from '../parts/index.ts';
import { hardwareSize } from '../schedules/index.ts';
import { say } from '../text/index.ts';
import { drawingOf } from './drawing-of.ts';
import { type Block, flowBlocks } from './flow.ts';
import { gateDetailDrawings } from './gate-details.ts';
import { gateBlock, gateScales, type GateView } from './gate-elevation.ts';
import { gateViews, piecesOf } from './gate-views.ts';
import { type DrawInput, type Page, pageOf } from './input.ts';
import { tableBlocks } from './table-blocks.ts';

export function gateDrawings(input: DrawInput): Drawing[] {
  const page = pageOf(input);
  const marks = gateMarks(input.layout);
  const paths = new Map([...marks].map(([path, mark]) => [mark, path]));
  const views = gateViews(input, marks);
  const lists = [...paths].map(([mark, path]) => onOneSheet(page, views.filter(({ label }) => label === mark), tables(input, page, mark, path)));
  const fronts = flowBlocks(page, lists).map((filled, i) => drawingOf(page, filled, '8', i, say('drawings.gate.drawing', { gates: filled.labels.join(', ') }), say('drawings.gate.file')));
  return [...fronts, ...gateDetailDrawings(input, fronts.length)];
}

/** The least scale that a leaf is drawn at so that its lists stand on the same sheet. */
const LEAST = 1 / 32;

/** A gate and its lists: the leaf at the largest scale that leaves them room beside it or under it, else at its own largest. */
function onOneSheet(page: Page, [leaf, ...more]: readonly GateView[], lists: readonly Block[]): readonly Block[] {
  if (leaf === undefined) return lists;
  const rest = [...more.map((view) => gateBlock(page, view)), ...lists];
  const tries = gateScales(page, leaf).map((scale) => ({ scale, leaf: gateBlock(page, leaf, scale) }));
  // A smaller leaf can stand higher: its title is broken into more lines.
  const fits = tries.filter((one) => one.leaf.height <= page.room.height);
  const whole = fits.find(({ scale, leaf: block }) => scale.scale >= LEAST && flowBlocks(page, [[block, ...rest]]).length === 1);
  return [(whole ?? fits[0] ?? tries[0]!).leaf, ...rest];
}

const start = (title: string): Column => ({ title, align: 'start' });
const end = (title: string): Column => ({ title, align: 'end' });

/** What a gate is cut from and what is bought for it. */
function tables(input: DrawInput, page: Page, mark: string, path: string): Block[] {
  const size = (value: number | null): string => (value === null ? '' : printSize(page.kit, value));
  const rows = new Map<string, string[]>();
  const count = new Map<string, number>();
  for (const { piece, place } of piecesOf(input, path)) {
    count.set(piece.mark, (count.get(piece.mark) ?? 0) + 1);
    const high = piece.flatHeight === null ? '' : ` x ${size(piece.flatHeight)}`;
    rows.set(piece.mark, [piece.mark, say(`drawings.gate.part.${place.part}`), String(count.get(piece.mark)), piece.section, `${size(piece.length)}${high}`, size(piece.lengthShort)]);
  }
  const bought = input.parts.hardware.filter((one) => one.path === path)
    .map((one) => [say(`drawings.gate.item.${one.item}`), String(one.quantity), hardwareSize(input.brief, one)]);
  const columns = [
    start(say('drawings.piece.mark')), start(say('drawings.piece.kind')), end(say('drawings.piece.quantity')), start(say('drawings.piece.section')),
    end(say('drawings.piece.length')), end(say('drawings.piece.short')),
  ];
  const buy = [start(say('drawings.gate.bought')), end(say('drawings.piece.quantity')), start(say('drawings.gate.size'))];
  return [
    ...tableBlocks(page, mark, say('drawings.gate.pieces', { mark }), columns, [...rows.values()], { follows: true }),
    ...(bought.length === 0 ? [] : tableBlocks(page, mark, say('drawings.gate.hardware', { mark }), buy, bought, { follows: true })),
  ];
}
