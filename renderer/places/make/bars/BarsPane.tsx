import { type ReactElement } from 'react';
import { say } from '../../../../core/text/index.ts';
import { useDeskWindow } from '../../../app/desk-window.ts';
import { useStore } from '../../../project/store.ts';
import './bars.css';
import { SectionBars } from './SectionBars.tsx';

export interface BarsPaneProps {
  readonly mark: string | null;
}

/** Every section's bars as they are cut, the best known so far while they are still being planned. */
export function BarsPane({ mark }: BarsPaneProps): ReactElement {
  const { cuts, worked } = useDeskWindow();
  const state = useStore(cuts.state);
  const { laid } = useStore(worked);
  const sections = state.kind === 'planned' ? state.list : state.kind === 'planning' ? state.sections : [];
  if (sections.length === 0) return <p className="make-empty">{say(state.kind === 'planning' ? 'place-make.bars-wait' : 'place-make.bars-none')}</p>;
  const longest = Math.max(...sections.flatMap(({ bars }) => bars.map(({ stock }) => stock.length)));
  return (
    <div className="bars-pane">
      {sections.map((section) => <SectionBars key={section.section} section={section} units={laid?.units ?? 'in'} longest={longest} mark={mark} />)}
    </div>
  );
}
