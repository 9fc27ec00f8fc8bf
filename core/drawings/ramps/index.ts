/** Each ramp: profile, plan and section with its figures; deck and cleats or forms; its fences on the slope with their marks. */
import { sheetPoint } from '../../base/points.ts';
import { draft } from '../../drafting/draft.ts';
import { printSize } from '../../drafting/kit.ts';
import { type Drawing } from '../../drafting/model.ts';
import { largerPaper, paperNamed } from '../../drafting/paper.ts';
import { noteHeight } from '../../drafting/table.ts';
import { type Ramp } from '../../layout/index.ts';
import { RAMP_PRACTICE, type Piece } from '../../parts/index.ts';
import { say } from '../../text/index.ts';
import { detailView } from '../detail.ts';
import { drawingOf } from '../drawing-of.ts';
import { type Block, flowBlocks, stacked } from '../flow.ts';
import { type DrawInput, type Page, pageOf } from '../input.ts';
import { fenceParts } from '../panel-parts.ts';
import { type Scale, scalesOf } from '../scales.ts';
import { fromAbove } from '../sections.ts';
import { tableBlocks } from '../table-blocks.ts';
import { aboveBlock, aboveSize } from './above.ts';
import { acrossDetail } from './across.ts';
import { closeUp } from './close-up.ts';
import { slopedElevation, slopedPieces, slopedStretches } from './fence-elevation.ts';
import { slopedFence } from './fence-frame.ts';
import { profileBlock, profileSize } from './profile.ts';
import { rolledDeck } from './rolled-deck.ts';
import { figuresTable, type RampTable, rowsTable, slopedPieceTable } from './tables.ts';

const SERIES = '9';

/** All drawings of all ramps, numbered through. */
export function rampDrawings(input: DrawInput): Drawing[] {
  const made = input.layout.ramps.flatMap((ramp) => onPaper(input, ramp));
  return made.map((drawing, i) => {
    const number = `${SERIES}${String(i + 1).padStart(2, '0')}`;
    return { ...drawing, number, file: `${number} ${drawing.file.slice(drawing.number.length + 1)}` };
  });
}

/** On the brief's paper, on a larger one where something has no room. */
function onPaper(input: DrawInput, ramp: Ramp): Drawing[] {
  let paper = paperNamed(input.brief.paper);
  for (;;) {
    const page = pageOf(input, paper);
    const { drawings, fits } = drawingsOn(input, page, ramp);
    const larger = largerPaper(paper);
    if (larger === null || (fits && drawings.every((drawing) => draft(input.font, page.block, drawing).unplaced.length === 0))) return drawings;
    paper = larger;
  }
}

function drawingsOn(input: DrawInput, page: Page, ramp: Ramp): { readonly drawings: Drawing[]; readonly fits: boolean } {
  const pieces = input.parts.pieces.filter((piece) => piece.run === ramp.name);
  const series = [
    { title: say('drawings.ramp.title', { ramp: ramp.name }), lists: shapeLists(input, page, ramp, pieces) },
    { title: say('drawings.ramp.fences', { ramp: ramp.name }), lists: fenceLists(input, page, ramp) },
  ];
  const fits = series.every(({ lists }) => lists.flat().every(({ width, height }) => width <= page.room.width + 1e-9 && height <= page.room.height + 1e-9));
  const file = say('drawings.ramp.file', { ramp: ramp.name });
  return {
    fits,
    drawings: series.flatMap(({ title, lists }) => flowBlocks(page, lists).map((filled, i) => drawingOf(page, filled, SERIES, i, title, file))),
  };
}

/** Profile over plan at one scale; section, build-up, figures and notes; deck or forms. */
function shapeLists(input: DrawInput, page: Page, ramp: Ramp, pieces: readonly Piece[]): Block[][] {
  const { units } = input.brief;
  const scale = shapeScale(input, page, ramp);
  const { surface } = ramp.figures;
  const rows = rowsTable(units, ramp);
  const enlarged = closeUp(units, ramp);
  const fences = input.layout.fences.filter((fence) => fence.run === ramp.name);
  const builds = [...new Map(fences.map((fence) => [JSON.stringify([fence.section, fence.brief.construction, fence.brief.post.name]), fence])).values()];
  return [
    [
      stacked([profileBlock(page, ramp, pieces, scale), aboveBlock(input, page, ramp, scale)]),
      detailBlock(page, acrossDetail(input, ramp), ramp, 0.3, 0.9),
    ],
    [
      ...asBlocks(page, ramp, figuresTable(units, ramp)),
      ...(rows === null ? [] : asBlocks(page, ramp, rows)),
      notesBlock(page, ramp),
      ...builds.map((fence) => detailBlock(page, { ...fromAbove(input.brief, fence), id: `build-up ${fence.run} ${fence.side}` }, ramp, 0.3, 0.46)),
      ...(enlarged === null ? [] : [detailBlock(page, enlarged, ramp, 0.3, 0.46)]),
    ],
    ...(surface.kind === 'cleated' ? [rolledDeck(page, ramp, surface, pieces)] : []),
  ];
}

function fenceLists(input: DrawInput, page: Page, ramp: Ramp): Block[][] {
  const panels = fenceParts(input.layout, input.parts).filter(({ fence }) => fence.run === ramp.name);
  return panels.flatMap((panel) => slopedStretches(page, slopedFence(ramp, panel)).map(({ stretch, scale }) => {
    const elevation = slopedElevation(page, stretch, scale);
    const name = say('drawings.fence.name', { run: ramp.name, side: panel.fence.side });
    const table = slopedPieceTable(input.brief.units, say('drawings.ramp.pieces', { fence: name }), slopedPieces(stretch));
    return [elevation, ...asBlocks(page, ramp, table).map((block) => ({ ...block, follows: true }))];
  }));
}

const asBlocks = (page: Page, ramp: Ramp, { title, columns, rows }: RampTable): Block[] => tableBlocks(page, ramp.name, title, columns, rows);

/** The largest scale at which profile and plan stand one over the other. */
function shapeScale(input: DrawInput, page: Page, ramp: Ramp): Scale {
  const list = scalesOf(page.block.units).filter(({ scale }) => scale <= 1 / 8);
  const fits = (one: Scale): boolean => {
    const [profile, above] = [profileSize(page, ramp, one), aboveSize(input, page, ramp, one)];
    return Math.max(profile.width, above.width) <= page.room.width && profile.height + above.height + 0.25 <= page.room.height;
  };
  return list.find(fits) ?? list[list.length - 1]!;
}

/** A detail as a block that takes these shares of the page. */
function detailBlock(page: Page, detail: Parameters<typeof detailView>[1], ramp: Ramp, wide: number, tall: number): Block {
  const width = Math.min(page.room.width, Math.max(page.room.width * wide, 50 * page.kit.h));
  const height = page.room.height * tall;
  return { width, height, label: ramp.name, place: (x, y) => ({ views: [detailView(page, detail, { x, y, width, height }, 9)] }) };
}

function notesBlock(page: Page, ramp: Ramp): Block {
  const { plank, bumper } = RAMP_PRACTICE;
  const stepped = ramp.brief.surface.kind === 'stepped';
  const print = (value: number): string => printSize(page.kit, value);
  const sizes = {
    line: say(stepped ? 'drawings.ramp.nosings' : 'drawings.ramp.surface'),
    plank: say('term.figure-pair', { a: print(plank.thick), b: print(plank.wide) }),
    bumper: say('term.figure-pair', { a: print(bumper.thick), b: print(Math.min(bumper.tall, ramp.figures.height)) }),
  };
  const keys = [
    'drawings.ramp.note.plumb' as const,
    ...(stepped ? (['drawings.ramp.note.solid', 'drawings.ramp.note.finish', 'drawings.ramp.note.bumper'] as const) : (['drawings.ramp.note.deck', 'drawings.ramp.note.carried'] as const)),
    'drawings.ramp.note.truck' as const,
    ...(ramp.brief.at === null ? (['drawings.ramp.note.placed'] as const) : []),
    'drawings.ramp.note.codes' as const,
  ];
  const lines = keys.map((key) => `- ${say(key, sizes)}`);
  const title = say('drawings.ramp.notes', { ramp: ramp.name });
  const width = page.room.width > 130 * page.kit.h ? (page.room.width - 0.6) / 3 : Math.min(page.room.width, 70 * page.kit.h);
  const height = noteHeight(page.kit, title, lines, width);
  return { width, height, label: ramp.name, place: (x, y) => ({ notes: [{ title, lines, at: sheetPoint(x, y + height), width }] }) };
}
