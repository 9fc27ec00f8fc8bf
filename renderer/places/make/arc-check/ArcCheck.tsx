import { type ReactElement, useState } from 'react';
import { CLASSES_13920 } from '../../../../core/steel/tables/iso-13920.ts';
import { say } from '../../../../core/text/index.ts';
import { printLength } from '../../../../core/units/index.ts';
import './arc-check.css';
import { ArcVerdict } from './ArcVerdict.tsx';
import { type DrawnArc } from './drawn-arc.ts';
import { measured, type ArcFields } from './measured.ts';

export interface ArcCheckProps {
  readonly units: 'in' | 'mm';
  /** The piece to hold it against; null: none was chosen. */
  readonly drawn: DrawnArc | null;
}

const EMPTY: ArcFields = { by: 'chord', chord: '', rise: '', points: ['', '', ''], read: '1/32', grade: 'B' };
const WAYS = ['chord', 'points'] as const;

/** What was measured on a rolled piece, and whether it is the arc that was drawn. */
export function ArcCheck({ units, drawn }: ArcCheckProps): ReactElement {
  const [fields, setFields] = useState(EMPTY);
  const change = (part: Partial<ArcFields>): void => { setFields({ ...fields, ...part }); };
  const point = (at: number, text: string): void => {
    const [a, b, c] = fields.points;
    change({ points: [at === 0 ? text : a, at === 1 ? text : b, at === 2 ? text : c] });
  };
  const field = (name: string, value: string, set: (text: string) => void): ReactElement => (
    <label key={name}><span>{name}</span><input type="text" inputMode="text" value={value} onChange={(event) => { set(event.target.value); }} /></label>
  );
  return (
    <details className="arc-check">
      <summary>{say('place-arc-check.title')}</summary>
      <form aria-label={say('place-arc-check.title')} onSubmit={(event) => { event.preventDefault(); }}>
        <div className="arc-check-fields">
          <label>
            <span>{say('place-arc-check.by')}</span>
            <select value={fields.by} onChange={(event) => { change({ by: event.target.value === 'points' ? 'points' : 'chord' }); }}>
              {WAYS.map((way) => <option key={way} value={way}>{say(`place-arc-check.by.${way}`)}</option>)}
            </select>
          </label>
          {fields.by === 'chord'
            ? [
              field(say('place-arc-check.chord'), fields.chord, (chord) => { change({ chord }); }),
              field(say('place-arc-check.rise'), fields.rise, (rise) => { change({ rise }); }),
            ]
            : fields.points.map((text, at) => field(say('place-arc-check.point', { number: at + 1 }), text, (words) => { point(at, words); }))}
          {field(say('place-arc-check.read'), fields.read, (read) => { change({ read }); })}
          <label>
            <span>{say('place-arc-check.class')}</span>
            <select value={fields.grade} onChange={(event) => { change({ grade: CLASSES_13920.find((grade) => grade === event.target.value) ?? 'B' }); }}>
              {CLASSES_13920.map((grade) => <option key={grade}>{grade}</option>)}
            </select>
          </label>
        </div>
        <p className="faint">
          {drawn === null
            ? say('place-arc-check.nothing')
            : say('place-arc-check.against', { mark: drawn.mark, radius: printLength(drawn.radius, units, 'bracket'), length: printLength(drawn.length, units) })}
        </p>
        <ArcVerdict units={units} told={measured(fields, drawn)} grade={fields.grade} />
      </form>
    </details>
  );
}
