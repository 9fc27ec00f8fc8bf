import { type ReactElement } from 'react';
import { FieldRow } from '../../../parts/field/FieldRow.tsx';

/** Fields of the project file, one below the other. */
export function FieldList({ paths }: { readonly paths: readonly string[] }): ReactElement {
  return <div className="narrow">{paths.map((path) => <FieldRow key={path} path={path} />)}</div>;
}
