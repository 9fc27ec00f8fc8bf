import { inches, type Inches } from '../../base/quantity.ts';
import { SAME_LENGTH } from '../../base/tolerance.ts';
import { type BandLabel } from '../../drafting/model.ts';
import { type SlopedFence } from './fence-frame.ts';
import { clearHeight } from '../elevation.ts';
import { postLabel } from '../post-cap.ts';

/** Where in its bay a mark's leader drops: rails from the first figure on, skins at the last. */
const RAIL_AT = [0.3, 0.5, 0.66] as const;
const SKIN_AT = 0.84;

/** Marks of a stretch of a ramp's fence: every post, every piece in the bay in which it begins (or comes in from the stretch before). */
export function fenceLabels(fence: SlopedFence, s0: number, s1: number): readonly BandLabel[] {
  const { section } = fence.panel.fence;
  const { rows } = section;
  const posts = fence.posts.filter(({ s }) => s >= s0 - SAME_LENGTH && s <= s1 + SAME_LENGTH);
  const between = (rows[rows.length - 1]! + rows[rows.length - 2]!) / 2;
  const labels: BandLabel[] = posts.map((post) => postLabel(post, post.s, fence.line(post.s) + between));
  /** The bay in which something begins, and how many marks stand in it already. */
  const bayAt = (from: number): { readonly start: number; readonly size: number; readonly key: number } => {
    let i = posts.length - 2;
    while (i > 0 && posts[i]!.s > from + SAME_LENGTH) i -= 1;
    return { start: posts[i]!.s, size: posts[i + 1]!.s - posts[i]!.s, key: i };
  };
  /** A little past where a piece begins: at a jamb it does so before the post's center. */
  const inside = (from: number, to: number): number => Math.max(from, s0) + Math.min(fence.panel.fence.brief.post.along, (Math.min(to, s1) - Math.max(from, s0)) / 2);
  const rails = new Map<string, { readonly bay: ReturnType<typeof bayAt>; readonly mark: string; readonly pieces: { height: number; key: string }[] }>();
  for (const { piece, from, to, height } of fence.rails) {
    if (Math.min(to, s1) - Math.max(from, s0) < SAME_LENGTH) continue;
    const bay = bayAt(inside(from, to));
    const key = `${String(bay.key)} ${piece.mark}`;
    const group = rails.get(key) ?? { bay, mark: piece.mark, pieces: [] };
    group.pieces.push({ height, key: piece.key });
    rails.set(key, group);
  }
  const used = new Map<number, number>();
  for (const { bay, mark, pieces } of rails.values()) {
    const nth = used.get(bay.key) ?? 0;
    used.set(bay.key, nth + 1);
    const x = bay.start + bay.size * (RAIL_AT[nth] ?? 0.7 + 0.02 * nth);
    labels.push({ text: mark, x: inches(x), targets: pieces.map(({ height, key }) => ({ y: inches(fence.line(x) + height), piece: key })) });
  }
  const courses = new Map<number, number>();
  for (const { piece, from, to, bottom, top } of fence.skins) {
    if (Math.min(to, s1) - Math.max(from, s0) < SAME_LENGTH) continue;
    const bay = bayAt(inside(from, to));
    const nth = courses.get(bay.key) ?? 0;
    courses.set(bay.key, nth + 1);
    const x: Inches = inches(Math.min(bay.start + bay.size * (SKIN_AT + 0.05 * nth), to - 0.04 * (to - from) * (3 - Math.min(2, nth))));
    labels.push({ text: piece.mark, x, targets: [{ y: inches(fence.line(x) + clearHeight(rows, section.railHeight, bottom, top)), piece: piece.key }] });
  }
  return labels;
}
