import { say } from '../../text/index.ts';
import { parseSection, parseSheet, tidyName, type Section, type Sheet } from '../../steel/index.ts';
import { showValue } from '../json/show-value.ts';
import { type Judged } from '../judged.ts';
import { type Path } from '../path-fault.ts';

/** Finds sections and sheets by name, the shop's own among them; reports a name that is none. */
export interface SteelLookup {
  section(path: Path, name: string): Section | null;
  sheet(path: Path, name: string): Sheet | null;
}

function shopSections(judged: Judged): ReadonlyMap<string, Section> {
  const own = new Map<string, Section>();
  for (const [written, section] of Object.entries(judged.file.shop?.sections ?? {})) {
    const path = ['shop', 'sections', written];
    const name = tidyName(written);
    if (name === '' || name.length > 60) judged.report(path, 'fault.name', {});
    else if (own.has(name)) judged.report(path, 'fault.section-twice', { other: showValue(name) });
    else if (parseSection(name) !== null) judged.report(path, 'fault.section-known', { name });
    else own.set(name, { ...section, name });
  }
  return own;
}

/** Names of shop sections that are faulty themselves: one fault is enough. */
function faultyNames(judged: Judged): ReadonlySet<string> {
  return new Set(judged.faults.flatMap(({ path }) =>
    path[0] === 'shop' && path[1] === 'sections' && path[2] !== undefined ? [tidyName(String(path[2]))] : []));
}

export function createSteelLookup(judged: Judged): SteelLookup {
  const own = shopSections(judged);
  const faulty = faultyNames(judged);
  const unknowable = judged.faults.some(({ path }) => path[0] === 'shop' && (path.length === 1 || (path.length === 2 && path[1] === 'sections')));
  return {
    section(path, name) {
      const section = parseSection(name, own);
      if (section === null && !unknowable && !faulty.has(tidyName(name))) {
        judged.report(path, 'fault.section', { value: showValue(name), allowed: say('allowed.section') });
      }
      return section;
    },
    sheet(path, name) {
      const sheet = parseSheet(name);
      if (sheet === null) judged.report(path, 'fault.sheet', { value: showValue(name), allowed: say('allowed.sheet') });
      return sheet;
    },
  };
}
