/** Rules about catwalks where the deck follows a ramp, just met and just missed. */
import { describe, expect, it } from 'vitest';
import { degrees, inches } from '../../core/base/quantity.ts';
import { type Brief, type CatwalkBrief, type FenceBrief, type RampBrief } from '../../core/brief/types.ts';
import { LOAD, UNLOAD, withRamp } from '../support/ramp-briefs.ts';
import { findingOf, findingsOf, resultsOf } from './support/checked.ts';

const beside = (ramp: RampBrief, parts: Partial<CatwalkBrief> = {}, fence: Partial<FenceBrief> = {}): Brief => ({
  ...withRamp(ramp, fence),
  catwalks: [{ run: ramp.name, side: 'left', from: inches(0), to: null, width: inches(20), deckHeight: null, path: 'catwalks[0]', ...parts }],
});
const cleated = (slope: number): RampBrief => ({ ...UNLOAD, surface: { kind: 'cleated', slope: degrees(slope), cleat: inches(2) } });

describe('a catwalk beside a ramp', () => {
  // 29 CFR 1910.29(b)(1), second: 42 in, 3 more or less, plumb from the deck; deck and rail slope alike.
  it('has a rail 39 to 45 in over its deck', () => {
    expect([14.9, 15, 21, 21.1].map((deckHeight) => findingOf(beside(LOAD, { deckHeight: inches(deckHeight) }), 'rail-height').result)).toEqual(['fix', 'ok', 'ok', 'fix']);
    expect(findingOf(beside(LOAD), 'rail-height').where).toBe('catwalks[0]: deck 1\'-6" over what the fence of load-1 follows, 1\'-9 7/16" to 5\'-6" over the ground; the fence beside it 3\'-6" over the deck');
  });

  // 29 CFR 1910.28(b)(1), second: from 48 in. The dock of 30 in brings the deck there.
  it('48 in over the ground at its highest has a guard on every open edge, none where its steps go on', () => {
    const dock = (height: number): readonly string[] => findingsOf(beside({ ...LOAD, dockHeight: inches(height) }), 'catwalk-guard').map(({ where }) => where);
    expect(dock(29.9).at(-1)).toMatch(/no guard/);
    expect(dock(30).at(-1)).toMatch(/4 top rails 3'-6" over it on 4 open edges/);
    expect(findingsOf(beside(LOAD), 'catwalk-guard').at(-1)).toMatchObject({ result: 'ok', measured: 66 });
  });

  it('has its midrail halfway, and toe boards without a gap, on the slope too', () => {
    expect(findingsOf(beside(LOAD), 'midrail').map(({ measured, result }) => [result, Number(measured!.toFixed(9))]).at(-1)).toEqual(['ok', 0.5]);
    expect(findingsOf(beside(LOAD), 'toe-board').map(({ measured, result }) => [measured, result])).toEqual([[4, 'ok'], [0, 'ok']]);
  });

  // 20 degrees for a sloping walk: 29 CFR 1926.451(e)(5), from memory.
  it('slopes no more than a walk without steps may, and is asked for both of its flights', () => {
    const slope = (angle: number) => findingsOf(beside(cleated(angle)), 'stair-rise').at(-1)!;
    expect([slope(20), slope(20.1)].map(({ result, limit, measured }) => [result, limit, Number(measured!.toFixed(6))])).toEqual([['ok', '<= 20', 20], ['fix', '<= 20', 20.1]]);
    expect(resultsOf(beside(LOAD), 'stair-rise')).toEqual(['ok', 'ok', 'ok', 'ok', 'ok', 'ok', 'ok']);
  });

  it('has the skin of its fence 4 in over its deck (from memory)', () => {
    expect([21.9, 22].map((solidTo) => findingOf(beside(UNLOAD, {}, { solidTo: inches(solidTo) }), 'catwalk-skin').result)).toEqual(['fix', 'ok']);
  });

  it('bears the rail over bays measured along the slope', () => {
    // Two bays of 91 in, level, at 13.76°: 93.69 along it; 200 lb in the middle of a span, PL/4 over a modulus of 0.561 in³ (NPS 2, handbooks, second) and 35 ksi (from memory).
    const [stress] = findingsOf(beside(LOAD), 'rail-load');
    expect(stress!.measured).toBeCloseTo((200 * Math.hypot(91, 91 * (48 / 14 / 14))) / 4 / 0.561 / 35_000, 3);
  });

  it('that stands across the man gate of its dock leaves no way out there, level with the dock it does', () => {
    const gate = { kind: 'man-gate', run: 'load-1', side: 'left', at: inches(200), width: inches(14), path: 'openings[0]' } as const;
    const told = (deckHeight: number, side: 'left' | 'right'): boolean =>
      findingsOf({ ...beside(LOAD, { deckHeight: inches(deckHeight), side }), openings: [gate] }, 'swing-foul').some(({ where, result }) => result === 'fix' && where.includes('no way out'));
    expect([told(9.5, 'left'), told(18, 'left'), told(18, 'right')]).toEqual([false, true, false]);
  });
});
