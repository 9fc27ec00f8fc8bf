import { type Section } from '../../steel/index.ts';
import { type Judged } from '../judged.ts';
import { pathText } from '../path-fault.ts';
import { type SteelLookup } from './steel.ts';

/** The posts that a project names for its gates to hang on, by where it names them. */
export function lookUpHingePosts({ file }: Judged, steel: SteelLookup): ReadonlyMap<string, Section> {
  const named = (['openings', 'holdingPens'] as const).flatMap((list) =>
    (file[list] ?? []).map(({ hingePost }, index) => ({ path: [list, index, 'hingePost'], name: hingePost })));
  const found = new Map<string, Section>();
  for (const { path, name } of named) {
    const section = name === undefined ? null : steel.section(path, name);
    if (section !== null) found.set(pathText(path), section);
  }
  return found;
}
