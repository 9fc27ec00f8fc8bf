import { memo, type ReactElement } from 'react';
import { say } from '../../../core/text/index.ts';
import { FenceGroup } from '../../parts/form/FenceGroup.tsx';
import { FormPart } from '../../parts/form/FormPart.tsx';
import { GroupFaults } from '../../parts/form/GroupFaults.tsx';
import { GroupFields } from '../../parts/form/GroupPart.tsx';
import { further, knownField } from '../../parts/form/part-words.ts';
import { PartHelp } from '../../parts/form/PartHelp.tsx';
import { type Chapter } from './chapters.ts';

/**
 * A chapter of the form. Where it is about one group alone, that group's fields stand under its heading. Drawn
 * again by its own parts alone: a key that is pressed in one field must not draw them all.
 */
export const ChapterPart = memo(function ChapterPart({ chapter: { id, title, paths } }: { readonly chapter: Chapter }): ReactElement {
  const [only] = paths;
  const single = paths.length === 1 && only !== undefined && knownField(only).what.kind === 'group' ? only : null;
  return (
    <section className={paths.length === 1 && single === null ? 'chapter sole' : 'chapter'} id={`chapter-${id}`} aria-labelledby={`chapter-${id}-title`} data-field={single ?? undefined} tabIndex={-1}>
      <div className="chapter-head">
        <h2 id={`chapter-${id}-title`}>{say(title)}</h2>
        {single === null ? null : <PartHelp path={single} />}
      </div>
      {single === 'fences' ? <Fences /> : single === null ? paths.map((path) => <FormPart key={path} path={path} />) : <GroupFields path={single} />}
    </section>
  );
});

function Fences(): ReactElement {
  const { what } = knownField('fences');
  const places = what.kind === 'group' ? Object.keys(what.fields) : [];
  return (
    <>
      <GroupFaults path="fences" rows={places} />
      {places.map((place) => <FenceGroup key={place} path={further('fences', place)} />)}
    </>
  );
}
