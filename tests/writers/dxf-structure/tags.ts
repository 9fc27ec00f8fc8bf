/** Lines to tags: form of the file, of group codes and of values. */

export interface Tag {
  readonly code: number;
  readonly value: string;
  /** Of the group code, from 1. */
  readonly line: number;
}

/** Longest text in a file of this version. */
const LONGEST = 2049;

/** Reads tags, with what is wrong in their form. */
export function readTags(text: string): { tags: Tag[]; breaches: string[] } {
  const breaches: string[] = [];
  const ending = text.includes('\r\n') ? '\r\n' : '\n';
  const lines = text.split(ending);
  if (lines.pop() !== '') breaches.push('the last line is not ended');
  if (lines.length % 2 !== 0) breaches.push(`odd number of lines: ${String(lines.length)}`);
  const tags: Tag[] = [];
  for (let i = 0; i + 1 < lines.length; i += 2) {
    const tag = { code: Number(lines[i]), value: lines[i + 1] ?? '', line: i + 1 };
    const wrong = wrongForm(lines[i] ?? '', tag);
    if (wrong !== null) breaches.push(`line ${String(i + 1)}: ${wrong}`);
    tags.push(tag);
  }
  return { tags, breaches };
}

function wrongForm(code: string, { value, code: number }: Tag): string | null {
  if (!/^ *\d{1,4}$/.test(code)) return `group code is no number: ${JSON.stringify(code)}`;
  if (!/^[\x20-\x7e]*$/.test(value)) return `value is not printable ASCII: ${JSON.stringify(value)}`;
  if (value.length > LONGEST) return `value of ${String(value.length)} characters`;
  const kind = kindOf(number);
  if (kind === null) return `group code ${code} is not in the reference`;
  if (kind !== 'text' && !FORM[kind].test(value)) return `group ${code} is no ${kind}: ${JSON.stringify(value)}`;
  return null;
}

type Kind = 'text' | 'real' | 'integer' | 'flag' | 'handle';

const FORM = {
  real: /^(?!-0(\.0*)?$)-?(0|[1-9]\d*)(\.\d+)?$/,
  integer: /^(?!-0$)-?(0|[1-9]\d*)$/,
  flag: /^[01]$/,
  handle: /^(0|[1-9A-F][0-9A-F]*)$/,
} as const;

/** Kinds by ranges of group codes (reference, group code value types). */
const RANGES: readonly (readonly [from: number, to: number, kind: Kind])[] = [
  [0, 4, 'text'], [5, 5, 'handle'], [6, 9, 'text'], [10, 59, 'real'], [60, 79, 'integer'], [90, 99, 'integer'], [100, 102, 'text'],
  [105, 105, 'handle'], [110, 149, 'real'], [160, 179, 'integer'], [210, 239, 'real'], [270, 289, 'integer'], [290, 299, 'flag'],
  [300, 309, 'text'], [310, 319, 'text'], [320, 369, 'handle'], [370, 389, 'integer'], [390, 399, 'handle'], [400, 409, 'integer'],
  [410, 419, 'text'], [999, 999, 'text'], [1000, 1004, 'text'], [1005, 1005, 'handle'], [1010, 1059, 'real'], [1060, 1071, 'integer'],
];

const kindOf = (code: number): Kind | null => RANGES.find(([from, to]) => code >= from && code <= to)?.[2] ?? null;

/** Whether a group points at a handle: pointers and owners, but not the handles' own groups. */
export const isPointer = (code: number): boolean => (code >= 320 && code <= 369) || (code >= 390 && code <= 399) || code === 1005;
