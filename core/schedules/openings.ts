import { toDegrees, type Inches } from '../base/quantity.ts';
import { type Brief, type Side } from '../brief/types.ts';
import { openingKind, type CrowdGate, type Layout, type Opening, type OpeningKind, type Swing } from '../layout/index.ts';
import { gateMarks } from '../parts/index.ts';
import { say } from '../text/index.ts';
import { printAngle, printLength } from '../units/index.ts';
import { figure, length, text, userText, type Column, type Units } from './column.ts';

/** A gate or backstop. */
export interface OpeningRow {
  readonly mark: string;
  readonly kind: OpeningKind | CrowdGate['kind'];
  readonly run: string;
  /** null: across the chute. */
  readonly side: Side | null;
  /** From the mouth along the centerline; null off the chute. */
  readonly station: Inches | null;
  readonly width: Inches;
  /** Turn of the leaf from shut to open, degrees; null where it slides. */
  readonly swing: number | null;
  readonly note: string;
}

/** Every gate: the crowd gate, then those of the brief in its order. */
export function openingRows(brief: Brief, layout: Layout): readonly OpeningRow[] {
  const marks = gateMarks(layout);
  const { crowdGate } = layout;
  return [
    {
      mark: marks.get(crowdGate.path)!,
      kind: crowdGate.kind,
      run: crowdGate.run,
      side: crowdGate.side,
      station: null,
      width: crowdGate.swing.reach,
      swing: turn(crowdGate.swing),
      note: crowdNote(brief, crowdGate),
    },
    ...layout.openings.map((one): OpeningRow => ({
      mark: marks.get(one.path)!,
      kind: openingKind(one),
      run: one.run,
      side: one.kind === 'backstop' ? null : one.side,
      station: one.station,
      width: one.width,
      swing: one.kind === 'backstop' ? null : turn(one.swing),
      note: noteOf(one),
    })),
  ];
}

function noteOf(one: Opening): string {
  switch (one.kind) {
    case 'man-gate':
      return say('openings.manGate');
    case 'backstop':
      return say(`openings.held.${one.held}`);
    case 'pen-gate':
      if (one.sorts) return say('openings.sortGate', { post: one.hingePost.name });
      return say(`openings.penGate.${one.swings}`, { jamb: say(`openings.hangs.${one.hangs}`), post: one.hingePost.name });
    case 'alley-gate':
      return say(`openings.alleyGate.${one.swings}`, { post: one.hingePost.name });
  }
}

const turn = (swing: Swing): number => Math.abs(toDegrees(swing.turn));

function crowdNote(brief: Brief, { rest }: CrowdGate): string {
  return rest === null ? say('openings.noRest') : say('openings.rest', { angle: printAngle(rest.angle), clear: printLength(rest.clear, brief.units) });
}

/** Columns of `openings.csv`. */
export function openingColumns(units: Units): readonly Column<OpeningRow>[] {
  const size = length(units);
  return [
    text('mark', (row) => row.mark),
    text('kind', (row) => row.kind),
    text('run', (row) => row.run),
    text('side', (row) => row.side),
    size('station', (row) => row.station),
    size('width', (row) => row.width),
    figure('angle', 'swing', (row) => row.swing),
    userText('note', (row) => row.note),
  ];
}
