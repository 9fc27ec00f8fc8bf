import { type ReactElement } from 'react';
import { FieldRow } from '../field/FieldRow.tsx';
import { CheckList } from './CheckList.tsx';
import { EntryList } from './EntryList.tsx';
import { FigureList } from './FigureList.tsx';
import { GroupPart } from './GroupPart.tsx';
import { knownField } from './part-words.ts';
import { PairRow } from './PairRow.tsx';
import { Records } from './Records.tsx';
import { SheetSizes } from './SheetSizes.tsx';

/** Any place of the project file as a part of the form, by what the format says that it is. */
export function FormPart({ path }: { readonly path: string }): ReactElement {
  const { what } = knownField(path);
  switch (what.kind) {
    case 'group':
      return <GroupPart path={path} />;
    case 'named':
      return <Records path={path} />;
    case 'list': {
      const entry = what.entry.what;
      if (entry.kind === 'group' || entry.kind === 'forms') return <EntryList path={path} />;
      if (entry.kind === 'list') return <SheetSizes path={path} />;
      if (entry.kind === 'choice' || entry.kind === 'whole') return <CheckList path={path} />;
      return what.least === 2 && what.greatest === 2 ? <PairRow path={path} /> : <FigureList path={path} />;
    }
    default:
      return <FieldRow path={path} />;
  }
}
