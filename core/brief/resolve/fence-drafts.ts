import { type Judged } from '../judged.ts';
import { type ProjectFile } from '../schema/project.ts';
import { type FenceBrief, type FencesBrief, type Side } from '../types.ts';
import { pathText } from '../path-fault.ts';
import { draftFence, fenceScopes, type FenceDraft } from './fence-draft.ts';
import { type SteelLookup } from './steel.ts';

const SIDED = ['alley', 'junction', 'chute', 'ramp', 'pad', 'pens'] as const;
type Sided = (typeof SIDED)[number];

export type FenceDrafts = { readonly crowdPen: FenceDraft } & Readonly<Record<Sided, Readonly<Record<Side, FenceDraft>>>>;

/** Every fence that a project can have, the later ones' settings too. */
export function draftFences(judged: Judged, steel: SteelLookup): FenceDrafts {
  const draft = (place: string, side: Side | null): FenceDraft => draftFence(judged, steel, fenceScopes(judged, place, side));
  const pair = (place: Sided): Record<Side, FenceDraft> => ({ left: draft(place, 'left'), right: draft(place, 'right') });
  return {
    crowdPen: draft('crowdPen', null),
    alley: pair('alley'),
    junction: pair('junction'),
    chute: pair('chute'),
    ramp: pair('ramp'),
    pad: pair('pad'),
    pens: pair('pens'),
  };
}

export const eachDraft = (drafts: FenceDrafts): readonly FenceDraft[] =>
  [drafts.crowdPen, ...SIDED.flatMap((place) => [drafts[place].left, drafts[place].right])];

/** The drafts of the fences that are built for a project. */
export function builtDrafts(drafts: FenceDrafts, file: ProjectFile): readonly FenceDraft[] {
  const places: Sided[] = ['alley', 'junction', 'chute'];
  if ((file.ramps ?? []).length > 0) places.push('ramp');
  if (file.squeezePad !== undefined) places.push('pad');
  if ((file.sortPens ?? []).length > 0 || (file.holdingPens ?? []).length > 0 || file.returnAlley !== undefined) places.push('pens');
  return [drafts.crowdPen, ...places.flatMap((place) => [drafts[place].left, drafts[place].right])];
}

function finished(draft: FenceDraft): FenceBrief {
  const { height, solidFrom, solidTo, construction, rails, bottomRail, rail, post, postSpacing, sheet } = draft;
  const path = pathText(draft.scopes[0] ?? []);
  if (!height || !solidFrom || !solidTo || !construction || !rails || !bottomRail || !rail || !post || !postSpacing || !sheet) {
    throw new Error(`a setting of ${path} is unknown though no fault was told`);
  }
  return {
    height: height.value, solidFrom: solidFrom.value, solidTo: solidTo.value, construction: construction.value, rails: rails.value,
    bottomRail: bottomRail.value, rail: rail.value, post: post.value, postSpacing: postSpacing.value,
    postSpacingPath: pathText([...postSpacing.scope, 'postSpacing']), sheet: sheet.value, path,
  };
}

/** The fences of this version, complete. Throws where a setting is unknown: the faults come first. */
export function finishFences(drafts: FenceDrafts): FencesBrief {
  const pair = (place: Sided): Record<Side, FenceBrief> =>
    ({ left: finished(drafts[place].left), right: finished(drafts[place].right) });
  return {
    crowdPen: finished(drafts.crowdPen), alley: pair('alley'), junction: pair('junction'), chute: pair('chute'), ramp: pair('ramp'),
    pad: pair('pad'), pens: pair('pens'),
  };
}
