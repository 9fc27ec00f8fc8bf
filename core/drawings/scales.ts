/** Scales that a shop's rule has: architects' scales in inches, whole ratios in millimeters. */

export interface Scale {
  /** Paper inches an inch of steel. */
  readonly scale: number;
  readonly text: string;
}

const inchScale = (paperInchesToAFoot: number, name: string): Scale => ({
  scale: paperInchesToAFoot / 12,
  text: `${name} = 1'-0" (1:${String(Math.round(12 / paperInchesToAFoot))})`,
});
const ratio = (to: number): Scale => ({ scale: 1 / to, text: `1:${String(to)}` });

const IN: readonly Scale[] = [
  { scale: 1 / 2, text: '1:2' },
  inchScale(3, '3"'),
  inchScale(1.5, '1 1/2"'),
  inchScale(1, '1"'),
  inchScale(3 / 4, '3/4"'),
  inchScale(1 / 2, '1/2"'),
  inchScale(3 / 8, '3/8"'),
  inchScale(1 / 4, '1/4"'),
  inchScale(3 / 16, '3/16"'),
  inchScale(1 / 8, '1/8"'),
  inchScale(3 / 32, '3/32"'),
  ...[160, 192, 240, 360, 480, 600, 960, 1200, 2400, 4800, 9600, 19200, 48000].map(ratio),
];
const MM: readonly Scale[] = [2, 5, 10, 15, 20, 25, 40, 50, 75, 100, 125, 150, 200, 250, 500, 1000, 2000, 5000, 10000, 20000, 50000].map(ratio);

export const scalesOf = (units: 'in' | 'mm'): readonly Scale[] => (units === 'in' ? IN : MM);

/** The largest scale at which steel of this size fits the paper inches given; the smallest of all where none does. */
export function scaleToFit(units: 'in' | 'mm', width: number, height: number, room: { readonly width: number; readonly height: number }): Scale {
  const list = scalesOf(units);
  return list.find(({ scale }) => width * scale <= room.width && height * scale <= room.height) ?? list[list.length - 1]!;
}
