import { type Brief } from '../../brief/types.ts';
import { type Layout } from '../../layout/index.ts';
import { type Parts } from '../../parts/index.ts';
import { gateSheet } from '../../brief/gate-steel.ts';
import { type Section } from '../../steel/index.ts';
import { filletLot } from './lot.ts';
import { capWeld } from './symbols.ts';
import { type WeldLot } from './types.ts';

/** All round each cap on its post. */
export function capWelds(brief: Brief, layout: Layout, parts: Parts): readonly WeldLot[] {
  const posts = new Map<string, Section>(layout.posts.map((post) => [`${post.run} ${post.side} ${String(post.bay)}`, post.section]));
  const lots = new Map<string, { readonly run: string; readonly section: string; readonly post: Section; readonly seams: number[] }>();
  for (const { place, run, side, bay, length, flatHeight, section } of parts.pieces) {
    if (place.kind !== 'cap') continue;
    const post = posts.get(`${run} ${side} ${String(bay)}`);
    if (post === undefined) throw new Error(`a cap on no post: ${place.on}`);
    const key = `${run} ${post.name}`;
    const lot = lots.get(key) ?? { run, section, post, seams: [] };
    lot.seams.push(post.shape === 'round' ? Math.PI * length : 2 * (length + (flatHeight ?? length)));
    lots.set(key, lot);
  }
  return [...lots.values()].map(({ run, section, post, seams }) => filletLot(run, capWeld(brief, gateSheet(section).thickness, post.wall), seams));
}
