import { type ReactElement } from 'react';
import { type BarPlan } from '../../../../core/shop/cut-list/index.ts';
import { printLength } from '../../../../core/units/index.ts';
import { useDeskWindow } from '../../../app/desk-window.ts';
import { type Units } from '../../../worker/protocol.ts';

export interface BarPictureProps {
  readonly bar: BarPlan;
  readonly units: Units;
  readonly longest: number;
  readonly mark: string | null;
}

/** A bar to scale along its length: its pieces to be chosen by their marks, and what is left of it. */
export function BarPicture({ bar, units, longest, mark }: BarPictureProps): ReactElement {
  const { select } = useDeskWindow();
  const share = (length: number): string => `${String((100 * length) / longest)}%`;
  return (
    <div className="bar-picture">
      {bar.trim > 0 ? <i className="bar-trim" style={{ width: share(bar.trim) }} /> : null}
      {bar.cuts.map((cut, index) => (
        <button
          key={index}
          type="button"
          aria-pressed={cut.mark === mark}
          style={{ width: share(cut.length), marginInlineEnd: share(cut.kerf) }}
          title={printLength(cut.length, units, 'bracket')}
          onClick={() => { select({ mark: cut.mark === mark ? null : cut.mark }); }}
        >
          {cut.mark}
        </button>
      ))}
      {bar.drop > 0 ? <i className={bar.kept ? 'bar-kept' : 'bar-scrap'} style={{ width: share(bar.drop) }} /> : null}
    </div>
  );
}
