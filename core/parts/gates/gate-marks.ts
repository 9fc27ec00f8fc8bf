import { type Layout } from '../../layout/index.ts';

/** What a gate is called on drawings and in lists, by its place in the brief: CG1 the crowd gate, MG man gates, BS backstops. */
export function gateMarks(layout: Layout): ReadonlyMap<string, string> {
  const marks = new Map<string, string>([[layout.crowdGate.path, 'CG1']]);
  const counts = { 'man-gate': 0, backstop: 0 };
  for (const { kind, path } of layout.openings) {
    counts[kind]++;
    marks.set(path, `${kind === 'man-gate' ? 'MG' : 'BS'}${String(counts[kind])}`);
  }
  return marks;
}
