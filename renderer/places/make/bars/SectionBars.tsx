import { type ReactElement } from 'react';
import { alikeBars, cutWords, type SectionCuts, sectionWords } from '../../../../core/shop/cut-list/index.ts';
import { say } from '../../../../core/text/index.ts';
import { printLength } from '../../../../core/units/index.ts';
import { type Units } from '../../../worker/protocol.ts';
import { BarPicture } from './BarPicture.tsx';

export interface SectionBarsProps {
  readonly section: SectionCuts;
  readonly units: Units;
  /** The longest bar of all sections, inches: all are drawn to one scale. */
  readonly longest: number;
  readonly mark: string | null;
}

/** One section: how many bars, how few any plan could use, and each bar with its cuts. */
export function SectionBars({ section, units, longest, mark }: SectionBarsProps): ReactElement {
  const [title = '', ...words] = sectionWords(units, section);
  return (
    <section className="section-bars" aria-label={title}>
      <h2>{title}</h2>
      <p>{words.join('. ')}</p>
      <ol>
        {alikeBars(section.bars).map(({ bar, first, count }) => {
          const length = printLength(bar.stock.length, units, 'feet', false);
          return (
            <li key={first}>
              <b>{say('place-make.bar-count', { count })}</b>
              <span>{say(bar.stock.count === null ? 'place-make.bar-of' : 'place-make.bar-rack', { length })}</span>
              <BarPicture bar={bar} units={units} longest={longest} mark={mark} />
              <small>{`${say(count === 1 ? 'cut.which' : 'cut.which-to', { first, last: first + count - 1 })}: ${cutWords(bar, units)}`}</small>
            </li>
          );
        })}
      </ol>
    </section>
  );
}
