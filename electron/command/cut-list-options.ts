import { parseArgs } from 'node:util';
import { inches, type Inches } from '../../core/base/quantity.ts';
import { type Params, type StringKey } from '../../core/text/index.ts';
import { parseLength } from '../../core/units/index.ts';
import { type Refusal } from '../disk/index.ts';

export interface CutListOptions {
  /** As a person gave them. */
  readonly pieces: string;
  readonly out: string;
  /** Stock lengths by section. */
  readonly stock: ReadonlyMap<string, readonly Inches[]>;
  readonly kerf: Inches;
  readonly seconds: number | null;
}

export type CutListAsked = { readonly kind: 'help' } | { readonly kind: 'wrong'; readonly refusals: readonly Refusal[] } | { readonly kind: 'options'; readonly options: CutListOptions };

/** What the saw takes where nobody says: the project file's own default. */
const KERF = inches(0.125);
const LONGEST_STOCK = 960;
const MOST_SECONDS = 3600;

/** Reads the words after the command. All that is wrong with them is told at once. */
export function readCutListOptions(words: readonly string[]): CutListAsked {
  const { values, tokens, positionals } = parseArgs({
    args: [...words], strict: false, tokens: true, allowPositionals: true,
    options: { stock: { type: 'string', multiple: true }, kerf: { type: 'string' }, seconds: { type: 'string' }, out: { type: 'string' }, help: { type: 'boolean', short: 'h' } },
  });
  if (values.help === true) return { kind: 'help' };
  const refusals: Refusal[] = [];
  const refuse = (path: string, key: StringKey, params: Params = {}): void => void refusals.push({ path, key, params });
  const known = new Set(['stock', 'kerf', 'seconds', 'out']);
  for (const token of tokens) if (token.kind === 'option' && !known.has(token.name)) refuse(token.rawName, 'cut-list.unknown');
  const one = (name: 'kerf' | 'seconds' | 'out'): string | null => {
    const value = values[name];
    if (value === undefined) return null;
    if (typeof value === 'string' && value !== '') return value;
    refuse(`--${name}`, 'cut-list.no-value');
    return null;
  };
  const [pieces, ...extra] = positionals;
  if (pieces === undefined) refuse('PIECES.csv', 'cut-list.pieces-asked');
  for (const word of extra) refuse(word, 'cut-list.pieces-extra');
  const out = one('out');
  if (out === null && values.out === undefined) refuse('--out', 'cut-list.out-asked');

  const stock = new Map<string, Inches[]>();
  if (values.stock === undefined) refuse('--stock', 'cut-list.stock-asked');
  for (const value of values.stock ?? []) {
    const read = typeof value === 'string' ? readStock(value) : null;
    if (read === null) refuse('--stock', 'cut-list.stock', { value: String(value) });
    else stock.set(read.section, [...(stock.get(read.section) ?? []), read.length].sort((a, b) => a - b));
  }
  const kerfText = one('kerf');
  const kerf = kerfText === null ? KERF : parseLength(kerfText);
  if (kerf === null || kerf < 0 || kerf > 1) refuse('--kerf', 'cut-list.kerf', { value: kerfText ?? '' });
  const secondsText = one('seconds');
  const seconds = secondsText === null ? null : Number(secondsText);
  if (seconds !== null && !(seconds > 0 && seconds <= MOST_SECONDS)) refuse('--seconds', 'cut-list.seconds', { value: secondsText ?? '' });

  if (refusals.length > 0 || pieces === undefined || out === null || kerf === null) return { kind: 'wrong', refusals };
  return { kind: 'options', options: { pieces, out, stock, kerf, seconds } };
}

/** `pipe 2 sch 40=21 ft`. */
function readStock(text: string): { readonly section: string; readonly length: Inches } | null {
  const at = text.lastIndexOf('=');
  const section = text.slice(0, at).trim();
  const length = at < 0 ? null : parseLength(text.slice(at + 1).trim());
  return section === '' || length === null || length < 1 || length > LONGEST_STOCK ? null : { section, length };
}
