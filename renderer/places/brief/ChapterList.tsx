import { useEffect, useRef, type ReactElement } from 'react';
import { say } from '../../../core/text/index.ts';
import { useAllFaults } from '../../parts/field/use-faults.ts';
import { CHAPTERS, chapterOf } from './chapters.ts';

/** The chapters to jump by; those in which something is wrong say how much. */
export function ChapterList({ here, go }: { readonly here: string; readonly go: (id: string) => void }): ReactElement {
  const faults = useAllFaults();
  const list = useRef<HTMLElement>(null);
  // The list is longer than a small window: the chapter that is in sight stays in sight in it.
  useEffect(() => {
    list.current?.querySelector('[aria-current]')?.scrollIntoView({ block: 'nearest' });
  }, [here]);
  return (
    <nav ref={list} className="chapter-list" aria-label={say('place-brief.chapters')}>
      <ol>
        {CHAPTERS.map(({ id, title }) => {
          const count = faults.filter((fault) => chapterOf(fault.path)?.id === id).length;
          return (
            <li key={id}>
              <button type="button" aria-current={id === here ? 'true' : undefined} onClick={() => { go(id); }}>
                {say(title)}
                {count === 0 ? null : <span className="tally attention">{say('window.tally.faults', { count })}</span>}
              </button>
            </li>
          );
        })}
      </ol>
    </nav>
  );
}
