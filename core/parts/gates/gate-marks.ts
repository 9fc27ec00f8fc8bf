import { type Layout, type Opening } from '../../layout/index.ts';

const LETTERS: Readonly<Record<Opening['kind'], string>> = { 'man-gate': 'MG', backstop: 'BS', 'pen-gate': 'PG', 'alley-gate': 'AG' };

/** What a gate is called on drawings and in lists, by its place in the brief: CG1 the crowd gate, MG man gates, BS backstops, PG pen gates, AG alley gates. */
export function gateMarks(layout: Layout): ReadonlyMap<string, string> {
  const marks = new Map<string, string>([[layout.crowdGate.path, 'CG1']]);
  const counts = { 'man-gate': 0, backstop: 0, 'pen-gate': 0, 'alley-gate': 0 };
  for (const { kind, path } of layout.openings) {
    counts[kind]++;
    marks.set(path, `${LETTERS[kind]}${String(counts[kind])}`);
  }
  return marks;
}
