/** What cannot be in one fence at once. Each rule is held where all that it needs is known, and told at the nearest group that says any of it. */
import { type Inches } from '../../base/quantity.ts';
import { SAME_LENGTH } from '../../base/tolerance.ts';
import { printLength } from '../../units/index.ts';
import { type Judged } from '../judged.ts';
import { pathText, type Path } from '../path-fault.ts';
import { railRows } from '../rail-rows.ts';
import { type FenceDraft, type Said } from '../resolve/fence-draft.ts';

/** The crowd pen's group stands around all others, a place's around its sides. */
const depth = (scope: Path): number => (scope[1] === 'crowdPen' ? 0 : scope.length);

/** The innermost of the groups that say something. */
const nearest = (...said: readonly Said<unknown>[]): Path =>
  said.reduce<Path>((scope, entry) => (depth(entry.scope) > depth(scope) ? entry.scope : scope), ['fences', 'crowdPen']);

export function holdFence(judged: Judged, draft: FenceDraft): void {
  const units = judged.file.units ?? 'in';
  const print = (length: number): string => printLength(length as Inches, units);
  holdSolid(judged, draft, print);
  holdRows(judged, draft, print);
  holdCopes(judged, draft);
}

type Print = (length: number) => string;

function holdSolid(judged: Judged, { height, solidTo, solidFrom }: FenceDraft, print: Print): void {
  if (height && solidTo && solidTo.value > height.value) {
    judged.report([...nearest(height, solidTo), 'solidTo'], 'fault.solid-over-height', {
      solidTo: print(solidTo.value), height: print(height.value), source: pathText([...solidTo.scope, 'solidTo']),
    });
  }
  if (solidFrom && solidTo && solidTo.value > 0 && solidTo.value <= solidFrom.value) {
    judged.report([...nearest(solidFrom, solidTo), 'solidTo'], 'fault.solid-empty', { solidFrom: print(solidFrom.value), solidTo: print(solidTo.value) });
  }
}

function holdRows(judged: Judged, { height, solidTo, rails, bottomRail, rail, sheet }: FenceDraft, print: Print): void {
  if (!height || !rails || !bottomRail || !rail || !solidTo || !sheet) return;
  const size = rail.value.along;
  const top = height.value - size / 2;
  if (bottomRail.value > top) {
    judged.report([...nearest(height, bottomRail, rail), 'bottomRail'], 'fault.rail-order', { bottom: print(bottomRail.value), top: print(top) });
    return;
  }
  const rows = railRows({ height: height.value, solidTo: solidTo.value, rails: rails.value, bottomRail: bottomRail.value, rail: rail.value, sheet: sheet.value })
    .toSorted((a, b) => a - b);
  const apart = Math.min(...rows.slice(1).map((row, below) => row - (rows[below] ?? NaN)));
  const scope = nearest(height, solidTo, rails, bottomRail, rail, sheet);
  if (apart < size - SAME_LENGTH) judged.report([...scope, 'rails'], 'fault.rails-close', { apart: print(apart), least: print(size) });
  const [lowest = NaN] = rows;
  if (lowest < size / 2 - SAME_LENGTH) judged.report([...scope, 'bottomRail'], 'fault.rail-ground', { bottom: print(lowest), least: print(size / 2) });
}

function holdCopes(judged: Judged, { construction, rail, post }: FenceDraft): void {
  if (construction?.value !== 'coped') return;
  if (rail && rail.value.shape !== 'round') judged.report([...nearest(construction, rail), 'rail'], 'fault.cope-round', { name: rail.value.name });
  if (post && post.value.shape !== 'round') judged.report([...nearest(construction, post), 'post'], 'fault.cope-round', { name: post.value.name });
  if (rail?.value.shape === 'round' && post?.value.shape === 'round' && rail.value.across >= post.value.across) {
    judged.report([...nearest(construction, rail, post), 'rail'], 'fault.rail-thick', { rail: rail.value.name, post: post.value.name });
  }
}
