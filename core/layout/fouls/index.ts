/** What fouls what in a set-out: fence across fence, path across itself or a fence, posts too near, post lines that do not join. */
import { type Fence, type Foul, type Post, type Run } from '../types.ts';
import { fenceFouls } from './fence-fouls.ts';
import { foulList } from './foul-list.ts';
import { type Join } from './join.ts';
import { offsetFouls } from './offset-fouls.ts';
import { pathFouls } from './path-fouls.ts';
import { postFouls } from './post-fouls.ts';

export interface Ground {
  readonly runs: readonly Run[];
  readonly fences: readonly Fence[];
  readonly joins: readonly Join[];
  readonly posts: readonly Post[];
}

/** Every foul of a set-out; none where all stands clear. */
export function findFouls({ runs, fences, joins, posts }: Ground): readonly Foul[] {
  const crossed = foulList();
  pathFouls(runs, fences, crossed);
  fenceFouls(fences, joins, crossed);
  return [...crossed.list(), ...postFouls(posts), ...offsetFouls(joins)];
}
