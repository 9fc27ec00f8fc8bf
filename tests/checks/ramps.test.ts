/** Each rule about ramps and docks, just met and just missed. Limits are those of the rules' table, its sources named there. */
import { describe, expect, it } from 'vitest';
import { degrees, inches } from '../../core/base/quantity.ts';
import { type Brief, type FenceBrief, type RampBrief } from '../../core/brief/types.ts';
import { type RuleId } from '../../core/checks/index.ts';
import { makeBrief } from '../support/brief-builder.ts';
import { LOAD, UNLOAD, withRamp } from '../support/ramp-briefs.ts';
import { findingsOf } from './support/checked.ts';

const results = (brief: Brief, id: RuleId): readonly string[] => findingsOf(brief, id).map(({ result }) => result);
const load = (parts: Partial<RampBrief>, own: Partial<FenceBrief> = {}): Brief => withRamp({ ...LOAD, ...parts }, own);
const unload = (parts: Partial<RampBrief>): Brief => withRamp({ ...UNLOAD, ...parts });
const cleated = (slope: number, cleat = 2): Partial<RampBrief> => ({ surface: { kind: 'cleated', slope: degrees(slope), cleat: inches(cleat) } });
const stepped = (tread: number): Partial<RampBrief> => ({ surface: { kind: 'stepped', tread: inches(tread) } });
const at = (volume: Brief['site']['volume'], brief: Brief): Brief => ({ ...brief, site: { ...brief.site, volume } });

const cases: readonly (readonly [string, RuleId, Brief, readonly string[]])[] = [
  ['a loading ramp 31 in wide', 'load-ramp-width', load({ width: inches(31) }), ['ok']],
  ['a loading ramp 29 in wide', 'load-ramp-width', load({ width: inches(29) }), ['ok']],
  ['a loading ramp 31 1/16 in wide', 'load-ramp-width', load({ width: inches(31.0625) }), ['fix']],
  ['a loading ramp 28 15/16 in wide', 'load-ramp-width', load({ width: inches(28.9375) }), ['fix']],
  ['an unloading ramp alone', 'load-ramp-width', unload({}), ['ok']],
  ['a ramp at 20°', 'load-ramp-slope', unload(cleated(20)), ['ok']],
  ['a ramp at 20.1°', 'load-ramp-slope', unload(cleated(20.1)), ['fix']],
  // atan(3.5 / 10) = 19.3°, atan(3.4286 / 10) = 18.9°: no stepped ramp in range is too steep.
  ['a stepped ramp with the shortest treads', 'load-ramp-slope', load({ ...stepped(10), dockHeight: inches(49) }), ['ok']],
  ['a steep ramp with one cleat', 'ramp-cleat-needed', unload({ ...cleated(35, 2), dockHeight: inches(6) }), ['ok']],
  ['a steep ramp too short for a whole cleat', 'ramp-cleat-needed', unload({ ...cleated(35, 6), dockHeight: inches(6) }), ['fix']],
  ['a stepped ramp', 'ramp-cleat-needed', load({}), ['ok']],
  ['treads of 12 in', 'ramp-step', load(stepped(12)), ['ok', 'ok']],
  ['treads of 18 in', 'ramp-step', load(stepped(18)), ['ok', 'ok']],
  ['treads of 11 15/16 in', 'ramp-step', load(stepped(11.9375)), ['ok', 'fix']],
  ['treads of 18 1/16 in', 'ramp-step', load(stepped(18.0625)), ['ok', 'fix']],
  ['risers of 3 1/2 in', 'ramp-step', load({ dockHeight: inches(49) }), ['ok', 'ok']],
  ['cleats of 2 1/2 in', 'ramp-cleat', unload(cleated(20, 2.5)), ['ok', 'ok']],
  ['cleats of 1 1/2 in', 'ramp-cleat', unload(cleated(20, 1.5)), ['ok', 'ok']],
  ['cleats of 2 9/16 in', 'ramp-cleat', unload(cleated(20, 2.5625)), ['ok', 'look']],
  ['cleats of 1 7/16 in', 'ramp-cleat', unload(cleated(20, 1.4375)), ['ok', 'look']],
  ['a dock of 51 in', 'dock-height', load({ dockHeight: inches(51) }), ['ok']],
  ['a dock of 45 in', 'dock-height', load({ dockHeight: inches(45) }), ['ok']],
  ['a dock of 18 in', 'dock-height', load({ dockHeight: inches(18) }), ['ok']],
  ['a dock of 12 in', 'dock-height', load({ dockHeight: inches(12) }), ['ok']],
  ['a dock of 51 1/16 in', 'dock-height', load({ dockHeight: inches(51.0625) }), ['look']],
  ['a dock of 44 15/16 in', 'dock-height', load({ dockHeight: inches(44.9375) }), ['look']],
  ['a dock of 18 1/16 in', 'dock-height', load({ dockHeight: inches(18.0625) }), ['look']],
  ['a dock of 11 15/16 in', 'dock-height', load({ dockHeight: inches(11.9375) }), ['look']],
  ['a level dock of 10 ft on a ranch', 'unload-dock', at('ranch', unload({ dockLength: inches(120) })), ['ok']],
  ['a level dock of 9 ft 11 15/16 in on a ranch', 'unload-dock', at('ranch', unload({ dockLength: inches(119.9375) })), ['fix']],
  ['a level dock of 20 ft at an auction', 'unload-dock', at('auction', unload({ dockLength: inches(240) })), ['ok']],
  ['a level dock of 19 ft 11 15/16 in at an auction', 'unload-dock', at('auction', unload({ dockLength: inches(239.9375) })), ['fix']],
  ['a level dock of 20 ft, the volume unset', 'unload-dock', unload({ dockLength: inches(240) }), ['ok']],
  ['a level dock of 12 ft, the volume unset', 'unload-dock', unload({ dockLength: inches(144) }), ['look']],
  ['a level dock of 9 ft, the volume unset', 'unload-dock', unload({ dockLength: inches(108) }), ['fix']],
  ['a loading ramp with a short dock', 'unload-dock', load({ dockLength: inches(0) }), ['ok']],
  ['an unloading ramp 10 ft wide', 'unload-width', unload({ width: inches(120) }), ['ok']],
  ['an unloading ramp 9 ft 11 15/16 in wide', 'unload-width', unload({ width: inches(119.9375) }), ['look']],
  ['a loading ramp closed to the top', 'solid-ramp', load({}), ['ok']],
  // As near under the top as a row may stand below the top rail.
  ['a loading ramp closed to 56 1/4 in of 60', 'solid-ramp', load({}, { solidTo: inches(56.25) }), ['fix']],
  ['a loading ramp without sheet', 'solid-ramp', load({}, { sheet: null }), ['fix']],
  ['an open unloading ramp', 'solid-ramp', withRamp(UNLOAD, { solidTo: inches(0) }), ['ok']],
  // 29 CFR 1910.28(b)(1) as the rules' table has it: from 48 in the edge is guarded; the open end is for a person to look at.
  ['a dock of 47 15/16 in', 'catwalk-guard', load({ dockHeight: inches(47.9375) }), ['ok']],
  ['a dock of 48 in between fences of 39 in', 'catwalk-guard', load({}, { height: inches(39), solidTo: inches(39), rails: 3 }), ['ok', 'look']],
  ['a dock of 48 in between fences of 38 15/16 in', 'catwalk-guard', load({}, { height: inches(38.9375), solidTo: inches(38.9375), rails: 3 }), ['fix', 'look']],
];

describe('rules about ramps (their widths, steps, cleats, sides and docks: common practice, no source; slopes and dock heights: read)', () => {
  it.each(cases)('%s: %s', (_, id, brief, expected) => {
    expect(results(brief, id)).toEqual(expected);
  });

  it('have no subject where there is no ramp', () => {
    for (const id of ['solid-ramp', 'load-ramp-width', 'load-ramp-slope', 'ramp-cleat-needed', 'ramp-step', 'ramp-cleat', 'dock-height', 'unload-dock', 'unload-width'] as const) {
      expect(findingsOf(makeBrief(), id)).toMatchObject([{ result: 'ok', measured: null, where: 'none in this project' }]);
    }
  });

  it('measure in the rule\'s own unit and name the ramp', () => {
    const [slope] = findingsOf(unload({}), 'load-ramp-slope');
    expect(slope!.measured).toBeCloseTo(20, 9);
    expect(slope!.where).toContain('unload-1');
    const [riser, tread] = findingsOf(load({}), 'ramp-step');
    expect(riser).toMatchObject({ limit: '<= 3.5' });
    expect(riser!.measured).toBeCloseTo(3.4286, 4);
    expect(tread).toMatchObject({ limit: '12 to 18', measured: 14 });
  });
});
