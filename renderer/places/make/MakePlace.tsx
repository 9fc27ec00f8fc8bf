import { type ReactElement, useEffect } from 'react';
import { say } from '../../../core/text/index.ts';
import { useDeskWindow } from '../../app/desk-window.ts';
import { useStore } from '../../project/store.ts';
import { useAsked } from '../../worker/asked.ts';
import { useKept } from '../../worker/kept.ts';
import { Freshness } from '../../parts/Freshness.tsx';
import { ArcCheck } from './arc-check/ArcCheck.tsx';
import { drawnArc } from './arc-check/drawn-arc.ts';
import { BarsPane } from './bars/BarsPane.tsx';
import { CutProgress } from './bars/CutProgress.tsx';
import { DrawingPane } from './DrawingPane.tsx';
import { FlatFile } from './FlatFile.tsx';
import './make.css';
import { PieceStrip } from './PieceStrip.tsx';
import { SchedulePane } from './SchedulePane.tsx';
import { type Taken } from './taken.ts';

/** The drawings as they will print and the schedules; a piece mark chosen in one is shown in all. */
export function MakePlace(): ReactElement {
  const { selection, worked, cuts } = useDeskWindow();
  const { mark } = useStore(selection);
  const { laid, laidProject } = useStore(worked);
  useEffect(() => { if (laidProject !== null) void cuts.follow(); }, [cuts, laidProject]);
  const sheets = useAsked('sheets', null);
  const tables = useAsked('tables', null);
  const [wanted, take] = useKept<Taken>('make taken', { kind: 'drawing', index: 0 });
  const taken = standing(wanted, sheets.answer?.length ?? null);
  return (
    <section className="make" aria-label={say('place-make.title')}>
      <FlatFile sheets={sheets.answer ?? []} tables={tables.answer ?? []} taken={taken} mark={mark} onTake={take} />
      <div className="make-main">
        <div>
          <CutProgress />
          {taken.kind === 'bars' ? null : <Freshness asked={taken.kind === 'drawing' ? sheets : tables} />}
        </div>
        <div className="make-pane">
          {laid === null ? <p className="make-empty">{say('place-make.nothing')}</p> : null}
          {taken.kind === 'drawing' && sheets.answer !== null ? <DrawingPane index={taken.index} mark={mark} /> : null}
          {taken.kind === 'bars' ? <BarsPane mark={mark} /> : null}
          {taken.kind === 'schedule' ? <SchedulePane tables={tables} id={taken.id} mark={mark} /> : null}
        </div>
        {taken.kind === 'schedule' && taken.id === 'bends' ? <ArcCheck units={laid?.units ?? 'in'} drawn={drawnArc(tables.answer ?? [], mark)} /> : null}
        {mark === null ? null : <PieceStrip mark={mark} sheets={sheets.answer ?? []} tables={tables.answer ?? []} taken={taken} onTake={take} />}
      </div>
    </section>
  );
}

/** A drawing that a shorter set has no more is the last of it. */
function standing(taken: Taken, count: number | null): Taken {
  if (taken.kind !== 'drawing' || count === null || taken.index < count) return taken;
  return { kind: 'drawing', index: Math.max(0, count - 1) };
}
