import { type ReactElement } from 'react';
import { inches, type Inches } from '../../../../core/base/quantity.ts';
import { say } from '../../../../core/text/index.ts';
import { printLength } from '../../../../core/units/index.ts';
import { type Measured } from './measured.ts';

export interface ArcVerdictProps {
  readonly units: 'in' | 'mm';
  readonly told: Measured;
  readonly grade: string;
}

/** What the readings say, in words. */
export function ArcVerdict({ units, told, grade }: ArcVerdictProps): ReactElement {
  if (told.kind === 'empty') return <output className="faint">{say('place-arc-check.ask')}</output>;
  if (told.kind === 'faults') return <output className="attention">{told.faults.join(' ')}</output>;
  const { radius, low, high, expected, error, tolerance, within, sure } = told.checked;
  const size = (length: Inches): string => printLength(length, units, 'bracket');
  return (
    <output>
      <strong>{say('arc-check.radius', { radius: size(radius), low: size(low), high: high === null ? say('arc-check.open') : size(high) })}</strong>
      {expected === null || error === null ? null : (
        <span className={within === true ? undefined : 'attention'}>
          {say('place-arc-check.verdict', {
            error: size(inches(Math.abs(error))), grade, tolerance: size(tolerance),
            way: say(error === 0 ? 'arc-check.true' : error > 0 ? 'arc-check.tight' : 'arc-check.slack'),
            verdict: say(within === true ? 'arc-check.within' : 'arc-check.outside'),
          })}
        </span>
      )}
      {sure === false ? <span>{say('arc-check.unsure')}</span> : null}
    </output>
  );
}
