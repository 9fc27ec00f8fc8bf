/** Each catwalk: as it lies with its parts, its ends, its steps, and its steel laid flat with every mark. */
import { sheetPoint } from '../../base/points.ts';
import { CATWALK_PRACTICE } from '../../brief/catwalk-practice.ts';
import { draft } from '../../drafting/draft.ts';
import { type Drawing } from '../../drafting/model.ts';
import { largerPaper, paperNamed } from '../../drafting/paper.ts';
import { noteHeight } from '../../drafting/table.ts';
import { printSize } from '../../drafting/kit.ts';
import { type Catwalk, type DeckEnd } from '../../layout/index.ts';
import { deckBuild } from '../../parts/index.ts';
import { say } from '../../text/index.ts';
import { printAngle } from '../../units/index.ts';
import { detailView } from '../detail.ts';
import { drawingOf } from '../drawing-of.ts';
import { type Block, flowBlocks, stacked } from '../flow.ts';
import { type DrawInput, type Page, pageOf } from '../input.ts';
import { tableBlocks } from '../table-blocks.ts';
import { aboveDetail } from './above.ts';
import { rolledBlocks } from './rolled.ts';
import { endSection } from './section.ts';
import { catwalkMark, piecesOf, type DeckPiece } from './shapes.ts';
import { stepsBlock } from './steps.ts';
import { type DeckTable, deckTable, steelTable } from './tables.ts';

const SERIES = '10';

/** All drawings of all catwalks, numbered through. */
export function catwalkDrawings(input: DrawInput): Drawing[] {
  const made = input.layout.catwalks.flatMap((catwalk) => onPaper(input, catwalk));
  return made.map((drawing, i) => {
    const number = `${SERIES}${String(i + 1).padStart(2, '0')}`;
    return { ...drawing, number, file: `${number} ${drawing.file.slice(drawing.number.length + 1)}` };
  });
}

/** On the brief's paper, on a larger one where something has no room. */
function onPaper(input: DrawInput, catwalk: Catwalk): Drawing[] {
  let paper = paperNamed(input.brief.paper);
  for (;;) {
    const page = pageOf(input, paper);
    const { drawings, fits } = drawingsOn(input, page, catwalk);
    const larger = largerPaper(paper);
    if (larger === null || (fits && drawings.every((drawing) => draft(input.font, page.block, drawing).unplaced.length === 0))) return drawings;
    paper = larger;
  }
}

function drawingsOn(input: DrawInput, page: Page, catwalk: Catwalk): { readonly drawings: Drawing[]; readonly fits: boolean } {
  const mark = catwalkMark(input.layout, catwalk);
  const pieces = piecesOf(input.parts, catwalk);
  const series = [
    { title: say('drawings.catwalk.title', { mark }), lists: shapeLists(input, page, catwalk, pieces, mark) },
    { title: say('drawings.catwalk.laid', { mark }), lists: catwalk.stretches.map((stretch) => rolledBlocks(page, catwalk, stretch, pieces, mark)) },
  ];
  const fits = series.every(({ lists }) => lists.flat().every(({ width, height }) => width <= page.room.width + 1e-9 && height <= page.room.height + 1e-9));
  const file = say('drawings.catwalk.file', { mark });
  return { fits, drawings: series.flatMap(({ title, lists }) => flowBlocks(page, lists).map((filled, i) => drawingOf(page, filled, SERIES, i, title, file))) };
}

function shapeLists(input: DrawInput, page: Page, catwalk: Catwalk, pieces: readonly DeckPiece[], mark: string): Block[][] {
  const { units } = input.brief;
  const asBlocks = ({ title, columns, rows }: DeckTable): Block[] => tableBlocks(page, mark, title, columns, rows);
  const table = asBlocks(deckTable(units, catwalk, pieces, mark));
  const notes = notesBlock(page, catwalk, mark);
  // Beside the plan, where the page is wide enough for both.
  const beside = stacked([...table, notes]);
  const left = page.room.width - beside.width - 0.3;
  const together = left >= 56 * page.kit.h && beside.height <= page.room.height;
  const plan = boxed(page, mark, together ? left / page.room.width : 1, together ? 0.95 : 0.7, (box) => detailView(page, aboveDetail(catwalk, input.layout.fences, input.parts, mark), box, 8));
  const ends = (['start', 'end'] as const).map((end) => sectionBlock(input, page, catwalk, end, pieces, mark));
  const steps = catwalk.flights.flatMap((flight) => stepsBlock(page, catwalk, flight, pieces, mark) ?? []);
  return [
    together ? [plan, beside] : [plan, ...table, notes],
    [...ends, ...steps],
    asBlocks(steelTable(units, pieces, mark)),
  ];
}

function sectionBlock(input: DrawInput, page: Page, catwalk: Catwalk, end: DeckEnd, pieces: readonly DeckPiece[], mark: string): Block {
  const stretch = catwalk.stretches[end === 'start' ? 0 : catwalk.stretches.length - 1]!;
  const fence = input.layout.fences.find(({ run, side }) => run === stretch.run && side === stretch.side)!;
  return boxed(page, mark, 0.36, catwalk.guarded ? 0.84 : 0.62, (box) => detailView(page, endSection({ catwalk, stretch, fence, end, pieces, mark }), box, 10));
}

/** A detail as a block that takes these shares of the page. */
function boxed(page: Page, label: string, wide: number, tall: number, view: (box: { x: number; y: number; width: number; height: number }) => ReturnType<typeof detailView>): Block {
  const width = Math.min(page.room.width, Math.max(page.room.width * wide, 56 * page.kit.h));
  const height = page.room.height * tall;
  return { width, height, label, place: (x, y) => ({ views: [view({ x, y, width, height })] }) };
}

function notesBlock(page: Page, catwalk: Catwalk, mark: string): Block {
  const build = deckBuild(catwalk.lowest, catwalk.slope);
  const print = (value: number): string => printSize(page.kit, value);
  const inLine = catwalk.flights.some((flight) => flight.inLine);
  const figures = {
    deck: print(catwalk.highest), low: print(catwalk.lowest), over: print(catwalk.deckHeight), slope: printAngle(catwalk.slope), cleats: print(CATWALK_PRACTICE.cleat.most), rail: print(catwalk.fenceHeight - catwalk.deckHeight), guard: print(catwalk.guardHeight),
  };
  const keys = [
    ...(catwalk.slope > 0 ? ['drawings.catwalk.note.slope' as const, 'drawings.catwalk.note.cleats' as const] : []),
    ...(inLine ? ['drawings.catwalk.note.inLine' as const] : []),
    'drawings.catwalk.note.parts' as const, 'drawings.catwalk.note.edge' as const,
    build.brackets ? 'drawings.catwalk.note.brackets' as const : 'drawings.catwalk.note.bedded' as const,
    'drawings.catwalk.note.toe' as const,
    catwalk.guarded ? 'drawings.catwalk.note.guarded' as const : 'drawings.catwalk.note.open' as const,
    'drawings.catwalk.note.rail' as const, 'drawings.catwalk.note.sized' as const, 'drawings.catwalk.note.codes' as const,
  ];
  const lines = keys.map((key) => `- ${say(key, figures)}`);
  const title = say('drawings.catwalk.notes', { mark });
  const width = page.room.width > 130 * page.kit.h ? (page.room.width - 0.6) / 3 : Math.min(page.room.width, 70 * page.kit.h);
  const height = noteHeight(page.kit, title, lines, width);
  return { width, height, label: mark, place: (x, y) => ({ notes: [{ title, lines, at: sheetPoint(x, y + height), width }] }) };
}
