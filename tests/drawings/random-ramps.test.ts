/** Ramps over their full ranges, drawn: every rule for a drawing holds, every piece is shown and marked. Fixed seeds. */
import { describe, expect, it } from 'vitest';
import { drawnBreaches, drawProject } from '../support/drawn.ts';
import { randomRamps } from './random-ramps.ts';

const COUNT = 40;

describe('random ramps', () => {
  it('hold every rule for a drawing, most of them drawn', () => {
    let drawn = 0;
    const wrong: string[] = [];
    for (const [index, project] of randomRamps(11, COUNT).entries()) {
      const outcome = drawProject(JSON.stringify(project));
      if (!outcome.drawn) {
        expect(outcome.faults.length, String(index)).toBeGreaterThan(0);
        continue;
      }
      drawn += 1;
      wrong.push(...drawnBreaches(outcome.set).slice(0, 5).map((breach) => `project ${String(index)}: ${breach}`));
    }
    expect(wrong).toEqual([]);
    expect(drawn).toBeGreaterThanOrEqual(0.7 * COUNT);
  }, 600_000);
});
