/** What each kind of entity that a drawing of ours may hold must have. */
import { namesIn } from './header.ts';
import { type Dxf, type Item, numberOf, valueOf, valuesOf } from './items.ts';

export interface Shape {
  readonly markers: readonly string[];
  /** Groups that must stand under each marker. */
  readonly groups: Readonly<Record<string, readonly number[]>>;
  /** Points that are drawn, each an x and a y. */
  readonly points: (item: Item) => readonly (readonly [number, number])[];
  readonly wrong: (item: Item, file: Dxf) => string[];
}

const at = (...codes: readonly number[]) => (item: Item): [number, number][] =>
  codes.flatMap((code) => valuesOf(item, code).map((x, k): [number, number] => [Number(x), Number(valuesOf(item, code + 10)[k])]));

/** The points of a circle's rim at these angles, degrees. */
function rim(item: Item, ...angles: readonly number[]): [number, number][] {
  const turn = Math.PI / 180;
  return angles.map((angle) => [
    numberOf(item, 10) + numberOf(item, 40) * Math.cos(angle * turn), numberOf(item, 20) + numberOf(item, 40) * Math.sin(angle * turn),
  ]);
}

const none = (): string[] => [];
const radius = (item: Item): string[] => (numberOf(item, 40) > 0 ? [] : [`radius ${String(valueOf(item, 40))}`]);

export const SHAPES: Readonly<Record<string, Shape>> = {
  LINE: { markers: ['AcDbEntity', 'AcDbLine'], groups: { AcDbLine: [10, 20, 30, 11, 21, 31] }, points: at(10, 11), wrong: none },
  CIRCLE: { markers: ['AcDbEntity', 'AcDbCircle'], groups: { AcDbCircle: [10, 20, 30, 40] }, points: (item) => rim(item, 0, 90, 180, 270), wrong: radius },
  ARC: {
    markers: ['AcDbEntity', 'AcDbCircle', 'AcDbArc'], groups: { AcDbCircle: [10, 20, 30, 40], AcDbArc: [50, 51] },
    points: (item) => rim(item, numberOf(item, 50), numberOf(item, 51)),
    wrong: (item) => {
      const ends = [numberOf(item, 50), numberOf(item, 51)];
      const out = radius(item);
      if (ends[0] === ends[1]) out.push('its two angles are one');
      if (ends.some((angle) => !(angle >= 0 && angle < 360))) out.push(`angles ${ends.join()}`);
      return out;
    },
  },
  SOLID: {
    markers: ['AcDbEntity', 'AcDbTrace'], groups: { AcDbTrace: [10, 20, 30, 11, 21, 31, 12, 22, 32, 13, 23, 33] }, points: at(10, 11, 12, 13),
    wrong: (item) => (bowTie(item) ? ['its corners run 1, 2, 3, 4: a bow tie'] : []),
  },
  LWPOLYLINE: {
    markers: ['AcDbEntity', 'AcDbPolyline'], groups: { AcDbPolyline: [90, 70, 10, 20] }, points: at(10),
    wrong: (item) => (numberOf(item, 90) === valuesOf(item, 10).length && numberOf(item, 90) > 1 ? [] : ['vertices are not as many as it says']),
  },
  TEXT: { markers: ['AcDbEntity', 'AcDbText', 'AcDbText'], groups: { AcDbText: [10, 20, 30, 40, 1, 72, 11, 21, 31] }, points: at(10, 11), wrong: textWrong },
  DIMENSION: { markers: [], groups: { AcDbDimension: [2, 10, 20, 30, 11, 21, 31, 70, 71, 3] }, points: at(11), wrong: none },
};

function textWrong(item: Item, file: Dxf): string[] {
  const out: string[] = [];
  if (!(numberOf(item, 40) > 0)) out.push('height is not above zero');
  if ((valueOf(item, 1) ?? '').trim() === '') out.push('no text');
  if (!namesIn(file, 'STYLE').has((valueOf(item, 7) ?? 'STANDARD').toUpperCase())) out.push('text style is not defined');
  const [dx, dy] = [numberOf(item, 11) - numberOf(item, 10), numberOf(item, 21) - numberOf(item, 20)];
  if (numberOf(item, 72) !== 5 || (valueOf(item, 73) ?? '0') !== '0') out.push('is not fitted on its baseline');
  else if (Math.hypot(dx, dy) === 0) out.push('is fitted between one point and itself');
  else if (Math.abs(Math.sin((numberOf(item, 50) * Math.PI) / 180 - Math.atan2(dy, dx))) > 1e-5) out.push('its rotation is not that of its baseline');
  return out;
}

/** Corners 1-2 and 3-4 of a SOLID are opposite sides that run the same way round. */
function bowTie(item: Item): boolean {
  const [a = [0, 0], b = [0, 0], c = [0, 0], d = [0, 0]] = at(10, 11, 12, 13)(item);
  return (b[0] - a[0]) * (d[0] - c[0]) + (b[1] - a[1]) * (d[1] - c[1]) < 0;
}
