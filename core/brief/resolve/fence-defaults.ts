import { inches } from '../../base/quantity.ts';
import { say } from '../../text/index.ts';
import { pathText, type Path } from '../path-fault.ts';
import { eachDraft, type FenceDrafts } from './fence-drafts.ts';
import { type Filler } from './filler.ts';
import { printExactly } from './print-exactly.ts';

const FIELDS = ['height', 'solidFrom', 'construction', 'rails', 'bottomRail', 'postSpacing'] as const;
const LENGTHS: readonly string[] = ['height', 'solidFrom', 'bottomRail', 'postSpacing'];

/** Lists the defaults of the crowd pen's fence, and `solidTo` once for each height that it was taken from. */
export function noteFenceDefaults(drafts: FenceDrafts, filler: Filler): void {
  const at = (path: Path, field: string): string => pathText([...path, field]);
  const main = drafts.crowdPen;
  for (const field of FIELDS) {
    const said = main[field];
    if (said?.isDefault !== true) continue;
    const { value } = said;
    filler.note(at(said.scope, field), typeof value === 'number' && LENGTHS.includes(field) ? printExactly(inches(value), filler.units) : String(value));
  }
  if (main.sheet?.isDefault === true) filler.note(at(main.sheet.scope, 'sheet'), main.sheet.value?.name ?? say('term.none'));
  const noted = new Set<string>();
  for (const draft of eachDraft(drafts)) {
    if (draft.solidTo?.isDefault !== true || draft.height === undefined) continue;
    const path = at(draft.height.scope, 'solidTo');
    if (noted.has(path)) continue;
    noted.add(path);
    filler.note(path, say('term.own-height', { height: printExactly(draft.height.value, filler.units) }));
  }
}
