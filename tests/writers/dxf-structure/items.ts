/** Tags to items: what begins with group 0, in its section. */
import { type Tag } from './tags.ts';

export interface Item {
  readonly type: string;
  readonly tags: readonly Tag[];
  readonly line: number;
  readonly section: string;
  /** Table or block that it stands in, else empty. */
  readonly within: string;
}

export interface Dxf {
  readonly header: readonly Tag[];
  readonly sections: ReadonlyMap<string, readonly Item[]>;
  readonly breaches: readonly string[];
}

/** The order of the reference. */
const SECTIONS = ['HEADER', 'CLASSES', 'TABLES', 'BLOCKS', 'ENTITIES', 'OBJECTS'];

/** First value of a group, or null. */
export const valueOf = (item: Item, code: number): string | null => item.tags.find((tag) => tag.code === code)?.value ?? null;

/** All values of a group. */
export const valuesOf = (item: Item, code: number): string[] => item.tags.filter((tag) => tag.code === code).map((tag) => tag.value);

export const numberOf = (item: Item, code: number): number => Number(valueOf(item, code) ?? 'missing');

/** Handle of an item: a dimension style has a group of its own. */
export const handleOf = (item: Item): string | null => valueOf(item, item.type === 'DIMSTYLE' ? 105 : 5);

export const where = (item: Item): string => `line ${String(item.line)}: ${item.type}`;

export const itemsOf = (file: Dxf, section: string): readonly Item[] => file.sections.get(section) ?? [];

/** Works a thing out once for a file. */
export function once<T>(work: (file: Dxf) => T): (file: Dxf) => T {
  const known = new WeakMap<Dxf, { readonly value: T }>();
  return (file) => {
    const held = known.get(file) ?? { value: work(file) };
    known.set(file, held);
    return held.value;
  };
}

/** Cuts tags into sections and items; blocks and tables are told apart by what stands around them. */
export function parseItems(tags: readonly Tag[]): Dxf {
  const breaches: string[] = [];
  const header: Tag[] = [];
  const sections = new Map<string, Item[]>();
  let section: string | null = null;
  let current: { type: string; tags: Tag[]; line: number; section: string; within: string } | null = null;
  let within = '';
  tags.forEach((tag, k) => {
    const next = tags[k + 1];
    if (tag.code !== 0) {
      if (current !== null) current.tags.push(tag);
      else if (section === 'HEADER' && !(tag.code === 2 && tags[k - 1]?.value === 'SECTION')) header.push(tag);
      else if (tags[k - 1]?.value !== 'SECTION') breaches.push(`line ${String(tag.line)}: group ${String(tag.code)} outside any item`);
      return;
    }
    current = null;
    if (tag.value === 'SECTION') {
      if (section !== null) breaches.push(`line ${String(tag.line)}: section inside ${section}`);
      section = next?.code === 2 ? next.value : '';
      if (sections.has(section)) breaches.push(`line ${String(tag.line)}: second section ${section}`);
      sections.set(section, []);
    } else if (tag.value === 'ENDSEC') {
      if (section === null || within !== '') breaches.push(`line ${String(tag.line)}: ENDSEC ends nothing or leaves ${within} open`);
      section = null;
      within = '';
    } else if (tag.value === 'EOF') {
      if (k !== tags.length - 1 || section !== null) breaches.push(`line ${String(tag.line)}: EOF before the end`);
    } else {
      if (section === null || section === 'HEADER') breaches.push(`line ${String(tag.line)}: ${tag.value} outside a section`);
      const opens = (section === 'TABLES' && tag.value === 'TABLE') || (section === 'BLOCKS' && tag.value === 'BLOCK');
      if (opens && within !== '') breaches.push(`line ${String(tag.line)}: ${tag.value} inside ${within}`);
      if (opens) within = nameAfter(tags, k);
      current = { type: tag.value, tags: [], line: tag.line, section: section ?? '', within };
      sections.get(section ?? '')?.push(current);
      if (tag.value === 'ENDTAB' || tag.value === 'ENDBLK') within = '';
    }
  });
  if (tags.at(-1)?.value !== 'EOF') breaches.push('the file does not end with EOF');
  if ([...sections.keys()].join() !== SECTIONS.join()) breaches.push(`sections are ${[...sections.keys()].join()}, not ${SECTIONS.join()}`);
  return { header, sections, breaches };
}

function nameAfter(tags: readonly Tag[], from: number): string {
  for (let k = from + 1; k < tags.length && tags[k]?.code !== 0; k += 1) {
    const tag = tags[k];
    if (tag?.code === 2) return tag.value;
  }
  return '';
}
