import { type Finding } from '../../../core/checks/index.ts';
import { say, type StringKey } from '../../../core/text/index.ts';

/** What a finding's rule asks. */
export const ruleWords = (finding: Finding): string => say(`rule.${finding.id}` as StringKey);

/** How far to trust it. */
export const trustWords = (finding: Finding): string => say(`trust.${finding.trust}` as StringKey);
