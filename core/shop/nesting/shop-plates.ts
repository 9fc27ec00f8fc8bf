import { type Vec } from '../../base/points.ts';
import { inches, type Inches } from '../../base/quantity.ts';
import { type FlatShape } from '../../base/flat-shape.ts';
import { add } from '../../base/points.ts';
import { type Brief } from '../../brief/index.ts';
import { stockSheets, type Parts } from '../../parts/index.ts';
import { moveShape, turnPoint } from '../plates/move-shape.ts';
import { platesOf, type Plate } from '../plates/index.ts';
import { type Polyline } from '../stroke-text/index.ts';
import { nestParts } from './nest-parts.ts';
import { partSpacing } from './practice.ts';
import { type Nest, type NestedPart, type NestedSheet, type SheetSize } from './types.ts';

/** A filled stock sheet, with the names of those that are cut so. */
export interface NamedSheet extends NestedSheet {
  readonly names: readonly string[];
}

/** The sheets of one thickness. */
export interface PlateNest extends Omit<Nest, 'sheets'> {
  /** As the first plate of it calls it. */
  readonly section: string;
  readonly thickness: Inches;
  readonly sheets: readonly NamedSheet[];
}

/** What the shop's table cuts: plates, and how they lie on stock sheets. */
export interface ShopPlates {
  readonly plates: readonly Plate[];
  readonly nests: readonly PlateNest[];
  readonly spacing: Inches;
}

interface Kept {
  readonly sheets: Brief['shop']['sheets'];
  readonly kerf: number;
  readonly made: ShopPlates;
}

/** The drawings and the package ask for the same: by the pieces, as long as they are there. */
const kept = new WeakMap<Parts['pieces'], Kept>();

/** The plates of a design and their nests, thickness by thickness in the order of the walk. The same design gives the same. */
export function shopPlates(brief: Brief, parts: Parts): ShopPlates {
  const { sheets, plateKerf } = brief.shop;
  const known = kept.get(parts.pieces);
  if (known?.sheets === sheets && known.kerf === plateKerf) return known.made;
  const made = makeShopPlates(brief, parts);
  kept.set(parts.pieces, { sheets, kerf: plateKerf, made });
  return made;
}

function makeShopPlates(brief: Brief, parts: Parts): ShopPlates {
  const plates = platesOf(parts.pieces);
  const sizes = stockSheets(brief).map(([a, b]): SheetSize => ({ long: inches(Math.max(a, b)), short: inches(Math.min(a, b)) }));
  const spacing = inches(partSpacing(brief.shop.plateKerf));
  const fit = plates.filter((plate) => plate.refusal === null);
  const used = new Set<string>();
  const nests = [...new Set(fit.map(({ thickness }) => thickness))].map((thickness): PlateNest => {
    const alike = fit.filter((plate) => plate.thickness === thickness);
    const { section } = alike[0]!;
    const nest = nestParts(alike.map(({ mark, quantity, shape, bend }) => ({ id: mark, quantity, shape, along: bend !== null })), sizes, spacing);
    return { ...nest, section, thickness, sheets: named(nest.sheets, fileName(section, thickness, used)) };
  });
  return { plates, nests, spacing };
}

function named(sheets: readonly NestedSheet[], thickness: string): readonly NamedSheet[] {
  let number = 0;
  return sheets.map((sheet) => ({ ...sheet, names: Array.from({ length: sheet.count }, () => `${thickness}-${String(++number)}`) }));
}

/** A thickness as a file name has it: `12ga`, `3mm`, `1-4in`; its decimals where another has that name. */
function fileName(section: string, thickness: number, used: Set<string>): string {
  const plain = section.replace(/["']/g, '').replace(/(\d) (?=\d)/g, '$1-').replace(/\//g, '-').replace(/[^A-Za-z0-9.-]+/g, '');
  const own = /[a-z]$/i.test(plain) ? plain : `${plain}in`;
  const name = used.has(own) ? `${thickness.toFixed(4)}in` : own;
  used.add(name);
  return name;
}

/** Names of the sheets that a mark is cut from. */
export const sheetsOf = ({ nests }: ShopPlates, mark: string): readonly string[] =>
  nests.flatMap(({ sheets }) => sheets.filter(({ parts }) => parts.some(({ id }) => id === mark)).flatMap(({ names }) => names));

/** A part of a sheet where it lies: its plate, outline and strokes. */
export interface LaidPlate {
  readonly plate: Plate;
  readonly shape: FlatShape;
  readonly etch: readonly Polyline[];
}

export function laidPlates(plates: readonly Plate[], parts: readonly NestedPart[]): readonly LaidPlate[] {
  const byMark = new Map(plates.map((plate) => [plate.mark, plate]));
  return parts.map(({ id, turn, at }) => {
    const plate = byMark.get(id)!;
    const point = (p: Vec): Vec => add(turnPoint(p, turn), at);
    return { plate, shape: moveShape(plate.shape, at, turn), etch: (plate.etch ?? []).map((stroke) => stroke.map(point)) };
  });
}
