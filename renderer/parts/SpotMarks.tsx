import { type KeyboardEvent, type ReactElement, useRef, useState } from 'react';
import { type Spot } from './spots.ts';

export interface SpotMarksProps {
  readonly spots: readonly Spot[];
  readonly label: string;
  readonly chosen: string | null;
  onChoose(id: string): void;
  /** The focus has come to a spot: paper inches, y down. */
  onSeen(point: { readonly x: number; readonly y: number }): void;
}

/** What may be chosen on a drawing: one stop of the tab key, the arrows go from one to the next. */
export function SpotMarks({ spots, label, chosen, onChoose, onSeen }: SpotMarksProps): ReactElement {
  const group = useRef<SVGGElement>(null);
  const [stop, setStop] = useState<string | null>(null);
  const first = spots.find((spot) => spot.key === stop) ?? spots.find((spot) => spot.id === chosen) ?? spots[0];
  const go = (index: number): void => {
    const at = (index + spots.length) % spots.length;
    setStop(spots[at]?.key ?? null);
    const next = group.current?.children[at];
    if (next instanceof SVGElement) next.focus();
  };
  const onKeyDown = (event: KeyboardEvent, spot: Spot, index: number): void => {
    if (event.key === 'Enter' || event.key === ' ') onChoose(spot.id);
    else if (event.key === 'ArrowRight' || event.key === 'ArrowDown') go(index + 1);
    else if (event.key === 'ArrowLeft' || event.key === 'ArrowUp') go(index - 1);
    else if (event.key === 'Home') go(0);
    else if (event.key === 'End') go(spots.length - 1);
    else return;
    event.preventDefault();
  };
  return (
    <g ref={group} role="group" aria-label={label}>
      {spots.map((spot, index) => (
        <g
          key={spot.key}
          className="spot"
          role="button"
          aria-label={spot.label}
          aria-pressed={spot.id === chosen}
          tabIndex={spot === first ? 0 : -1}
          transform={`rotate(${String(spot.turn.degrees)} ${String(spot.turn.x)} ${String(spot.turn.y)})`}
          onClick={() => { setStop(spot.key); onChoose(spot.id); }}
          onFocus={() => { onSeen({ x: spot.turn.x, y: spot.turn.y }); }}
          onKeyDown={(event) => { onKeyDown(event, spot, index); }}
        >
          <rect {...spot.box} />
        </g>
      ))}
    </g>
  );
}
