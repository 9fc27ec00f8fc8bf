import { type Brief } from '../../../core/brief/types.ts';
import { check, type Finding, type RuleId } from '../../../core/checks/index.ts';
import { layOut } from '../../../core/layout/index.ts';
import { makeParts } from '../../../core/parts/index.ts';

/** Every finding of a brief; throws with the faults where it cannot be built. */
export function checked(brief: Brief): readonly Finding[] {
  const laid = layOut(brief);
  if (!laid.ok) throw new Error(JSON.stringify(laid.faults));
  const made = makeParts(brief, laid.layout);
  if (!made.ok) throw new Error(JSON.stringify(made.faults));
  return check(brief, laid.layout, made.parts);
}

/** The findings of one rule. */
export const findingsOf = (brief: Brief, id: RuleId): readonly Finding[] => checked(brief).filter((finding) => finding.id === id);

/** The only finding of one rule; throws where there are more. */
export function findingOf(brief: Brief, id: RuleId): Finding {
  const [only, ...more] = findingsOf(brief, id);
  if (only === undefined || more.length > 0) throw new Error(`${id}: ${String(1 + more.length)} findings`);
  return only;
}

/** A rule's results, one for each measure. */
export const resultsOf = (brief: Brief, id: RuleId): readonly string[] => findingsOf(brief, id).map((finding) => finding.result);
