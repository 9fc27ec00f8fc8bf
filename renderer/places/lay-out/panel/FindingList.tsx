import { type ReactElement } from 'react';
import { namedRuns } from '../../../../core/checks/index.ts';
import { say } from '../../../../core/text/index.ts';
import { type Laid } from '../../../worker/protocol.ts';
import { shownFindings } from '../shown-findings.ts';
import { FindingItem } from './FindingItem.tsx';

/** What the design breaks at a run; of the whole plan where no run is chosen: then those that have a place. */
export function FindingList({ laid, run }: { readonly laid: Laid; readonly run: string | null }): ReactElement {
  const runs = laid.stations.runs.map((one) => one.run);
  const all = shownFindings(laid.findings);
  const here = all.filter((one) => (run === null ? one.number !== null : namedRuns(one.finding.where, runs).includes(run)));
  const title = say(run === null ? 'place-lay-out.findings-placed' : 'place-lay-out.findings');
  return (
    <section aria-label={title}>
      <h3>{title}</h3>
      {here.length === 0 ? <p className="faint">{say(run === null ? 'place-lay-out.no-findings-placed' : 'place-lay-out.no-findings')}</p> : null}
      <ul>{here.map((one) => <FindingItem key={`${one.finding.id} ${String(one.index)}`} one={one} units={laid.units} runs={runs} />)}</ul>
    </section>
  );
}
