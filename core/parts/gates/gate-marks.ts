import { openingKind, type Layout, type OpeningKind } from '../../layout/index.ts';

const LETTERS: Readonly<Record<OpeningKind, string>> = { 'man-gate': 'MG', backstop: 'BS', 'pen-gate': 'PG', 'sort-gate': 'SG', 'alley-gate': 'AG' };

/** What a gate is called on drawings and in lists, by its place in the brief: CG1 the crowd gate, MG man gates, BS backstops, PG pen gates, SG sort gates, AG alley gates. */
export function gateMarks(layout: Layout): ReadonlyMap<string, string> {
  const marks = new Map<string, string>([[layout.crowdGate.path, 'CG1']]);
  const counts = new Map<string, number>();
  for (const one of layout.openings) {
    const letters = LETTERS[openingKind(one)];
    const count = (counts.get(letters) ?? 0) + 1;
    counts.set(letters, count);
    marks.set(one.path, `${letters}${String(count)}`);
  }
  return marks;
}
