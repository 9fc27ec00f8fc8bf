/** The one table of words. A second language is a second set of these files. */
import { faults } from './en/faults.ts';
import { layoutFaults } from './en/layout-faults.ts';
import { findings } from './en/findings.ts';
import { drawings } from './en/drawings.ts';
import { terms } from './en/terms.ts';
import { command } from './en/command.ts';

const table = { ...faults, ...layoutFaults, ...findings, ...drawings, ...terms, ...command } as const;

export type StringKey = keyof typeof table;
export type Params = Readonly<Record<string, string | number>>;

/**
 * The words behind a key, with `{name}` filled from `params`.
 * Throws where a parameter named in the text is missing: a programmer's mistake.
 */
export function say(key: StringKey, params: Params = {}): string {
  return table[key].replace(/\{(\w+)\}/g, (_, name: string) => {
    const value = params[name];
    if (value === undefined) throw new Error(`${key} needs {${name}}`);
    return String(value);
  });
}
