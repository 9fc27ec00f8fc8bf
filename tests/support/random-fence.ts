import { type Draw } from './draw.ts';

/** Sections with the outside sizes that the tests reckon with (ASME B36.10M, API 5CT; tubes by their names). Inches. */
export const RAILS = [
  ['pipe 1 1/4 sch 40', 1.66], ['pipe 1 1/2 sch 40', 1.9], ['pipe 2 sch 40', 2.375], ['tubing 2 3/8 x 0.190', 2.375],
  ['pipe 60.3 x 3.9 mm', 60.3 / 25.4], ['pipe 2 1/2 sch 40', 2.875],
] as const;
export const POSTS = [
  ['pipe 2 1/2 sch 40', 2.875], ['tubing 2 7/8 x 0.217', 2.875], ['pipe 3 sch 40', 3.5], ['pipe 88.9 x 4 mm', 3.5], ['pipe 4 sch 40', 4.5],
  ['pipe 5 sch 40', 5.563],
] as const;
/** Only on lapped fences: a coped tube is round. Across and upright. */
const TUBE_RAIL = ['tube 2 x 3 x 3/16', 3] as const;
const SHEETS = ['7 ga', '10 ga', '12 ga', '14 ga', '16 ga', '3 mm', null] as const;

/** A fence in inches, whole, as its group in the file. */
export interface RandomFence {
  readonly height: number;
  readonly solidFrom: number;
  readonly solidTo: number;
  readonly construction: 'lapped' | 'coped';
  readonly rails: number;
  readonly bottomRail: number;
  readonly rail: string;
  readonly post: string;
  readonly postSpacing: number;
  readonly sheet: string | null;
}

const sizeOf = (name: string): number => [...RAILS, ...POSTS, TUBE_RAIL].find(([known]) => known === name)?.[1] ?? NaN;
export const postSize = (fence: RandomFence): number => sizeOf(fence.post);
/** From the face to the posts' backs, for leaving room; over rather than under. */
export const fenceDepth = (fence: RandomFence): number => 0.25 + sizeOf(fence.rail) + sizeOf(fence.post);

/** The least distance between neighboring rows, the one moved to `solidTo` among them: reckoned here apart from the code. */
function closest(fence: RandomFence, size: number): number {
  const top = fence.height - size / 2;
  const rows: number[] = [];
  for (let row = 0; row < fence.rails; row += 1) rows.push(fence.bottomRail + ((top - fence.bottomRail) * row) / (fence.rails - 1));
  if (fence.sheet !== null && fence.solidTo > 0 && fence.solidTo < fence.height) {
    let nearest = 0;
    for (let row = 1; row < rows.length - 1; row += 1) {
      if (Math.abs(rows[row]! - fence.solidTo) < Math.abs(rows[nearest]! - fence.solidTo)) nearest = row;
    }
    rows[nearest] = fence.solidTo;
  }
  rows.sort((a, b) => a - b);
  return Math.min(rows[0]! + size / 2, ...rows.slice(1).map((row, below) => row - rows[below]!));
}

/** A fence that could be built, the way a person would write it: rows with room between, solid over something, coped rails thinner than posts. */
export function randomFence(draw: Draw): RandomFence {
  const construction = draw.pick(['lapped', 'lapped', 'coped'] as const);
  const [post, postOutside] = draw.pick(POSTS);
  const rails = RAILS.filter(([, size]) => construction === 'lapped' || size < postOutside - 0.1);
  const [rail, size] = construction === 'lapped' && draw.chance(0.1) ? TUBE_RAIL : draw.pick(rails);
  const height = draw.figure(36, 96);
  const bottomRail = draw.figure(4, Math.min(36, height - 2 * size - 1));
  const most = Math.max(2, Math.min(12, Math.floor((height - size / 2 - bottomRail) / size)));
  const solidFrom = draw.chance(0.4) ? 0 : draw.figure(0, 24);
  const base = {
    height, solidFrom, construction, bottomRail, rail, post,
    rails: draw.chance(0.6) ? Math.min(most, draw.pick([4, 5, 6])) : draw.whole(2, most),
    postSpacing: draw.chance(0.6) ? draw.pick([72, 84, 96]) : draw.figure(24, 144),
    sheet: draw.pick(SHEETS),
  };
  for (let tries = 0; tries < 12; tries += 1) {
    const solidTo = draw.chance(0.5) ? height : draw.chance(0.3) ? 0 : draw.figure(solidFrom + 2, height);
    const fence = { ...base, solidTo };
    if (closest(fence, size) >= size) return fence;
  }
  return { ...base, solidTo: height };
}
