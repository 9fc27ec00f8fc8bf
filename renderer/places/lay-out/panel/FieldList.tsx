import { type ReactElement } from 'react';

/** Fields of the project file, one below the other. */
export function FieldList({ paths }: { readonly paths: readonly string[] }): ReactElement {
  return <div className="narrow">{paths.map((path) => <div key={path}>{path}</div>)}</div>;
}
