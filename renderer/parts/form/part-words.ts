import { fieldAt, labelOf, type Field } from '../../../core/brief/format/index.ts';
import { pathSteps, type Step } from '../../project/json-path.ts';

/** The field of the format at a path. Throws where the format has none: a programmer's mistake. */
export function knownField(path: string): Field {
  const field = fieldAt(pathSteps(path));
  if (field === null) throw new Error(`no field of the format: ${path}`);
  return field;
}

export const labelAt = (path: string): string => labelOf(knownField(path));

/** A path as steps, or null for a text that is none: a fault's path may be cut short. */
export function stepsOrNull(path: string): readonly Step[] | null {
  try {
    return pathSteps(path);
  } catch {
    return null;
  }
}

/** A path one step further: `chute.runs` and 1 give `chute.runs[1]`, `shop.stock` and a name `shop.stock["pipe 2 sch 40"]`. */
export function further(path: string, step: Step): string {
  if (typeof step === 'number') return `${path}[${String(step)}]`;
  if (!/^[A-Za-z_]\w*$/.test(step)) return `${path}[${JSON.stringify(step)}]`;
  return path === '' ? step : `${path}.${step}`;
}
