/** A facility and its mirror image are the same steel, in as many views. */
import { describe, expect, it } from 'vitest';
import { drawProject, EXAMPLES, exampleText, type Outcome } from '../support/drawn.ts';
import { mirrorProject } from '../support/mirror-project.ts';
import { type ProjectJson, randomProjects } from '../support/random-brief.ts';

/** The letters of a mark. Its number follows the walk, left before right, so that it is another in a mirror. */
const lettersOf = (mark: string): string => mark.replace(/\d+$/, '');

/** Each mark as its letters, how many pieces bear it, and their length: what a shop cuts. */
function cutList(outcome: Outcome): string[] {
  if (!outcome.drawn) return ['refused'];
  const marks = new Map<string, { readonly length: number; count: number }>();
  for (const { mark, length } of outcome.set.parts.pieces) {
    const entry = marks.get(mark) ?? { length, count: 0 };
    entry.count += 1;
    marks.set(mark, entry);
  }
  return [...marks].map(([mark, { length, count }]) => `${lettersOf(mark)} ${String(count)} x ${length.toFixed(4)}`).sort();
}

/**
 * How many views of each kind. How many drawings they stand on is not held: words do not mirror, and where they leave no room a
 * drawing is divided.
 */
function views(outcome: Outcome): Record<string, number> {
  const counts: Record<string, number> = {};
  if (!outcome.drawn) return counts;
  for (const { id } of outcome.set.sheets.flatMap((sheet) => sheet.views)) {
    const kind = /^(elevation|arc|junction|pivot corner|mouth corner|stakeout)/.exec(id)?.[1];
    if (kind !== undefined) counts[kind] = (counts[kind] ?? 0) + 1;
  }
  return counts;
}

const cases: readonly (readonly [string, ProjectJson])[] = [
  ...EXAMPLES.map((name) => [name, JSON.parse(exampleText(name)) as ProjectJson] as const),
  ...randomProjects(71, 10).map((project, index) => [`seed 71, project ${String(index)}`, project] as const),
];

describe('a project mirrored throughout', () => {
  it.each(cases)('has the same marks and lengths, and as many views: %s', (_, project) => {
    // Marks that a project brings with it are of its own pieces' sides.
    const text = (one: ProjectJson): string => JSON.stringify({ ...one, marks: {} });
    const [own, other] = [drawProject(text(project)), drawProject(text(mirrorProject(project)))];
    expect(cutList(other)).toEqual(cutList(own));
    expect(views(other)).toEqual(views(own));
  });
});
