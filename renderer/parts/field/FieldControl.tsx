import { type ReactElement } from 'react';
import { ChoiceField } from './ChoiceField.tsx';
import { OwnSectionField } from './OwnSectionField.tsx';
import { TypedField } from './TypedField.tsx';
import { type FieldState } from './use-field.ts';
import { useSuggestions } from './use-suggestions.ts';

/** The control of a field, by what the field is. Throws for a group or list: it has parts of its own. */
export function FieldControl({ state, describedBy }: { readonly state: FieldState; readonly describedBy: string | undefined }): ReactElement {
  const suggestions = useSuggestions(state.field);
  const { what } = state.field;
  switch (what.kind) {
    case 'choice':
    case 'flag':
      return <ChoiceField state={state} describedBy={describedBy} />;
    case 'length': case 'angle': case 'weight': case 'number': case 'whole': case 'text': case 'soil': case 'date': case 'time':
    case 'zone': case 'letter': case 'mark': case 'section': case 'sheet': case 'fixed':
      return <TypedField state={state} describedBy={describedBy} suggestions={suggestions} />;
    case 'custom-section':
      return <OwnSectionField state={state} describedBy={describedBy} />;
    case 'group': case 'forms': case 'list': case 'named':
      throw new Error(`no single control for ${state.path}`);
  }
}
