import { type Finding } from '../../core/checks/index.ts';
import { say } from '../../core/text/index.ts';
import { plain } from '../disk/index.ts';
import { type Io } from './io.ts';

/** How the checks came out in one line, and what to fix in a line each. */
export function tellFindings(findings: readonly Finding[], io: Pick<Io, 'out'>): void {
  const count = (result: Finding['result']): number => findings.filter((finding) => finding.result === result).length;
  io.out(say('command.findings', { ok: count('ok'), look: count('look'), fix: count('fix') }));
  for (const finding of findings) {
    if (finding.result === 'fix') io.out(plain(say('command.finding-fix', { id: finding.id, where: finding.where })));
  }
}
