import { inches, MM_PER_INCH } from '../base/quantity.ts';
import { parseFigure } from '../units/index.ts';
import { rectangularSection, roundSection } from './make-section.ts';
import { PIPE_SCHEDULE_40 } from './tables/pipe-schedule-40.ts';
import { tidyName } from './tidy-name.ts';
import { type Section } from './types.ts';

/** Sections that the shop added, by tidied name. */
export type ExtraSections = ReadonlyMap<string, Section>;

const LONGEST_NAME = 60;

function parsePipe(name: string): Section | null {
  const match = /^pipe (.+) sch 40$/.exec(name);
  const nominal = match === null ? null : parseFigure(match[1] ?? '');
  const row = PIPE_SCHEDULE_40.find((entry) => entry.nominal === nominal);
  return row === undefined ? null : roundSection(name, inches(row.outside), inches(row.wall));
}

/** The figures of `A x B` or `A x B x C`, in inches. */
function parseSizes(text: string): readonly number[] | null {
  const metric = text.endsWith(' mm');
  const figures = text.replace(/ mm$| in$|"$/, '').split(' x ').map((part) => parseFigure(part.replace(/"$/, '').trim()));
  if (figures.some((figure) => figure === null)) return null;
  return figures.map((figure) => (figure ?? NaN) / (metric ? MM_PER_INCH : 1));
}

function parseBySize(name: string): Section | null {
  const match = /^(?:(pipe|tubing|tube) )?([\d. /]+ x .+)$/.exec(name);
  const sizes = match === null ? null : parseSizes(match[2] ?? '');
  if (match === null || sizes === null) return null;
  const [first = NaN, second = NaN, third = NaN] = sizes.map(inches);
  if (match[1] === 'tube') return sizes.length === 3 ? rectangularSection(name, inches(first), inches(second), inches(third)) : null;
  return sizes.length === 2 ? roundSection(name, inches(first), inches(second)) : null;
}

/**
 * The section behind a name: `pipe 2 1/2 sch 40` (ASME B36.10M), round by outside diameter and wall (`tubing 2 3/8 x 0.190`,
 * `pipe 60.3 x 3.9 mm`, `2.375 x 0.154`), square or rectangular tube (`tube 2 x 3 x 3/16`, `tube 60 x 60 x 4 mm`: across the fence,
 * then upright, then wall), or one of the shop's own. Null for any other text or an impossible size.
 */
export function parseSection(text: string, extra: ExtraSections = new Map()): Section | null {
  if (text.length > LONGEST_NAME) return null;
  const name = tidyName(text);
  return extra.get(name) ?? parsePipe(name) ?? parseBySize(name);
}
