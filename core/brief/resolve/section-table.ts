import { sameSection, type Section } from '../../steel/index.ts';
import { showValue } from '../json/show-value.ts';
import { type Judged } from '../judged.ts';
import { type SteelLookup } from './steel.ts';

export interface SectionEntry<T> {
  readonly section: Section;
  readonly value: T;
}

/** A table of the shop by section: each key a section that can be looked up, no section twice under two spellings. */
export function readSectionTable<T>(
  judged: Judged, steel: SteelLookup, table: 'stock' | 'roll' | 'rack', entries: Readonly<Record<string, T>> | undefined,
): readonly SectionEntry<T>[] {
  const read: (SectionEntry<T> & { readonly key: string })[] = [];
  for (const key of judged.names(['shop', table])) {
    const path = ['shop', table, key];
    const section = steel.section(path, key);
    const value = entries?.[key];
    // A name is looked up even where what it holds is faulty: both are told.
    if (section === null || value === undefined) continue;
    const same = read.find((entry) => sameSection(entry.section, section));
    if (same !== undefined) judged.report(path, 'fault.section-twice', { other: showValue(same.key) });
    else read.push({ key, section, value });
  }
  return read;
}

/** The table by name: under each entry's own name, and under any other that the project calls the section by. */
export function bySectionName<T>(entries: readonly SectionEntry<T>[], used: readonly Section[]): Readonly<Record<string, T>> {
  const named: [string, T][] = entries.map(({ section, value }) => [section.name, value]);
  for (const section of used) {
    const entry = entries.find((candidate) => sameSection(candidate.section, section));
    if (entry !== undefined && entry.section.name !== section.name) named.push([section.name, entry.value]);
  }
  return Object.fromEntries(named);
}
