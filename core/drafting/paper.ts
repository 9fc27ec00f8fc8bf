/** Sheets of paper, laid wide. ASME Y14.1 sizes in inches and ISO 216 sizes in millimeters. */
import { type Inches, MM_PER_INCH, inches } from '../base/quantity.ts';
import { type Paper } from './primitives.ts';

/** Least letter height: 0.1 in up to ANSI B and A3, 0.16 in on larger paper, so that a half-size print is still read. */
const SMALL_TEXT = inches(0.1);
const LARGE_TEXT = inches(0.16);

const ansi = (name: string, width: number, height: number, text: Inches): Paper => ({ name, width: inches(width), height: inches(height), text });
const iso = (name: string, width: number, height: number, text: Inches): Paper => ansi(name, width / MM_PER_INCH, height / MM_PER_INCH, text);

/** Each family from the smallest up. */
const FAMILIES: readonly (readonly Paper[])[] = [
  [
    ansi('ANSI A', 11, 8.5, SMALL_TEXT),
    ansi('ANSI B', 17, 11, SMALL_TEXT),
    ansi('ANSI C', 22, 17, LARGE_TEXT),
    ansi('ANSI D', 34, 22, LARGE_TEXT),
    ansi('ANSI E', 44, 34, LARGE_TEXT),
  ],
  [
    iso('ISO A4', 297, 210, SMALL_TEXT),
    iso('ISO A3', 420, 297, SMALL_TEXT),
    iso('ISO A2', 594, 420, LARGE_TEXT),
    iso('ISO A1', 841, 594, LARGE_TEXT),
    iso('ISO A0', 1189, 841, LARGE_TEXT),
  ],
];

/** The paper of that name; throws on a name that the brief would have refused. */
export function paperNamed(name: string): Paper {
  const found = FAMILIES.flat().find((paper) => paper.name === name);
  if (found === undefined) throw new Error(`no such paper: ${name}`);
  return found;
}

/** The next larger paper of the same family, or null. */
export function largerPaper(paper: Paper): Paper | null {
  for (const family of FAMILIES) {
    const at = family.findIndex((member) => member.name === paper.name);
    if (at >= 0) return family[at + 1] ?? null;
  }
  return null;
}
