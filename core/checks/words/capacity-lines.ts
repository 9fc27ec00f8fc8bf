import { type Brief } from '../../brief/types.ts';
import { say } from '../../text/index.ts';
import { type Capacity } from '../capacity.ts';
import { printed, printedArea } from './print.ts';

/** What a facility takes, in sentences, figures in the project's units. */
export function capacityLines(brief: Brief, { penArea, areaPerHead, penFull, draft, chute, drafts }: Capacity): readonly string[] {
  return [
    say('capacity.pen', { area: printedArea(brief, penArea * 144), each: printedArea(brief, areaPerHead * 144), full: penFull, draft }),
    say('capacity.chute', { head: chute, body: printed(brief, brief.cattle.bodyLength) }),
    drafts === null ? say('capacity.noDraft', { each: printedArea(brief, areaPerHead * 144) }) : say('capacity.drafts', { head: brief.cattle.headPerDay, drafts, draft }),
  ];
}
