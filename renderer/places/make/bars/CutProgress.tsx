import { type ReactElement } from 'react';
import { say } from '../../../../core/text/index.ts';
import { useDeskWindow } from '../../../app/desk-window.ts';
import { useStore } from '../../../project/store.ts';
import './bars.css';

/** How far the planning of the cuts is, with the way to end it; nothing once the list is there. */
export function CutProgress(): ReactElement | null {
  const { cuts } = useDeskWindow();
  const state = useStore(cuts.state);
  switch (state.kind) {
    case 'none':
    case 'planned':
      return null;
    case 'planning': {
      const { progress } = state;
      const words = progress === null ? say('place-make.cuts-start') : say('place-make.cuts-working', {
        at: progress.done + 1, total: progress.total, section: progress.cuts.section, bars: progress.cuts.bars.length, least: progress.cuts.atLeast,
      });
      return (
        <div className="cut-progress" role="status">
          <progress max={progress?.total ?? 1} value={progress?.done ?? 0} aria-label={say('place-make.bars-wait')} />
          <span>{words}</span>
          <button type="button" onClick={cuts.stop}>{say('place-make.cuts-stop')}</button>
        </div>
      );
    }
    case 'stopped':
    case 'broken':
      return (
        <div className="cut-progress attention" role="status">
          <span>{state.kind === 'stopped' ? say('place-make.cuts-stopped') : say('place-make.cuts-broken', { reason: state.reason })}</span>
          <button type="button" onClick={() => { void cuts.again(); }}>{say('place-make.cuts-again')}</button>
        </div>
      );
  }
}
