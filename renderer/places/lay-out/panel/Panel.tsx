import { type ReactElement } from 'react';
import { say } from '../../../../core/text/index.ts';
import { useDeskWindow } from '../../../app/desk-window.ts';
import { present } from '../../../project/history.ts';
import { useStore } from '../../../project/store.ts';
import { type BoardState } from '../board/board-state.ts';
import { useCalm } from '../use-calm.ts';
import { ChosenPiece } from './ChosenPiece.tsx';
import { ChosenRun } from './ChosenRun.tsx';
import { FindingList } from './FindingList.tsx';
import { HandleList } from './HandleList.tsx';
import { MeasureBox } from './MeasureBox.tsx';
import './panel.css';
import { RampList } from './RampList.tsx';

/** Beside the board: the figures of what is chosen, or of the whole. */
export function Panel({ state }: { readonly state: BoardState }): ReactElement {
  const { session, worked, selection } = useDeskWindow();
  const open = useCalm(session);
  const { laid } = useCalm(worked);
  const { run, mark } = useStore(selection);
  const pieces = useStore(state.pieces);
  const project = open === null ? null : present(open.history);
  return (
    <aside className="lay-out-panel" aria-label={say('place-lay-out.panel')}>
      <MeasureBox state={state} />
      {mark === null ? null : <ChosenPiece mark={mark} pieces={pieces} state={state} />}
      {project === null || laid === null ? null : run === null ? (
        <>
          <h2>{say('place-lay-out.whole-plan')}</h2>
          <p>{say('place-lay-out.nothing-chosen')}</p>
          <FindingList laid={laid} run={null} />
          <RampList project={project} />
          <HandleList laid={laid} state={state} />
        </>
      ) : <ChosenRun project={project} laid={laid} run={run} pieces={pieces} />}
    </aside>
  );
}
