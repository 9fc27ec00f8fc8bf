/** All that the live plan shows, contributor by contributor; what is built later adds its own here. */
import { type Contributor, type Scene, type Show } from './show.ts';
import { marks } from './marks.ts';
import { sights } from './sights.ts';
import { sizes } from './sizes.ts';
import { steel } from './steel.ts';
import { words } from './words.ts';

const CONTRIBUTORS: readonly Contributor[] = [steel, sights, sizes, words, marks];

export function showAll(scene: Scene): Show {
  const shows = CONTRIBUTORS.map((contribute) => contribute(scene));
  return {
    steel: shows.flatMap((show) => show.steel ?? []),
    lines: shows.flatMap((show) => show.lines ?? []),
    sizes: shows.flatMap((show) => show.sizes ?? []),
    words: shows.flatMap((show) => show.words ?? []),
  };
}
