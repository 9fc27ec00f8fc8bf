/**
 * What a rule keeps safe, the worst first: what to fix first follows from it. The places of the rules in it are common practice, no
 * source: a person before an animal, an animal before the steel, the steel before how smoothly the work goes.
 */
import { type RuleId } from './rules/table.ts';

export const DANGERS = ['person', 'animal', 'steel', 'flow', 'note'] as const;
export type Danger = (typeof DANGERS)[number];

export const dangers: Readonly<Record<RuleId, Danger>> = {
  // A person is caught, crushed, or falls.
  'man-gate': 'person',
  'lone-animal': 'person',
  'swing-foul': 'person',
  'man-pass': 'person',
  'rail-height': 'person',
  'rail-other-jurisdiction': 'person',
  'catwalk-guard': 'person',
  midrail: 'person',
  'toe-board': 'person',
  'rail-load': 'person',
  'catwalk-skin': 'person',
  'catwalk-width': 'person',
  'stair-rise': 'person',
  'hinge-load': 'person',
  'footing-load': 'person',
  'fence-height': 'person',
  'post-depth': 'person',
  'crowd-catwalk': 'person',
  // An animal slips, is caught, or turns back on those behind it.
  'load-ramp-slope': 'animal',
  'ramp-cleat-needed': 'animal',
  'ramp-step': 'animal',
  'ramp-cleat': 'animal',
  'solid-ramp': 'animal',
  'load-ramp-width': 'animal',
  'unload-dock': 'animal',
  'unload-width': 'animal',
  'dock-height': 'animal',
  'ground-fall': 'animal',
  'rail-gap': 'animal',
  'crowd-area': 'animal',
  'holding-area': 'animal',
  // It can't be built, or not where it belongs.
  'foul-fence': 'steel',
  'foul-path': 'steel',
  'foul-opening': 'steel',
  'foul-post': 'steel',
  'roll-limit': 'steel',
  'post-line-offset': 'steel',
  'junction-tangent': 'steel',
  'tie-angle': 'steel',
  'control-clear': 'steel',
  tenure: 'steel',
  // Cattle balk, or the work stands still.
  'see-ahead': 'flow',
  quiet: 'flow',
  'crowd-sweep': 'flow',
  'crowd-radius': 'flow',
  'funnel-angle': 'flow',
  'crowd-gate-rest': 'flow',
  'lead-length': 'flow',
  'squeeze-hidden': 'flow',
  'crew-hidden': 'flow',
  'single-turn': 'flow',
  'first-backstop': 'flow',
  'first-backstop-held': 'flow',
  'backstop-count': 'flow',
  'chute-width-600': 'flow',
  'chute-width-yearling': 'flow',
  'chute-width-mature': 'flow',
  'chute-width-large': 'flow',
  'chute-length': 'flow',
  'chute-inside-radius': 'flow',
  'solid-crowd': 'flow',
  'solid-outer': 'flow',
  'sort-gate': 'flow',
  'return-way': 'flow',
  'sun-glare': 'flow',
  'roof-see-through': 'flow',
  'roof-daylight': 'flow',
  // For the site.
  'night-light': 'note',
};

/** What a finding's rule keeps safe; a rule that is not in the table counts as the worst, so that nothing unknown sinks. */
export const dangerOf = (id: string): Danger => (Object.hasOwn(dangers, id) ? dangers[id as RuleId] : 'person');
