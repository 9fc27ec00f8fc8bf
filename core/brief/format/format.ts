import { type Path } from '../path-fault.ts';
import { project } from '../schema/project.ts';
import { describe } from './describe.ts';
import { type Field } from './types.ts';

/** The whole project file. */
export const FORMAT_ROOT: Field = describe(project, '');

function below({ what }: Field): readonly Field[] {
  switch (what.kind) {
    case 'group':
      return Object.values(what.fields);
    case 'forms': {
      const fields = Object.values(what.forms).flatMap((form) => Object.values(form.fields));
      return [...new Map(fields.map((field) => [field.pattern, field])).values()];
    }
    case 'list':
    case 'named':
      return [what.entry];
    default:
      return [];
  }
}

const withBelow = (field: Field): readonly Field[] => [field, ...below(field).flatMap(withBelow)];

/** Every place of the project file in one table, groups and lists before what is in them. */
export const FORMAT: readonly Field[] = withBelow(FORMAT_ROOT).slice(1);

/** A step down: the field of a group (of any of its forms), the entry of a list, what stands under a name. */
function stepTo({ what }: Field, step: string | number): Field | null {
  switch (what.kind) {
    case 'group':
      return Object.hasOwn(what.fields, step) ? (what.fields[step] ?? null) : null;
    case 'forms':
      return Object.values(what.forms).map(({ fields }) => (Object.hasOwn(fields, step) ? fields[step] : undefined)).find((field) => field !== undefined) ?? null;
    case 'list':
      return typeof step === 'number' ? what.entry : null;
    case 'named':
      return typeof step === 'string' ? what.entry : null;
    default:
      return null;
  }
}

/** What the format has at a place of a project; null where it has nothing. */
export const fieldAt = (path: Path): Field | null => path.reduce<Field | null>((field, step) => field && stepTo(field, step), FORMAT_ROOT);
