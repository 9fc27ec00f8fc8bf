/** What a drawing bears, found by what is printed and measured on it. */
import { type Dimension, type PlacedView, type Sheet } from '../../core/drafting/primitives.ts';
import { type DrawnSet } from '../support/drawn.ts';

/** Measures are full doubles; what the set-out works out by another road agrees to this, inches or radians. */
const SAME = 1e-6;

export interface Viewed {
  readonly sheet: Sheet;
  readonly view: PlacedView;
  readonly dimensions: readonly Dimension[];
}

/** All views whose name is, or begins with, this. */
export const viewsNamed = (set: Pick<DrawnSet, 'sheets'>, name: string): Viewed[] =>
  set.sheets.flatMap((sheet) =>
    sheet.views.filter((view) => view.id === name || view.id.startsWith(`${name} `)).map((view) => ({
      sheet,
      view,
      dimensions: sheet.primitives.filter((item) => item.kind === 'dimension').filter((item) => item.view === view.id),
    })));

export const same = (a: number, b: number): boolean => Math.abs(a - b) <= SAME;

/** Whichever way it was walked. */
export const across = (item: Dimension): boolean => item.measure === 'linear' && same(Math.sin(item.rotation), 0);
export const upright = (item: Dimension): boolean => item.measure === 'linear' && same(Math.cos(item.rotation), 0);
export const valuesOf = (items: readonly Dimension[]): number[] => items.map((item) => item.value);

/** How often a measure of this kind and value stands in a view. */
export const count = ({ dimensions }: Viewed, is: Dimension['measure'] | ((item: Dimension) => boolean), value: number): number =>
  dimensions.filter((item) => (typeof is === 'string' ? item.measure === is : is(item)) && same(item.value, value)).length;

/** Texts of a drawing that stand on one line with a word, outside any dimension or callout: the cells of its row in a table. */
export function rowsWith(sheet: Sheet, word: string): string[][] {
  const texts = sheet.primitives.filter((item) => item.kind === 'text');
  return texts.filter((item) => item.text === word).map((cell) => texts.filter((item) => same(item.at.y, cell.at.y)).map((item) => item.text));
}
