/** Sight lines on the project contract's example, whose figures are known. */
import { describe, expect, it } from 'vitest';
import { sightLines } from '../../core/board/index.ts';
import { makeBrief } from '../support/brief-builder.ts';
import { laidOut } from '../support/laid-out.ts';

const brief = makeBrief();
const layout = laidOut(brief);

describe('the sight line', () => {
  it('is the one behind the see-ahead rule: seen length 218.435 in (geometry contract, Sight: i 192, w 28, L 120)', () => {
    const [line] = sightLines(brief, layout);
    expect(line?.from).toEqual(layout.mouth);
    const arc = layout.runs.find((run) => run.name === 'chute-2')!.path;
    if (line === undefined || arc.kind !== 'arc') throw new Error('no sight line, or no arc');
    const turned = Math.abs(Math.atan2(line.to.y - arc.center.y, line.to.x - arc.center.x) - arc.start);
    expect(120 + arc.radius * turned).toBeCloseTo(218.435, 3);
    expect(Math.hypot(line.graze!.x - arc.center.x, line.graze!.y - arc.center.y)).toBeCloseTo(192, 6);
  });
});
