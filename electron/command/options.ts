import { Command, CommanderError, Option } from 'commander';
import { isPackageKind, PACKAGE_KINDS, type PackageKind } from '../../core/package/kinds.ts';
import { type Params, say, type StringKey } from '../../core/text/index.ts';
import { type Refusal } from '../disk/index.ts';

/** What the command was asked for. */
export interface Options {
  /** As a person gave them. */
  readonly project: string;
  readonly out: string;
  /** null: all that this version makes. */
  readonly only: readonly PackageKind[] | null;
  /** null: the project's own. */
  readonly units: 'in' | 'mm' | null;
  readonly strict: boolean;
  readonly keepMarks: boolean;
  /** The project of an earlier issue, to cloud what changed since; null: none. */
  readonly since: string | null;
}

export type Asked = { readonly kind: 'help' } | { readonly kind: 'wrong'; readonly refusals: readonly Refusal[] } | { readonly kind: 'options'; readonly options: Options };

const KINDS = PACKAGE_KINDS.join(', ');
const ALLOWED: Readonly<Record<string, string>> = { '--out': say('command.allowed-folder'), '--units': say('command.allowed-units'), '--since': say('command.allowed-project'), '--only': KINDS };

/** Reads the words after the command. All that is wrong with them is told at once. */
export function readOptions(words: readonly string[]): Asked {
  const refusals: Refusal[] = [];
  const refuse = (path: string, key: StringKey, params: Params = {}): void => void refusals.push({ path, key, params });
  const values = new Map<string, string>();
  const command = new Command();
  const takes = (name: string, flags: string): void => {
    command.addOption(new Option(flags).argParser((value: string) => {
      if (values.has(name)) refuse(name, 'command.option-twice');
      // The next option stands where the value should: a folder of such a name is given as ./--name.
      if (value.startsWith('--')) refuse(name, 'command.option-no-value', { allowed: ALLOWED[name] ?? KINDS });
      values.set(name, value);
    }));
  };
  takes('--out', '--out <folder>');
  takes('--only', '--only <kinds>');
  takes('--units', '--units <units>');
  takes('--since', '--since <project>');
  command.option('--strict').option('--keep-marks').option('-h, --help').helpOption(false);
  command.allowUnknownOption().allowExcessArguments().exitOverride().configureOutput({ writeErr: () => undefined, writeOut: () => undefined });
  try {
    command.parse([...words], { from: 'user' });
  } catch (error) {
    return { kind: 'wrong', refusals: [missingValue(error)] };
  }
  const flags = command.opts<{ strict?: true; keepMarks?: true; help?: true }>();
  if (flags.help === true) return { kind: 'help' };

  const { operands, unknown } = splitRest(words, command.args);
  for (const word of unknown) refuse(word, 'command.option-unknown');
  const [project, ...extra] = operands;
  if (project === undefined || project === '') refuse('PROJECT', 'command.project-asked');
  for (const word of extra) refuse(word, 'command.project-extra');
  const out = values.get('--out');
  if (out === undefined) refuse('--out', 'command.out-asked');
  else if (out === '') refuse('--out', 'command.option-no-value', { allowed: say('command.allowed-folder') });
  const units = values.get('--units') ?? null;
  if (units !== null && units !== 'in' && units !== 'mm') refuse('--units', 'command.option-units', { value: units });
  const since = values.get('--since') ?? null;
  if (since === '') refuse('--since', 'command.option-no-value', { allowed: say('command.allowed-project') });
  const only = readKinds(values.get('--only'), refuse);
  if (refusals.length > 0 || project === undefined || out === undefined) return { kind: 'wrong', refusals };
  return {
    kind: 'options',
    options: { project, out, only, units: units as 'in' | 'mm' | null, strict: flags.strict === true, keepMarks: flags.keepMarks === true, since },
  };
}

function readKinds(text: string | undefined, refuse: (path: string, key: StringKey, params: Params) => void): readonly PackageKind[] | null {
  if (text === undefined) return null;
  const asked = new Set<PackageKind>();
  for (const word of text.split(',').map((part) => part.trim())) {
    if (isPackageKind(word)) asked.add(word);
    else refuse('--only', 'command.option-only', { value: word, kinds: KINDS });
  }
  const kinds = PACKAGE_KINDS.filter((kind) => asked.has(kind));
  return kinds;
}

/** The only thing that is left for the library to refuse: an option whose value is missing. */
function missingValue(error: unknown): Refusal {
  if (!(error instanceof CommanderError) || error.code !== 'commander.optionMissingArgument') throw error;
  const name = /--[a-z]+/.exec(error.message)?.[0] ?? '--out';
  return { path: name, key: 'command.option-no-value', params: { allowed: ALLOWED[name] ?? KINDS } };
}

/** What the library left over: options that it does not know, and operands. After `--` everything is an operand. */
function splitRest(words: readonly string[], rest: readonly string[]): { readonly operands: readonly string[]; readonly unknown: readonly string[] } {
  const end = words.indexOf('--');
  const after = end < 0 ? 0 : words.length - end - 1;
  const before = rest.slice(0, rest.length - after);
  const isOption = (word: string): boolean => word.startsWith('-') && word !== '-';
  return {
    operands: [...before.filter((word) => !isOption(word) && word !== '--'), ...rest.slice(rest.length - after)],
    unknown: before.filter((word) => isOption(word) && word !== '--'),
  };
}
