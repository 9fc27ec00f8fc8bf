import { describe, expect, it } from 'vitest';
import { inches } from '../../../core/base/quantity.ts';
import { type Brief, type Side } from '../../../core/brief/types.ts';
import { isJambedGate, type Layout, type PenGate } from '../../../core/layout/index.ts';
import { makeBrief, straight } from '../../support/brief-builder.ts';
import { fenceOf, laidOut, runOf } from '../../support/laid-out.ts';

const pens = (...list: readonly (readonly [Side, number])[]): Brief['sortPens'] =>
  list.map(([side, gate], i) => ({ name: `sort-${String(i + 1)}`, side, gate: inches(gate), path: `sortPens[${String(i)}]` }));
const brief = (sortPens: Brief['sortPens'], width: number | null = 120): Brief => makeBrief({
  chute: { width: inches(28), runs: [straight(240)] }, sortPens, squeezePad: width === null ? null : { length: inches(144), width: inches(width), roof: null },
});
const gateOf = (layout: Layout, path: string): PenGate => {
  const gate = layout.openings.find((one) => one.path === path);
  if (gate === undefined || !isJambedGate(gate) || gate.kind !== 'pen-gate') throw new Error(`no gate ${path}`);
  return gate;
};

describe('sort pens', () => {
  it('lie along an alley past the pad, as wide as the widest gate, without a shoulder where that is the pad\'s width', () => {
    const layout = laidOut(brief(pens(['left', 120], ['right', 96])));
    expect(layout.runs.slice(-9).map(({ name }) => name)).toEqual(['squeeze-pad', 'sort-1', 'sort-1-in', 'sort-1-back', 'sort-1-out', 'sort-2', 'sort-2-in', 'sort-2-back', 'sort-2-out']);
    expect([runOf(layout, 'sort-1').width, runOf(layout, 'sort-2').width]).toEqual([120, 120]);
    expect(layout.fouls).toEqual([]);
  });

  it.each([[200, 120], [84, 120], [null, 120]] as const)('take a shoulder from a pad of %s to an alley of %s', (width, alley) => {
    const layout = laidOut(brief(pens(['left', 120], ['right', 96], ['right', 110]), width));
    expect(runOf(layout, 'sort-1').width).toBe(alley);
    expect(runOf(layout, 'sort-shoulder').length).toBe(0);
    expect(layout.fouls).toEqual([]);
  });

  it('never make a shoulder too short for its two posts: a pad nearly as wide gives the alley its width, one nearly as narrow widens it', () => {
    // Posts of 2.875 and 1/2 in between them: 3.375 a side.
    for (const [width, alley] of [[126.7, 126.7], [126.75, 120], [113.3, 113.3 + 6.75], [113.25, 120]] as const) {
      const layout = laidOut(brief(pens(['left', 120]), width));
      expect(runOf(layout, 'sort-1').width).toBeCloseTo(alley, 9);
      expect(layout.fouls).toEqual([]);
    }
  });

  it('on one side share the fence between them; on two sides each has its own', () => {
    const runs = (...list: readonly (readonly [Side, number])[]): readonly string[] => laidOut(brief(pens(...list))).fences.map(({ run }) => run).filter((run) => /-(in|back|out)$/.test(run));
    expect(runs(['left', 120], ['left', 120])).toEqual(['sort-1-in', 'sort-1-back', 'sort-1-out', 'sort-2-back', 'sort-2-out']);
    expect(runs(['left', 120], ['right', 120])).toHaveLength(6);
    expect(laidOut(brief(pens(['left', 120], ['left', 100], ['left', 90], ['right', 120], ['right', 60])))).toMatchObject({ fouls: [] });
  });

  it.each(['left', 'right'] as const)('have a gate on the %s that hangs on the jamb passed last and stands across the alley when it is open', (side) => {
    const layout = laidOut(brief(pens([side, 120])));
    const gate = gateOf(layout, 'sortPens[0]');
    const run = runOf(layout, 'sort-1');
    const face = fenceOf(layout, 'sort-1', side);
    expect([gate.sorts, gate.swings, gate.hangs, gate.width, gate.to - gate.from]).toEqual([true, 'in', 'last', 120, 120]);
    // The alley runs up the plan. Shut, the leaf points back along it; open, straight across, away from its own fence.
    expect(Math.sin(gate.swing.shut)).toBeCloseTo(-1, 9);
    const open = gate.swing.shut + gate.swing.turn;
    expect(Math.cos(open)).toBeCloseTo(side === 'left' ? 1 : -1, 9);
    // From the fence that it hangs in, it leaves a few inches of the alley open at most, and never reaches the fence across.
    const tip = gate.swing.pin.x + Math.cos(open) * gate.swing.reach;
    const across = 130 + ((side === 'left' ? 1 : -1) * run.width) / 2;
    expect(Math.abs(across - tip)).toBeGreaterThan(0.5);
    expect(Math.abs(across - tip)).toBeLessThan(6);
    expect(face.spans.length).toBe(2);
  });

  it('have a pen of 20 ft at least along the alley, longer where the gate asks for it', () => {
    const length = (gate: number): number => runOf(laidOut(brief(pens(['left', gate]), 240)), 'sort-1').length;
    // 24 in of lead, then 20 ft, or 24 in on either side of the gate.
    expect([length(100), length(192), length(200)]).toEqual([264, 264, 24 + 248]);
  });
});
