import { type ReactElement, useMemo } from 'react';
import { say } from '../../../core/text/index.ts';
import { useDeskWindow } from '../../app/desk-window.ts';
import { Freshness } from '../../parts/Freshness.tsx';
import { ScheduleTable } from '../../parts/ScheduleTable.tsx';
import { useStore } from '../../project/store.ts';
import { useAsked } from '../../worker/asked.ts';
import { useKept } from '../../worker/kept.ts';
import { CallOut } from './CallOut.tsx';
import { ControlPoints } from './ControlPoints.tsx';
import './stake-out.css';
import { StakeDrawing } from './StakeDrawing.tsx';
import { stakeTable } from './stake-table.ts';

const NOTHING_SET: readonly string[] = [];

/** What the field crew sets out: the control points, every hole with its ties, and where it lies. */
export function StakeOutPlace(): ReactElement {
  const { worked } = useDeskWindow();
  const { laid } = useStore(worked);
  const asked = useAsked('stakes', null);
  const stakes = asked.answer;
  const [point, choose] = useKept<string | null>('stake point', null);
  const [set, setSet] = useKept('stakes set', NOTHING_SET);
  const [calling, call] = useKept('stakes calling', false);
  const listed = useMemo(() => (stakes === null ? null : stakeTable(stakes, set)), [stakes, set]);
  if (stakes === null || listed === null) {
    return (
      <section className="stake-out" aria-label={say('place-stake-out.title')}>
        <Freshness asked={asked} />
        <p className="stake-empty">{say(laid === null ? 'place-stake-out.nothing' : 'place-stake-out.working')}</p>
      </section>
    );
  }
  return (
    <section className="stake-out" aria-label={say('place-stake-out.title')}>
      <Freshness asked={asked} />
      {calling ? (
        <CallOut stakes={stakes} point={point} set={set} onPoint={choose} onSet={setSet} onLeave={() => { call(false); }} />
      ) : (
        <>
          <ControlPoints stakes={stakes} onCall={() => { call(true); }} />
          <div className="stake-panes">
            <ScheduleTable
              table={listed.table}
              choice={0}
              chosen={point}
              figureOf={listed.figureOf}
              onChoose={(value) => { choose(value === point ? null : value); }}
            />
            <StakeDrawing stakes={stakes} point={point} onPoint={choose} />
          </div>
        </>
      )}
    </section>
  );
}
