import { type ReactElement, useMemo } from 'react';
import { say } from '../../../core/text/index.ts';
import { SheetView } from '../../parts/SheetView.tsx';
import { useAsked } from '../../worker/asked.ts';
import { useKept } from '../../worker/kept.ts';
import { type Stakes } from '../../worker/protocol.ts';
import { ringOf, stakeSpots } from './stake-spots.ts';

export interface StakeDrawingProps {
  readonly stakes: Stakes;
  readonly point: string | null;
  onPoint(point: string | null): void;
}

/** The drawings of the stakeout, one at a time: the one that a person took, or the one that calls out the point they chose. */
export function StakeDrawing({ stakes, point, onPoint }: StakeDrawingProps): ReactElement {
  const [taken, take] = useKept<{ readonly index: number; readonly by: string | null } | null>('stake drawing', null);
  const calls = point === null ? undefined : stakes.drawings.find((drawing) => drawing.points.includes(point));
  const held = stakes.drawings.find((drawing) => drawing.index === taken?.index);
  // A drawing that was taken by hand stays while the same point is looked at; another point calls for its own.
  const shown = (held !== undefined && (point === null || taken?.by === point) ? held : calls) ?? held ?? stakes.drawings[0];
  const ask = useMemo(() => ({ index: shown?.index ?? 0 }), [shown?.index]);
  const { answer: drawn } = useAsked('sheet', ask, shown !== undefined);
  const spots = useMemo(() => (drawn === null ? [] : stakeSpots(drawn.sheet, stakes.rows)), [drawn, stakes]);
  const told = useMemo(() => (drawn === null ? [] : ringOf(drawn.sheet, stakes.rows, point)), [drawn, stakes, point]);
  return (
    <div className="stake-drawing">
      <ul aria-label={say('place-stake-out.drawings')}>
        {stakes.drawings.map((drawing) => (
          <li key={drawing.index}>
            <button
              type="button"
              title={drawing.title}
              aria-current={drawing.index === shown?.index ? 'true' : undefined}
              onClick={() => { take({ index: drawing.index, by: point }); }}
            >
              {drawing.number}
            </button>
          </li>
        ))}
        <li className="faint">{shown?.title}</li>
      </ul>
      {drawn === null ? <p className="stake-empty">{say('place-make.working')}</p> : (
        <SheetView
          key={drawn.sheet.number}
          drawn={drawn}
          spots={spots}
          spotsLabel={say('place-stake-out.on-drawing')}
          chosen={point}
          told={told}
          onChoose={(id) => {
            const next = id === point ? null : id;
            // Chosen on this drawing: it stays.
            if (shown !== undefined) take({ index: shown.index, by: next });
            onPoint(next);
          }}
        />
      )}
    </div>
  );
}
