import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { degrees, inches, pounds } from '../../core/base/quantity.ts';
import { type Brief } from '../../core/brief/types.ts';
import { ruleIds, rules, type RuleId } from '../../core/checks/index.ts';
import { arc, fences, makeBrief, straight } from '../support/brief-builder.ts';
import { findingsOf } from './support/checked.ts';

/**
 * How each rule is proven: by a brief that just meets it and one that just does not, here or in a test file of its subject; or, for one
 * that only reports, by what it reports.
 */
type Proof =
  | { readonly just: readonly [met: () => Brief, missed: () => Brief] }
  | { readonly file: string };

const chute = (width: number, ...runs: Brief['chute']['runs']): Partial<Brief> => ({ chute: { width: inches(width), runs } });
const pen = (parts: Partial<Brief['crowdPen']>) => (): Brief => makeBrief({ crowdPen: parts });
const run = (...runs: Brief['chute']['runs']) => (): Brief => makeBrief(chute(28, ...runs));
const cattle = (weight: number, kind: Brief['cattle']['kind']): Partial<Brief> => ({ cattle: { ...makeBrief().cattle, weight: pounds(weight), kind } });
const wide = (weight: number, kind: Brief['cattle']['kind'], width: number) => (): Brief => makeBrief({ ...cattle(weight, kind), ...chute(width, straight(240)) });
const tall = (height: number) => (): Brief => makeBrief({ fences: fences({ height: inches(height), solidTo: inches(height) }) });
const deep = (depth: number) => (): Brief => makeBrief({ footings: { diameter: inches(12), depth: inches(depth) } });
const owned = (tenure: 'owned' | 'leased') => (): Brief => ({ ...makeBrief(), site: { ...makeBrief().site, tenure } });
const here = (met: () => Brief, missed: () => Brief): Proof => ({ just: [met, missed] });
const at = (file: string): Proof => ({ file: `tests/checks/${file}.test.ts` });

const proofs: Readonly<Record<RuleId, Proof>> = {
  'crowd-sweep': here(pen({ sweep: degrees(180) }), pen({ sweep: degrees(179.9) })),
  'crowd-radius': here(pen({ radius: inches(144) }), pen({ radius: inches(144.1) })),
  'junction-tangent': at('junction-kink'),
  'funnel-angle': here(pen({ funnelAngle: degrees(40) }), pen({ funnelAngle: degrees(40.1) })),
  'crowd-gate-rest': at('gates'),
  'lead-length': here(run(straight(120), arc(192, 90, 'right')), run(straight(119.9), arc(192, 90, 'right'))),
  // Closed form of the geometry: 192 in inside, 28 wide, after 120 in 218.435 in are seen, which is two bodies of 109.2 and not of 109.3 in.
  'see-ahead': here(
    () => makeBrief({ ...chute(28, straight(120), arc(192, 90, 'right'), straight(72)), cattle: { ...makeBrief().cattle, bodyLength: inches(109.2) } }),
    () => makeBrief({ ...chute(28, straight(120), arc(192, 90, 'right'), straight(72)), cattle: { ...makeBrief().cattle, bodyLength: inches(109.3) } }),
  ),
  'squeeze-hidden': at('hidden'),
  'crew-hidden': at('hidden'),
  'single-turn': here(run(straight(120), arc(192, 45, 'right'), arc(192, 45, 'left')), run(straight(120), arc(192, 30, 'right'), arc(192, 30, 'left'), arc(192, 30, 'right'))),
  'first-backstop': at('openings'),
  'first-backstop-held': at('openings'),
  'backstop-count': at('openings'),
  quiet: at('gates'),
  'chute-width-600': here(wide(500, 'calf', 20), wide(500, 'calf', 20.1)),
  'chute-width-yearling': here(wide(700, 'yearling', 24), wide(700, 'yearling', 24.1)),
  'chute-width-mature': here(wide(1100, 'mature', 28), wide(1100, 'mature', 28.1)),
  'chute-width-large': at('chute'),
  'chute-length': here(run(straight(240)), run(straight(239.9))),
  'chute-inside-radius': here(run(straight(120), arc(144, 90, 'right')), run(straight(120), arc(143.9, 90, 'right'))),
  'holding-area': at('pens'),
  'crowd-area': at('crowd-pen'),
  'fence-height': here(tall(60), tall(59.9)),
  'post-depth': here(deep(36), deep(35.9)),
  'solid-crowd': at('fences'),
  'solid-outer': at('fences'),
  'solid-ramp': at('ramps'),
  'rail-gap': at('fences'),
  'rail-height': at('catwalks'),
  'rail-other-jurisdiction': at('catwalks'),
  'crowd-catwalk': at('crowd-pen'),
  'catwalk-guard': at('ramps'),
  midrail: at('catwalks'),
  'toe-board': at('catwalks'),
  'rail-load': at('catwalks'),
  'catwalk-skin': at('catwalks'),
  'catwalk-width': at('catwalks'),
  'man-gate': at('openings'),
  'man-pass': at('openings'),
  'lone-animal': at('openings'),
  'stair-rise': at('catwalks'),
  'sort-gate': at('yard'),
  'return-way': at('return-way'),
  'swing-foul': at('gates'),
  'load-ramp-width': at('ramps'),
  'load-ramp-slope': at('ramps'),
  'ramp-cleat-needed': at('ramps'),
  'ramp-step': at('ramps'),
  'ramp-cleat': at('ramps'),
  'dock-height': at('ramps'),
  'unload-dock': at('ramps'),
  'unload-width': at('ramps'),
  'sun-glare': at('sun/glare'),
  'roof-see-through': at('yard'),
  'roof-daylight': at('yard'),
  'night-light': at('site'),
  tenure: here(owned('owned'), owned('leased')),
  'ground-fall': at('crowd-pen'),
  'foul-fence': at('fouls'),
  'foul-path': at('fouls'),
  'foul-opening': at('openings'),
  'foul-post': at('fouls'),
  'post-line-offset': at('fences'),
  'roll-limit': at('shop'),
  'tie-angle': at('stakeout'),
  'control-clear': at('stakeout'),
  'hinge-load': at('gates'),
  'footing-load': at('footing'),
};

const own = ruleIds.flatMap((id) => { const proof = proofs[id]; return 'just' in proof ? [[id, proof.just] as const] : []; });
const elsewhere = ruleIds.flatMap((id) => { const proof = proofs[id]; return 'file' in proof ? [[id, proof.file] as const] : []; });

describe('every rule is proven', () => {
  it('in one way each, none left out', () => {
    expect(Object.keys(proofs)).toEqual([...ruleIds]);
  });

  // Limits that are common practice, no source, or from memory, no source, are proven only to be kept as they were agreed.
  it.each(own)('%s: a brief that just meets it and one that just does not', (id, [met, missed]) => {
    expect(findingsOf(met(), id).map(({ result }) => result)).not.toContain(rules[id].failsAs);
    expect(findingsOf(met(), id).every(({ result }) => result === 'ok')).toBe(true);
    expect(findingsOf(missed(), id).map(({ result }) => result)).toContain(rules[id].failsAs);
  });

  it.each(elsewhere)('%s: in %s, which says so where it has no source', (id, file) => {
    const path = new URL(`../../${file}`, import.meta.url);
    expect(existsSync(path), file).toBe(true);
    const text = readFileSync(path, 'utf8');
    expect(text).toMatch(new RegExp(`['"\`]${id}['"\`]|['"\`]${id.replace(/-/g, '.')}['"\`]`));
    if (rules[id].trust.startsWith('practice')) expect(text).toContain('common practice, no source');
    if (rules[id].trust === 'memory') expect(text).toMatch(/from memory/);
  });
});
