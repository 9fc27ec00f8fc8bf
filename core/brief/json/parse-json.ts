import { type PathFault } from '../path-fault.ts';
import { createReader, type Reader } from './reader.ts';
import { readString } from './read-string.ts';
import { type Json, type JsonObject } from './types.ts';

/** Far over the largest project; a text beyond it is not one. */
const LONGEST_TEXT = 8_000_000;
const DEEPEST = 32;

function readWord(reader: Reader): Json {
  const word = reader.match(/-?[A-Za-z][A-Za-z0-9]*/y);
  if (word === null) return reader.fail();
  if (word === 'true') return true;
  if (word === 'false') return false;
  if (word === 'null') return null;
  // NaN, Infinity and the like: a fault at its own field, and the reading goes on.
  reader.fault('fault.word', { value: word.slice(0, 40) });
  return null;
}

function readNumber(reader: Reader): Json {
  const text = reader.match(/-?(?:0|[1-9][0-9]*)(?:\.[0-9]+)?(?:[eE][+-]?[0-9]+)?/y);
  if (text === null) return readWord(reader);
  if (/[0-9A-Za-z.]/.test(reader.peek())) return reader.fail();
  const value = Number(text);
  if (!Number.isFinite(value)) reader.fault('fault.huge-number', { value: text.slice(0, 40) });
  return value + 0;
}

function readList(reader: Reader): Json {
  const list: Json[] = [];
  if (reader.open('[', ']')) return list;
  do {
    list.push(reader.within(list.length, () => readValue(reader)));
  } while (reader.more(']'));
  return list;
}

function readObject(reader: Reader): JsonObject {
  const object = Object.create(null) as Record<string, Json>;
  if (reader.open('{', '}')) return object;
  do {
    reader.space();
    const key = readString(reader);
    reader.expect(':');
    reader.within(key, () => {
      if (key === '__proto__') reader.fault('fault.name', {});
      else if (key in object) reader.fault('fault.duplicate', {});
      object[key] = readValue(reader);
    });
  } while (reader.more('}'));
  return object;
}

function readValue(reader: Reader): Json {
  reader.space();
  const next = reader.peek();
  if (reader.depth() > DEEPEST) {
    reader.fault('fault.deep', { greatest: DEEPEST });
    return reader.stop();
  }
  if (next === '"') return readString(reader);
  if (next === '[') return readList(reader);
  if (next === '{') return readObject(reader);
  return readNumber(reader);
}

export interface ParsedJson {
  readonly value: Json | undefined;
  readonly faults: readonly PathFault[];
}

/**
 * Reads a JSON text (RFC 8259) whose faults a person can find: a slip of the syntax with its line, column and field, a field that is
 * written twice, a figure too large to hold. `value` is undefined where the text cannot be read at all. Safe on text of any size or depth.
 */
export function parseJson(text: string): ParsedJson {
  if (text.length > LONGEST_TEXT) {
    return { value: undefined, faults: [{ path: [], code: 'fault.huge', params: { greatest: LONGEST_TEXT } }] };
  }
  const reader = createReader(text.startsWith('\ufeff') ? text.slice(1) : text);
  const value = reader.run(() => {
    const read = readValue(reader);
    reader.space();
    if (reader.peek() !== '') reader.fail();
    return read;
  });
  return { value, faults: reader.faults };
}
