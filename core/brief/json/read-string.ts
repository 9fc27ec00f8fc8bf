import { type Reader } from './reader.ts';

const ESCAPES: Readonly<Record<string, string>> = { '"': '"', '\\': '\\', '/': '/', b: '\b', f: '\f', n: '\n', r: '\r', t: '\t' };

function readEscape(reader: Reader): string {
  const code = reader.match(/u[0-9a-fA-F]{4}/y);
  if (code !== null) return String.fromCharCode(parseInt(code.slice(1), 16));
  const character = ESCAPES[reader.peek()];
  if (character === undefined) return reader.fail();
  reader.take();
  return character;
}

/** A JSON string at the reader's place, its escapes undone. */
export function readString(reader: Reader): string {
  reader.expect('"');
  let text = '';
  for (;;) {
    text += reader.match(/[^"\\\u0000-\u001f]+/y) ?? '';
    const next = reader.peek();
    if (next === '"') {
      reader.take();
      return text;
    }
    if (next !== '\\') return reader.fail();
    reader.take();
    text += readEscape(reader);
  }
}
