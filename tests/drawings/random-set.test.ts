/** Sets of drawings of random projects over the full ranges of the project contract, as far as primitives: fixed seeds, nothing skipped. */
import { afterAll, describe, expect, it } from 'vitest';
import { drawnBreaches, drawProject } from '../support/drawn.ts';
import { randomProjects } from '../support/random-brief.ts';

const SEEDS = [101, 102, 103, 104, 105, 106] as const;
const EACH = 50;

describe('random sets', () => {
  const drawn: string[] = [];
  const refused: string[] = [];

  it.each(SEEDS)('hold every rule for a drawing, seed %i', (seed) => {
    const wrong: string[] = [];
    for (const [index, project] of randomProjects(seed, EACH).entries()) {
      const name = `seed ${String(seed)}, project ${String(index)}`;
      try {
        const outcome = drawProject(JSON.stringify(project));
        (outcome.drawn ? drawn : refused).push(name);
        if (outcome.drawn) wrong.push(...drawnBreaches(outcome.set).slice(0, 5).map((breach) => `${name}: ${breach}`));
        else if (outcome.faults.length === 0) wrong.push(`${name}: refused without a fault`);
      } catch (error) {
        wrong.push(`${name}: ${error instanceof Error ? (error.stack ?? error.message) : String(error)}`);
      }
    }
    expect(wrong).toEqual([]);
  }, 300_000);

  it('are drawn, four in five of them', () => {
    expect(drawn.length + refused.length).toBe(SEEDS.length * EACH);
    expect(drawn.length).toBeGreaterThanOrEqual(0.8 * SEEDS.length * EACH);
  });

  afterAll(() => { process.stderr.write(`${String(drawn.length)} of ${String(drawn.length + refused.length)} random projects drawn\n`); });
});
