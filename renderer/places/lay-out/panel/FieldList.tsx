import { type ReactElement } from 'react';
import { FieldRow } from '../../../parts/field/FieldRow.tsx';

/** Fields of the project file, one below the other. `labels`: of those that their own word alone would not tell. */
export function FieldList({ paths, labels }: { readonly paths: readonly string[]; readonly labels?: ReadonlyMap<string, string> }): ReactElement {
  return (
    <div className="narrow">
      {paths.map((path) => {
        const label = labels?.get(path);
        return <FieldRow key={path} path={path} {...(label === undefined ? {} : { label })} />;
      })}
    </div>
  );
}
