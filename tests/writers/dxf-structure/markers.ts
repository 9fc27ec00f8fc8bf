/** Subclass markers (group 100) and the groups that stand under each. */
import { type Item, where } from './items.ts';
import { type Tag } from './tags.ts';

/** Whether an item's markers are these, in this order. */
export function markersWrong(item: Item, expected: readonly string[]): string[] {
  const found = item.tags.filter((tag) => tag.code === 100).map((tag) => tag.value);
  return found.join() === expected.join() ? [] : [`${where(item)} has subclasses ${found.join()}, not ${expected.join()}`];
}

/** The tags under each marker; those before the first one are under ''. A marker that stands twice has its tags in one list. */
export function subclasses(item: Item): ReadonlyMap<string, readonly Tag[]> {
  const out = new Map<string, Tag[]>([['', []]]);
  let marker = '';
  for (const tag of item.tags) {
    if (tag.code === 100) {
      marker = tag.value;
      if (!out.has(marker)) out.set(marker, []);
    } else {
      out.get(marker)?.push(tag);
    }
  }
  return out;
}
