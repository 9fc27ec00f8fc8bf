import { type ReactElement } from 'react';
import { degrees, inches } from '../../core/base/quantity.ts';
import { type StationRun } from '../../core/schedules/index.ts';
import { say } from '../../core/text/index.ts';
import { printAngle, printLength } from '../../core/units/index.ts';
import { useStore } from '../project/store.ts';
import { type Units } from '../worker/protocol.ts';
import { useDeskWindow } from './desk-window.ts';

/** The runs in the order that cattle walk them: the way about in every place. */
export function WalkStrip(): ReactElement | null {
  const { worked, selection, select } = useDeskWindow();
  const { laid } = useStore(worked);
  const { run: chosen } = useStore(selection);
  if (laid === null) return null;
  const wrong = new Set(laid.findings.filter((finding) => finding.result === 'fix').map((finding) => finding.where.split(/[ ,]/)[0]));
  return (
    <nav aria-label={say('window.walk')}>
      <ol className="walk">
        {laid.stations.runs.map((run) => (
          <li key={run.run}>
            <button type="button" aria-pressed={run.run === chosen} onClick={() => { select({ run: run.run === chosen ? null : run.run }); }}>
              <span>{run.run}</span>
              <small>
                {sizeOf(run, laid.units)}
                {wrong.has(run.run) ? <span className="attention"> {say('window.walk.fix')}</span> : null}
              </small>
            </button>
          </li>
        ))}
      </ol>
    </nav>
  );
}

/** A straight's length; an arc's radius and angle; nothing of a run that is no way at all, as the fences round a pen. */
function sizeOf(run: StationRun, units: Units): string {
  if (run.length === 0) return '';
  if (run.kind === 'straight' || run.insideRadius === null || run.angleDeg === null) return printLength(inches(run.length), units);
  const radius = printLength(inches(run.insideRadius), units);
  return say('window.walk.arc', { radius, angle: printAngle(degrees(run.angleDeg)) });
}
