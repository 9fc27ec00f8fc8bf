/** The core as a worker asks it: one pipeline, one project at a time. */
import { handles } from '../../core/board/index.ts';
import { printFault } from '../../core/brief/index.ts';
import { type Sheet } from '../../core/drafting/primitives.ts';
import { capacityLines, capacityOf } from '../../core/checks/index.ts';
import { createPipeline, type Design, earlierDesign, type PackageTools, reuse, type Schedules, scheduleTables } from '../../core/package/index.ts';
import { type Piece } from '../../core/parts/index.ts';
import { type CutList, type SectionJob } from '../../core/shop/cut-list/index.ts';
import { type ShopPlates } from '../../core/shop/nesting/index.ts';
import { say } from '../../core/text/index.ts';
import { type PieceTitle, type Question, type Questions, type ShownFault, type Table } from './protocol.ts';
import { stakesOf } from './stakes.ts';

type Answers = { readonly [Q in Question]: (ask: Questions[Q]['ask']) => Questions[Q]['answer'] };

/** Answers questions about the project that was last laid out; one that can't be leaves the one before it standing. */
export function createAnswers(tools: PackageTools): Answers {
  const pipeline = createPipeline(tools.font);
  const { unitsPerEm, capHeight } = tools.font;
  const fontSize = { unitsPerEm, capHeight, advances: Array.from({ length: 95 }, (_, index) => tools.font.advance(32 + index)) };
  let design: Design | null = null;
  const laidOut = (): Design => {
    if (design === null) throw new Error('nothing is laid out yet');
    return design;
  };
  let taken: { readonly jobs: readonly SectionJob[]; readonly list: CutList } | null = null;
  /** The cut list that was planned elsewhere, as long as nothing of what is cut has changed. */
  const cutList = (): CutList | null => (taken !== null && taken.jobs === pipeline.cutJobs(laidOut()) ? taken.list : null);
  let earlier: { readonly text: string; readonly design: Design } | null = null;
  /** The issue to compare with, in the units of the design as it stands. */
  const since = (): Design | null => {
    const { units } = laidOut().brief;
    if (earlier !== null && earlier.design.brief.units !== units) {
      const again = earlierDesign(tools.font, earlier.text, units);
      earlier = again.ok ? { text: earlier.text, design: again.design } : null;
    }
    return earlier?.design ?? null;
  };
  const drawings = (): readonly Sheet[] => pipeline.drawings(laidOut(), cutList(), since());
  return {
    lay: ({ text, board }) => {
      const read = pipeline.read(text, null);
      if (!read.ok) return { faults: read.faults.map(shownFault), defaults: [], laid: null };
      const worked = pipeline.design(read.brief);
      if (!worked.ok) return { faults: worked.faults.map(shownFault), defaults: read.defaults, laid: null };
      design = worked.design;
      return {
        faults: [],
        defaults: read.defaults,
        laid: {
          units: read.brief.units,
          stations: pipeline.stations(design),
          findings: pipeline.findings(design),
          capacity: capacityLines(read.brief, capacityOf(read.brief, design.layout.runs)),
          handles: handles(read.brief, design.layout),
          picture: board === null ? null : pipeline.board(design, board),
        },
      };
    },
    sheets: () => drawings().map((sheet) => ({ number: sheet.number, title: sheet.title, paper: sheet.paper.name, marks: marksOn(laidOut(), sheet) })),
    sheet: ({ index }) => {
      const sheet = drawings()[index];
      if (sheet === undefined) throw new Error(`no drawing ${String(index)}`);
      return { sheet, marks: Object.fromEntries(laidOut().parts.pieces.map((piece) => [piece.key, piece.mark])), font: fontSize };
    },
    pieces: () => laidOut().parts.pieces.map(pieceTitle),
    marks: ({ text }) => {
      const read = pipeline.read(text, null);
      const worked = read.ok ? pipeline.design(read.brief) : null;
      return { marks: worked?.ok === true ? worked.design.parts.marks : null };
    },
    tables: () => tablesOf(laidOut(), pipeline.schedules(laidOut()), cutList(), plateNotes(pipeline.plates(laidOut()))),
    stakes: () => stakesOf(laidOut().brief, pipeline.schedules(laidOut()).stakeout, drawings()),
    since: ({ text }) => {
      earlier = null;
      if (text === null) return { faults: [] };
      const found = earlierDesign(tools.font, text, laidOut().brief.units);
      if (!found.ok) return { faults: found.faults.map(shownFault) };
      earlier = { text, design: found.design };
      return { faults: [] };
    },
    cutJobs: () => pipeline.cutJobs(laidOut()),
    cuts: ({ jobs, list }) => {
      const now = pipeline.cutJobs(laidOut());
      const same = reuse(now, jobs) === now;
      if (same) taken = { jobs: now, list };
      return { taken: same };
    },
  };
}

const pieceTitle = ({ key, mark, kind, run }: Piece): PieceTitle => ({ key, mark, kind, run });

export function shownFault(fault: Parameters<typeof printFault>[0]): ShownFault {
  const line = printFault(fault);
  return { path: fault.path, words: fault.path === '' ? line : line.slice(fault.path.length + 2) };
}

function marksOn(design: Design, sheet: { readonly primitives: Questions['sheet']['answer']['sheet']['primitives'] }): readonly string[] {
  const shown = new Set<string>(sheet.primitives.flatMap((item) => (item.kind === 'callout' ? item.pieces : [])));
  return [...new Set(design.parts.pieces.filter((piece) => shown.has(piece.key)).map((piece) => piece.mark))];
}

/** Plates that no table can cut and those that no stock sheet holds, each with the reason. */
const plateNotes = ({ plates, nests }: ShopPlates): readonly string[] => [
  ...plates.flatMap(({ mark, refusal }) => (refusal === null ? [] : [say('plates.refused', { mark, reason: say(`plates.refusal.${refusal}`) })])),
  ...nests.flatMap(({ section, left }) => (left.length === 0 ? [] : [say('nests.notes.left', { section, marks: left.map(({ id }) => id).join(', ') })])),
];

const tablesOf = (design: Design, schedules: Schedules, cuts: CutList | null, refused: readonly string[]): readonly Table[] =>
  scheduleTables(design, schedules, cuts).map((table) => {
    const mark = table.columns.findIndex((column) => column.name === 'mark');
    return {
      id: table.id,
      title: table.title,
      columns: table.columns.map(({ name, kind }) => ({ name, figure: kind !== 'text' && kind !== 'user-text', unit: kind === 'length' ? design.brief.units : null })),
      rows: table.cells(),
      markColumn: mark < 0 ? null : mark,
      ...(table.id === 'plates' && refused.length > 0 ? { notes: refused } : {}),
    };
  });
