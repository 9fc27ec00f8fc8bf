/** Where a field of an object stands in a text: its name's first quote, and its value from and to. */
export interface MemberSpan {
  readonly name: string;
  readonly start: number;
  readonly from: number;
  readonly to: number;
}

/**
 * The fields of the outermost object of a JSON text, with their places. Throws where the text is not such an object; what the
 * values hold is not looked into, for the text has been read before.
 */
export function memberSpans(text: string): { readonly members: readonly MemberSpan[] } {
  const members: MemberSpan[] = [];
  let at = skipSpace(text, 0);
  expect(text, at, '{');
  at = skipSpace(text, at + 1);
  while (text[at] !== '}') {
    const start = at;
    const nameEnd = skipString(text, at);
    const name = JSON.parse(text.slice(start, nameEnd)) as string;
    at = skipSpace(text, nameEnd);
    expect(text, at, ':');
    const from = skipSpace(text, at + 1);
    const to = skipValue(text, from);
    members.push({ name, start, from, to });
    at = skipSpace(text, to);
    if (text[at] === ',') at = skipSpace(text, at + 1);
    else expect(text, at, '}');
  }
  return { members };
}

function skipSpace(text: string, at: number): number {
  let next = at;
  while (/[ \t\r\n]/.test(text[next] ?? '')) next += 1;
  return next;
}

function skipString(text: string, at: number): number {
  expect(text, at, '"');
  for (let next = at + 1; next < text.length; next += 1) {
    if (text[next] === '\\') next += 1;
    else if (text[next] === '"') return next + 1;
  }
  throw new Error(`no end to the text at ${String(at)}`);
}

/** Past a value: a text, a nest of brackets, or a word or figure. */
function skipValue(text: string, at: number): number {
  if (text[at] === '"') return skipString(text, at);
  let depth = 0;
  let next = at;
  for (;;) {
    const char = text[next];
    if (char === undefined) throw new Error(`no end to the value at ${String(at)}`);
    if (char === '"') {
      next = skipString(text, next);
      continue;
    }
    if (depth === 0 && /[,}\] \t\r\n]/.test(char)) return next;
    if (char === '{' || char === '[') depth += 1;
    if (char === '}' || char === ']') {
      depth -= 1;
      if (depth === 0) return next + 1;
    }
    next += 1;
  }
}

function expect(text: string, at: number, char: string): void {
  if (text[at] !== char) throw new Error(`${JSON.stringify(char)} wanted at ${String(at)}, not ${JSON.stringify(text[at] ?? 'the end')}`);
}
