/** Sets of drawings of random projects over the full ranges of the project contract, as far as primitives. Fixed seeds. */
import { afterAll, describe, expect, it } from 'vitest';
import { readBrief } from '../../core/brief/index.ts';
import { layOut } from '../../core/layout/index.ts';
import { drawnBreaches, drawProject } from '../support/drawn.ts';
import { type ProjectJson, randomProjects } from '../support/random-brief.ts';

const EACH = 50;
/** Larger facilities take long here and are left to the soak, which draws them too; as many others stand in their place. */
const MOST_BAYS = 60;

function isHuge(project: ProjectJson): boolean {
  const read = readBrief(JSON.stringify(project));
  const laid = read.ok ? layOut(read.brief) : null;
  if (laid?.ok !== true) return false;
  return laid.layout.fences.reduce((sum, fence) => sum + fence.spans.reduce((bays, span) => bays + span.posts.length - 1, 0), 0) > MOST_BAYS;
}

/** What is wrong with one project's set; `drawn` is false where it was refused in words. */
function tryOne(project: ProjectJson): { readonly drawn: boolean; readonly wrong: readonly string[] } {
  try {
    const outcome = drawProject(JSON.stringify(project));
    if (outcome.drawn) return { drawn: true, wrong: drawnBreaches(outcome.set).slice(0, 5) };
    return { drawn: false, wrong: outcome.faults.length === 0 ? ['refused without a fault'] : [] };
  } catch (error) {
    return { drawn: false, wrong: [error instanceof Error ? (error.stack ?? error.message) : String(error)] };
  }
}

/** The tests of fifty projects for each seed, and of how many can be drawn. */
export function holdRandomSets(seeds: readonly number[]): void {
  describe('random sets', () => {
    let drawn = 0;
    let tried = 0;

    it.each(seeds)('hold every rule for a drawing, seed %i', (seed) => {
      const projects = [...randomProjects(seed, 3 * EACH).entries()];
      const wrong: string[] = [];
      let taken = 0;
      for (const [index, project] of projects) {
        if (taken === EACH) break;
        if (isHuge(project)) continue;
        taken += 1;
        const one = tryOne(project);
        if (one.drawn) drawn += 1;
        wrong.push(...one.wrong.map((breach) => `seed ${String(seed)}, project ${String(index)}: ${breach}`));
      }
      tried += taken;
      expect(wrong).toEqual([]);
      expect(taken).toBe(EACH);
    }, 600_000);

    it('are drawn, four in five of them', () => {
      expect(tried).toBe(seeds.length * EACH);
      expect(drawn).toBeGreaterThanOrEqual(0.8 * tried);
    });

    afterAll(() => { process.stderr.write(`${String(drawn)} of ${String(tried)} random projects drawn\n`); });
  });
}
