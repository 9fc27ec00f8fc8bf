import { inches } from '../../base/quantity.ts';
import { DEFAULTS } from '../defaults.ts';
import { type Judged } from '../judged.ts';
import { type Path } from '../path-fault.ts';
import { type FenceBrief } from '../types.ts';
import { type SteelLookup } from './steel.ts';

type Settings = Omit<FenceBrief, 'path' | 'postSpacingPath'>;
/** A setting with the group that says it; `isDefault` where none does. */
export interface Said<T> {
  readonly value: T;
  readonly scope: Path;
  readonly isDefault: boolean;
}
/** A fence's settings as far as they are known: undefined where what the file says is faulty. */
export type FenceDraft = { readonly [Key in keyof Settings]: Said<Settings[Key]> | undefined } & {
  /** The groups that it takes its settings from, its own first. */
  readonly scopes: readonly Path[];
};

const CROWD_PEN: Path = ['fences', 'crowdPen'];

type Group = Readonly<Record<string, unknown>>;
const groupAt = (judged: Judged, scope: Path): Group | undefined =>
  scope.reduce<unknown>((value, step) => (value === undefined ? undefined : (value as Group)[String(step)]), judged.file) as Group | undefined;

/** The groups around a fence that the file has, the nearest first; the crowd pen's is always one. */
export function fenceScopes(judged: Judged, place: string, side: string | null): readonly Path[] {
  if (place === 'crowdPen' || side === null) return [CROWD_PEN];
  const around: readonly Path[] = [['fences', place, side], ['fences', place]];
  return [...around.filter((scope) => groupAt(judged, scope) !== undefined || judged.isFaulty(scope)), CROWD_PEN];
}

/**
 * A fence's settings: each from the nearest group around it that says it; where none does, the default, which belongs to the crowd
 * pen's fence. A `solidTo` that no group says is the fence's own height.
 */
export function draftFence(judged: Judged, steel: SteelLookup, scopes: readonly Path[]): FenceDraft {
  function find<T>(key: keyof Settings, fallback: T | undefined): Said<T> | undefined {
    for (const scope of scopes) {
      const value = groupAt(judged, scope)?.[key];
      // A faulty value was taken out of the file: what stands further out must not be taken for it.
      if (judged.isFaulty([...scope, key])) return undefined;
      if (value !== undefined) return { value: value as T, scope, isDefault: false };
    }
    return fallback === undefined ? undefined : { value: fallback, scope: CROWD_PEN, isDefault: true };
  }
  function look<T>(key: 'rail' | 'post' | 'sheet', said: Said<string> | undefined, parse: (path: Path, name: string) => T | null): Said<T> | undefined {
    if (said === undefined) return undefined;
    const value = parse([...said.scope, key], said.value);
    return value === null ? undefined : { ...said, value };
  }
  const { height, solidFrom, construction, rails, bottomRail, postSpacing, sheet } = DEFAULTS.fence;
  const sheetName = find<string | null>('sheet', sheet);
  const ownHeight = find('height', inches(height));
  return {
    scopes,
    height: ownHeight,
    solidFrom: find('solidFrom', inches(solidFrom)),
    solidTo: find('solidTo', ownHeight?.value),
    construction: find<FenceBrief['construction']>('construction', construction),
    rails: find<number>('rails', rails),
    bottomRail: find('bottomRail', inches(bottomRail)),
    rail: look('rail', find<string>('rail', undefined), steel.section),
    post: look('post', find<string>('post', undefined), steel.section),
    postSpacing: find('postSpacing', inches(postSpacing)),
    sheet: sheetName?.value === null ? { ...sheetName, value: null } : look('sheet', sheetName as Said<string> | undefined, steel.sheet),
  };
}
