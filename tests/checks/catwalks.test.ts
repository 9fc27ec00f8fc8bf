import { describe, expect, it } from 'vitest';
import { inches } from '../../core/base/quantity.ts';
import { type Brief, type CatwalkBrief, type FenceBrief } from '../../core/brief/types.ts';
import { railLoad } from '../../core/checks/strength/rail-load.ts';
import { fences, makeBrief, section } from '../support/brief-builder.ts';
import { findingOf, findingsOf, resultsOf } from './support/checked.ts';

const walk = (parts: Partial<CatwalkBrief> = {}): CatwalkBrief =>
  ({ run: 'chute', side: 'left', from: inches(0), to: inches(300), width: inches(20), deckHeight: null, path: 'catwalks[0]', ...parts });
const beside = (parts: Partial<CatwalkBrief>, fence: Partial<FenceBrief> = {}, rest: Partial<Brief> = {}): Brief =>
  ({ ...makeBrief({ fences: fences(fence) }), ...rest, catwalks: [walk(parts)] });
const site = (jurisdiction: Brief['site']['jurisdiction']): Partial<Brief> => ({ site: { ...makeBrief().site, jurisdiction } });
const mm = (value: number): ReturnType<typeof inches> => inches(value / 25.4);

describe('a catwalk', () => {
  // 29 CFR 1910.29(b)(1): 42 in, 3 more or less.
  it('has a rail 39 to 45 in over its deck', () => {
    const deck = (height: number): string => findingOf(beside({ deckHeight: inches(height) }), 'rail-height').result;
    expect([14.9, 15, 21, 21.1].map(deck)).toEqual(['fix', 'ok', 'ok', 'fix']);
    expect(findingOf(beside({}), 'rail-height').measured).toBe(42);
  });

  it('has the rail that another jurisdiction asks for, in millimeters', () => {
    const rail = (law: 'eu' | 'uk' | 'ontario', height: number): string =>
      findingOf(beside({ deckHeight: inches(60 - mm(height)) }, {}, site(law)), 'rail-other-jurisdiction').result;
    expect([rail('eu', 1099), rail('eu', 1100)]).toEqual(['fix', 'ok']);
    expect([rail('uk', 949), rail('uk', 950)]).toEqual(['fix', 'ok']);
    expect([909, 910, 1070, 1071].map((height) => rail('ontario', height))).toEqual(['fix', 'ok', 'ok', 'fix']);
  });

  it('18 to 24 in wide is as wide as it should be (from memory)', () => {
    expect([17.9, 18, 24, 24.1].map((width) => findingOf(beside({ width: inches(width) }), 'catwalk-width').result)).toEqual(['look', 'ok', 'ok', 'look']);
  });

  it('has the skin beside it 4 in over its deck (from memory)', () => {
    expect([21.9, 22].map((solidTo) => findingOf(beside({}, { solidTo: inches(solidTo) }), 'catwalk-skin').result)).toEqual(['fix', 'ok']);
    expect(findingOf(beside({}, { solidTo: inches(0) }), 'catwalk-skin')).toMatchObject({ result: 'fix', measured: -18 });
  });

  // 29 CFR 1910.28(b)(1): 48 in. Beside a fence of 90 in the deck stands at 48.
  it('48 in over the ground has a guard on every open edge, and a midrail half way up it', () => {
    const tall = { height: inches(96), solidTo: inches(96), rails: 8 };
    const low = beside({ deckHeight: inches(47.9) }, tall);
    const high = beside({ deckHeight: inches(48) }, tall);
    expect(findingOf(low, 'catwalk-guard').where).toMatch(/no guard/);
    expect(findingOf(high, 'catwalk-guard')).toMatchObject({ result: 'ok', measured: 48 });
    expect([findingsOf(low, 'midrail').length, findingsOf(high, 'midrail').length]).toEqual([1, 2]);
    expect(findingsOf(high, 'midrail')[1]).toMatchObject({ result: 'ok', measured: 0.5 });
    expect(findingOf(beside({ deckHeight: inches(20) }, {}, site('eu')), 'catwalk-guard').where).toMatch(/top rails/);
  });

  it('whose fence leaves an opening of over 19 in has no midrail', () => {
    // Rails of 2.375 in: the lower row at 12 in is under the deck of 18, the next at the top, 57.625 clear to it.
    expect(resultsOf(beside({}, { rails: 2, solidTo: inches(22) }), 'midrail')).toEqual(['fix']);
    expect(resultsOf(beside({}, { rails: 5, solidTo: inches(22) }), 'midrail')).toEqual(['ok']);
  });

  it('has toe boards of 4 in welded down, where the rule asks for 3.5 and a gap of 0.25 (29 CFR 1910.29(k)(1))', () => {
    expect(findingsOf(beside({}), 'toe-board').map(({ measured, limit, result }) => [measured, limit, result])).toEqual([[4, '>= 3.5', 'ok'], [0, '<= 0.25', 'ok']]);
  });

  it('has steps within the law, but not to a deck just over one riser', () => {
    expect(findingsOf(beside({}), 'stair-rise').map(({ measured, result }) => [Number(measured!.toFixed(2)), result])).toEqual([[9, 'ok'], [10, 'ok'], [41.99, 'ok']]);
    expect(resultsOf(beside({ deckHeight: inches(9.5) }), 'stair-rise')).toEqual(['ok']);
    // Two risers of 4.8 on treads of 9.5: 26.8 degrees. 30 degrees asks for risers of 5.485.
    expect(resultsOf(beside({ deckHeight: inches(9.6) }), 'stair-rise')).toEqual(['ok', 'ok', 'fix']);
    expect(resultsOf(beside({ deckHeight: inches(10.97) }), 'stair-rise')).toEqual(['ok', 'ok', 'ok']);
  });

  it('goes round the crowd pen only where its decks do (common practice, no source)', () => {
    expect(findingOf(beside({}), 'crowd-catwalk').result).toBe('look');
    expect(findingOf(beside({ run: 'crowd-pen', side: 'right', to: null }), 'crowd-catwalk').result).toBe('ok');
    expect(findingOf(beside({ run: 'crowd-pen', side: 'right', from: inches(23), to: null }), 'crowd-catwalk').result).toBe('look');
  });

  it('that stands across a man gate leaves no way out there', () => {
    const gate = { kind: 'man-gate', run: 'chute-1', side: 'left', at: inches(60), width: inches(14), path: 'openings[0]' } as const;
    const told = (height: number, side: 'left' | 'right'): boolean =>
      findingsOf(beside({ deckHeight: inches(height), side }, {}, { openings: [gate] }), 'swing-foul').some(({ where, result }) => result === 'fix' && where.includes('no way out'));
    expect([told(9.5, 'left'), told(18, 'left'), told(18, 'right')]).toEqual([false, true, false]);
  });
});

describe('a top rail under 200 lb', () => {
  // Section moduli of ASME B36.10M pipe as handbooks print them (second): NPS 2 0.561, 2 1/2 1.064, 3 1.724 in³. M = 200·96/4 = 4800 in-lb.
  it.each([['pipe 2 sch 40', 0.561], ['pipe 2 1/2 sch 40', 1.064], ['pipe 3 sch 40', 1.724]])('of %s bends as the handbook says', (name, modulus) => {
    expect(railLoad(section(name), 96).stress).toBeCloseTo(4800 / modulus / 35_000, 3);
  });

  it('keeps 39 in of height, just and not', () => {
    // NPS 2: I = 0.561·2.375/2 = 0.666 in⁴; PL³/48EI over 96 in = 200·96³/(48·29e6·0.666) = 0.191 in.
    expect(railLoad(section('pipe 2 sch 40'), 96).sag).toBeCloseTo(0.191, 2);
    const kept = (height: number): string => findingsOf(beside({ deckHeight: inches(60 - height) }), 'rail-load')[1]!.result;
    expect([kept(39), kept(39.2)]).toEqual(['fix', 'ok']);
    const thin = { rail: section('pipe 1 sch 40'), postSpacing: inches(144) };
    expect(findingsOf(beside({ run: 'alley-1', to: null }, thin), 'rail-load')[0]!.result).toBe('fix');
  });
});
