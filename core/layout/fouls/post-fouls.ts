import { distance, planPoint } from '../../base/points.ts';
import { SAME_LENGTH } from '../../base/tolerance.ts';
import { type Foul, type Post } from '../types.ts';

/** Clear space that two posts keep between them, inches (geometry contract). */
const CLEAR = 0.5;

/**
 * Posts that are not one and whose centers are nearer than their mean size and 1/2 in. Posts are sorted into squares as large as the
 * greatest such distance, so that each is held only against its neighbors.
 */
export function postFouls(posts: readonly Post[]): readonly Foul[] {
  const cell = Math.max(...posts.map((post) => post.section.across)) + CLEAR;
  const cells = new Map<string, Post[]>();
  const fouls: Foul[] = [];
  for (const post of posts) {
    const cx = Math.floor(post.at.x / cell);
    const cy = Math.floor(post.at.y / cell);
    for (let x = cx - 1; x <= cx + 1; x++) {
      for (let y = cy - 1; y <= cy + 1; y++) {
        for (const other of cells.get(`${String(x)} ${String(y)}`) ?? []) {
          const near = (post.section.across + other.section.across) / 2 + CLEAR - distance(post.at, other.at);
          if (near > SAME_LENGTH) fouls.push(foulOf(other, post, near));
        }
      }
    }
    const key = `${String(cx)} ${String(cy)}`;
    const here = cells.get(key);
    if (here === undefined) cells.set(key, [post]);
    else here.push(post);
  }
  return fouls;
}

function foulOf(first: Post, second: Post, near: number): Foul {
  const at = planPoint((first.at.x + second.at.x) / 2, (first.at.y + second.at.y) / 2);
  return { kind: 'foul-post', at, measured: near, runs: [first.run, second.run] };
}
