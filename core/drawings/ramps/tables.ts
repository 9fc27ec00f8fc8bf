/** Tables beside a ramp's drawings: its figures, its forms or cleats, the pieces of its fences. */
import { type Inches, MM_PER_INCH, radians, type Radians } from '../../base/quantity.ts';
import { type Column } from '../../drafting/model.ts';
import { printSize } from '../../drafting/kit.ts';
import { lineHeight, type Ramp } from '../../layout/index.ts';
import { rampConcrete, type EndCut, type Piece } from '../../parts/index.ts';
import { say } from '../../text/index.ts';
import { printAngle } from '../../units/index.ts';

export interface RampTable {
  readonly title: string;
  readonly columns: readonly Column[];
  readonly rows: readonly (readonly string[])[];
}

const start = (title: string): Column => ({ title, align: 'start' });
const end = (title: string): Column => ({ title, align: 'end' });

/** Cubic inches as concrete is ordered: cubic yards or cubic meters, two decimals. */
export function printVolume(units: 'in' | 'mm', cubicInches: number): string {
  if (units === 'in') return say('drawings.ramp.volumeIn', { volume: (cubicInches / 46656).toFixed(2) });
  return say('drawings.ramp.volumeMm', { volume: ((cubicInches * MM_PER_INCH ** 3) / 1e9).toFixed(2) });
}

export function figuresTable(units: 'in' | 'mm', ramp: Ramp): RampTable {
  const { figures, brief } = ramp;
  const { surface } = figures;
  const size = (value: number, decimal = false): string => printSize({ units }, value, decimal);
  const concrete = rampConcrete(ramp);
  const own: string[][] = surface.kind === 'stepped'
    ? [
      [say('drawings.ramp.risers'), String(surface.risers)], [say('drawings.ramp.riser'), size(surface.riser, true)], [say('drawings.ramp.tread'), size(surface.tread)],
    ]
    : [
      [say('drawings.ramp.cleats'), String(surface.cleats.length)], [say('drawings.ramp.cleat'), size(surface.cleat)], [say('drawings.ramp.gap'), size(surface.gap)],
    ];
  return {
    title: say('drawings.ramp.figures', { ramp: ramp.name }),
    columns: [start(say('drawings.ramp.figure')), end(say('drawings.ramp.value'))],
    rows: [
      [say('drawings.ramp.rise'), size(figures.height)],
      [say('drawings.ramp.run'), size(figures.run, true)],
      [say('drawings.ramp.slopeLength'), size(figures.slopeLength, true)],
      [say('drawings.ramp.angle'), printAngle(figures.slope)],
      ...own,
      [say('drawings.ramp.width'), size(brief.width)],
      [say('drawings.ramp.dock'), size(brief.dockLength)],
      ...(concrete === null ? [] : [[say('drawings.ramp.volume'), printVolume(units, concrete.volume)]]),
    ],
  };
}

/** Forms of a stepped ramp or cleats of a cleated one, row by row from the foot; null where there is none. */
export function rowsTable(units: 'in' | 'mm', ramp: Ramp): RampTable | null {
  const size = (value: number): string => printSize({ units }, value, true);
  const { surface, slope } = ramp.figures;
  const concrete = rampConcrete(ramp);
  if (concrete !== null) {
    return {
      title: say('drawings.ramp.forms', { ramp: ramp.name }),
      columns: [end(say('drawings.ramp.step')), end(say('drawings.ramp.back')), end(say('drawings.ramp.top'))],
      rows: concrete.forms.map(({ step, back, top }) => [String(step), size(back), size(top)]),
    };
  }
  if (surface.kind !== 'cleated' || surface.cleats.length === 0) return null;
  return {
    title: say('drawings.ramp.cleatTable', { ramp: ramp.name }),
    columns: [end(say('drawings.ramp.cleatNumber')), end(say('drawings.ramp.up')), end(say('drawings.ramp.level')), end(say('drawings.ramp.height'))],
    rows: surface.cleats.map((up, i) => [
      String(i + 1), size(up), size(up * Math.cos(slope)), size(lineHeight(ramp.figures, up * Math.cos(slope))),
    ]),
  };
}

/** The pieces of a stretch of fence, each mark once, with how its ends are cut. */
export function slopedPieceTable(units: 'in' | 'mm', title: string, pieces: readonly Piece[]): RampTable {
  const marks = new Map<string, { readonly piece: Piece; readonly keys: Set<string> }>();
  for (const piece of pieces) {
    const known = marks.get(piece.mark) ?? { piece, keys: new Set() };
    known.keys.add(piece.key);
    marks.set(piece.mark, known);
  }
  const size = (value: number): string => printSize({ units }, value);
  const short = pieces.some((piece) => piece.lengthShort !== null);
  const columns = [
    start(say('drawings.piece.mark')), start(say('drawings.piece.kind')), end(say('drawings.piece.quantity')), start(say('drawings.piece.section')),
    end(say('drawings.piece.length')), ...(short ? [end(say('drawings.piece.short'))] : []), start(say('drawings.ramp.ends')),
  ];
  const rows = [...marks.values()].map(({ piece, keys }) => [
    piece.mark, say(`drawings.kind.${piece.kind}`), String(keys.size), piece.section,
    piece.flatHeight === null ? size(piece.length) : `${size(piece.length)} x ${size(piece.flatHeight)}`,
    ...(short ? [piece.lengthShort === null ? '' : size(piece.lengthShort)] : []),
    endsText(units, piece),
  ]);
  return { title, columns, rows };
}

function endsText(units: 'in' | 'mm', piece: Piece): string {
  const texts = [...new Set(piece.ends.map((cut) => cutText(units, cut)))].filter((text) => text !== say('drawings.ramp.square'));
  const turned = piece.ends.some(({ kind }) => kind === 'slope-cope') ? say('drawings.ramp.turned') : '';
  return texts.length === 0 ? say('drawings.ramp.square') : texts.join('; ') + turned;
}

function cutText(units: 'in' | 'mm', cut: EndCut): string {
  const angle = (value: number): string => printAngle(value as Radians);
  const diameter = (radius: Inches): string => printSize({ units }, 2 * radius);
  switch (cut.kind) {
    case 'square':
      return say('drawings.ramp.square');
    case 'cope':
      return say('drawings.ramp.copeLevel', { post: diameter(cut.postRadius) });
    case 'slope-cope':
      return say('drawings.ramp.cope', { angle: angle(radians(Math.PI / 2 - cut.slope)), post: diameter(cut.postRadius) });
    case 'mitre':
    case 'slope-mitre':
      return say('drawings.ramp.mitre', { angle: angle(cut.angle) });
    case 'plumb':
      return say('drawings.ramp.plumb', { angle: angle(cut.slope) });
  }
}
