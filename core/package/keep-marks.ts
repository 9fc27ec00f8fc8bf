import { memberSpans } from './member-spans.ts';

/**
 * A project's text with its `marks` completed, everything else as it was written: spaces, order, figures and line ends. The text is
 * returned unchanged where it holds those marks already. Throws where it is no JSON object: the brief was read from it.
 */
export function keepMarks(text: string, marks: Readonly<Record<string, string>>): string {
  const spans = memberSpans(text);
  const entries = Object.entries(marks);
  const held = spans.members.findLast((member) => member.name === 'marks');
  if (held !== undefined) {
    const before: unknown = JSON.parse(text.slice(held.from, held.to));
    if (JSON.stringify(before) === JSON.stringify(marks)) return text;
  } else if (entries.length === 0) return text;
  const newline = text.includes('\r\n') ? '\r\n' : '\n';
  const indent = /\r?\n([ \t]*)$/.exec(text.slice(0, spans.members[0]?.start ?? 0))?.[1] ?? null;
  const value = layOutMarks(entries, indent, newline);
  if (held !== undefined) return text.slice(0, held.from) + value + text.slice(held.to);
  const end = spans.members.at(-1)?.to;
  if (end === undefined) throw new Error('a project without a field has no place for marks');
  const lead = indent === null ? ', ' : `,${newline}${indent}`;
  return `${text.slice(0, end)}${lead}"marks": ${value}${text.slice(end)}`;
}

/** One mark a line where the project has its fields on lines of their own (`indent` before each), else all in one. */
function layOutMarks(entries: readonly (readonly [string, string])[], indent: string | null, newline: string): string {
  const pairs = entries.map(([signature, mark]) => `${JSON.stringify(signature)}: ${JSON.stringify(mark)}`);
  if (pairs.length === 0) return '{}';
  if (indent === null) return `{ ${pairs.join(', ')} }`;
  const step = indent === '' ? '  ' : indent;
  return `{${newline}${pairs.map((pair) => indent + step + pair).join(`,${newline}`)}${newline}${indent}}`;
}
