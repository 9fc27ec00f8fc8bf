import { type FaultCode, type PathFault } from '../path-fault.ts';
import { showValue } from './show-value.ts';

/** A place in a JSON text with the field it stands in. */
export interface Reader {
  readonly faults: PathFault[];
  /** The next character; empty at the end. */
  peek(): string;
  take(): string;
  space(): void;
  match(pattern: RegExp): string | null;
  expect(character: string): void;
  /** Takes an opening bracket; true where its closing one follows at once. */
  open(bracket: string, closing: string): boolean;
  /** After a member: true at a comma, false at the closing bracket. */
  more(closing: string): boolean;
  within<T>(step: string | number, read: () => T): T;
  depth(): number;
  fault(code: FaultCode, params: PathFault['params']): void;
  /** Notes a slip of the syntax here and ends the reading. */
  fail(): never;
  /** Ends the reading; what was wrong is noted already. */
  stop(): never;
  /** Reads until done or ended. */
  run<T>(read: () => T): T | undefined;
}

/** Thrown and caught here alone, to leave a nest of calls. */
const ended = new Error('reading ended');

export function createReader(text: string): Reader {
  const faults: PathFault[] = [];
  const path: (string | number)[] = [];
  let at = 0;
  const reader: Reader = {
    faults,
    peek: () => text.charAt(at),
    take: () => text.charAt(at++),
    space() {
      while (/[ \t\r\n]/.test(text.charAt(at))) at += 1;
    },
    match(pattern) {
      pattern.lastIndex = at;
      const found = pattern.exec(text);
      if (found === null) return null;
      at += found[0].length;
      return found[0];
    },
    expect(character) {
      reader.space();
      if (text.charAt(at) !== character) reader.fail();
      at += 1;
    },
    open(bracket, closing) {
      reader.expect(bracket);
      reader.space();
      if (text.charAt(at) !== closing) return false;
      at += 1;
      return true;
    },
    more(closing) {
      reader.space();
      const next = reader.take();
      if (next !== ',' && next !== closing) {
        at -= next.length;
        reader.fail();
      }
      return next === ',';
    },
    within(step, read) {
      path.push(step);
      const value = read();
      path.pop();
      return value;
    },
    depth: () => path.length,
    fault(code, params) {
      faults.push({ path: [...path], code, params });
    },
    fail() {
      const before = text.slice(0, at).split('\n');
      const found = at >= text.length ? '' : showValue(text.charAt(at));
      reader.fault(found === '' ? 'fault.json-end' : 'fault.json', {
        line: before.length, column: (before.at(-1) ?? '').length + 1, found,
      });
      throw ended;
    },
    stop() {
      throw ended;
    },
    run(read) {
      try {
        return read();
      } catch (error) {
        if (error === ended) return undefined;
        throw error;
      }
    },
  };
  return reader;
}
