import { type ReactElement, useMemo } from 'react';
import { say } from '../../../core/text/index.ts';
import { useDeskWindow } from '../../app/desk-window.ts';
import { SheetView } from '../../parts/SheetView.tsx';
import { markSpots, strokesOfMark } from '../../parts/spots.ts';
import { useAsked } from '../../worker/asked.ts';

export interface DrawingPaneProps {
  readonly index: number;
  readonly mark: string | null;
}

/** One drawing of the set, its piece marks to be chosen. */
export function DrawingPane({ index, mark }: DrawingPaneProps): ReactElement {
  const { select } = useDeskWindow();
  const ask = useMemo(() => ({ index }), [index]);
  const asked = useAsked('sheet', ask);
  const drawn = asked.answer;
  const spots = useMemo(() => (drawn === null ? [] : markSpots(drawn)), [drawn]);
  const told = useMemo(() => (drawn === null || mark === null ? [] : strokesOfMark(drawn, mark)), [drawn, mark]);
  if (asked.broken !== null) return <p role="alert" className="make-empty attention">{say('place-make.broken', { reason: asked.broken })}</p>;
  if (drawn === null) return <p className="make-empty">{say('place-make.working')}</p>;
  return (
    <SheetView
      key={drawn.sheet.number}
      drawn={drawn}
      spots={spots}
      spotsLabel={say('place-make.marks')}
      chosen={mark}
      told={told}
      onChoose={(id) => { select({ mark: id === mark ? null : id }); }}
    />
  );
}
