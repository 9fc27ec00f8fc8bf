import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readBrief } from '../../core/brief/index.ts';
import { parseJson } from '../../core/brief/json/parse-json.ts';
import { frozenText, leastProject } from '../support/change-project.ts';

const told = (text: string): readonly string[] => {
  const result = readBrief(text);
  return result.ok ? [] : result.faults.map(({ path, code }) => `${path} ${code}`);
};
/** The least project's text with something put in front of its end. */
const with_ = (more: string): string => `${JSON.stringify(leastProject()).slice(0, -1)},${more}}`;

describe('JSON is read as JSON.parse reads it', () => {
  test('any value, however it is spaced', () => {
    fc.assert(fc.property(fc.json({ maxDepth: 6, noUnicodeString: false }), fc.constantFrom(0, 1, '\t'), (text, space) => {
      if (text.includes('"__proto__"')) return;
      const value: unknown = JSON.parse(text);
      const spaced = JSON.stringify(value, null, space);
      const read = parseJson(spaced);
      expect(read.faults).toEqual([]);
      expect(JSON.stringify(read.value)).toBe(JSON.stringify(JSON.parse(spaced)));
    }), { seed: 3, numRuns: 600 });
  });

  test('and refused where it refuses', () => {
    fc.assert(fc.property(fc.json({ maxDepth: 3 }), fc.nat(), fc.constantFrom(...'{}[]",:\\x0-+.e\n', '\u0000'), (text, place, character) => {
      const at = place % (text.length + 1);
      const broken = text.slice(0, at) + character + text.slice(at);
      let theirs = true;
      try {
        JSON.parse(broken);
      } catch {
        theirs = false;
      }
      const read = parseJson(broken);
      // What is ours alone: a field that is written twice, a number too large, and a name of the language's own.
      const own = ['fault.duplicate', 'fault.huge-number', 'fault.name'];
      const ours = read.value !== undefined && read.faults.every(({ code }) => own.includes(code));
      expect(ours, broken).toBe(theirs);
    }), { seed: 4, numRuns: 4000 });
  });

  test('escapes, pairs and a byte order mark', () => {
    expect(parseJson('\ufeff"a\\u0041\\n\\ud83d\\udc02\\/"').value).toBe('aA\n🐂/');
    expect(parseJson('-0').value).toBe(0);
    expect(parseJson('1.5e3').value).toBe(1500);
  });
});

describe('a slip of the syntax', () => {
  test.each([
    ['', 1, 1, 'fault.json-end', ''], ['{"title": "x"', 1, 14, 'fault.json-end', ''], ['{\n  "title": "x",\n}', 3, 1, 'fault.json', ''], ['{\n "chute": { "width": 28, } }', 2, 26, 'fault.json', 'chute'],
    ['{ "chute": { "runs": [ { "kind" "arc" } ] } }', 1, 33, 'fault.json', 'chute.runs[0]'], ['[1 2]', 1, 4, 'fault.json', ''], ["{'a': 1}", 1, 2, 'fault.json', ''], ['{"a": 01}', 1, 8, 'fault.json', 'a'],
    ['{"a": "tab\there"}', 1, 11, 'fault.json', 'a'], ['{"a": 1} {"b": 2}', 1, 10, 'fault.json', ''], ['// note\n{}', 1, 1, 'fault.json', ''],
  ] as const)('%j is told at line %i, column %i', (text, line, column, code, path) => {
    const result = readBrief(text);
    if (result.ok) throw new Error('read');
    expect(result.faults).toHaveLength(1);
    expect(result.faults[0]).toMatchObject({ path, code, params: { line, column } });
  });
});

describe('what JSON cannot say is told at its field, with the rest', () => {
  test.each([['NaN', 'fault.word'], ['Infinity', 'fault.word'], ['-Infinity', 'fault.word'], ['undefined', 'fault.word'], ['True', 'fault.word'], ['1e999', 'fault.huge-number'], ['-1e999', 'fault.huge-number']])('%s', (word, code) => {
    expect(told(with_(`"footings":{"depth":${word},"diameter":99}`))).toEqual([`footings.depth ${code}`, 'footings.diameter fault.range']);
  });

  test('a field that is written twice', () => {
    expect(told(with_('"units":"in","units":"mm"'))).toEqual(['units fault.duplicate']);
    expect(told(with_('"footings":{"depth":36,"depth":40,"diameter":99}'))).toEqual(['footings.depth fault.duplicate', 'footings.diameter fault.range']);
    expect(told(with_('"shop":{"stock":{"pipe 2 sch 40":[252],"pipe 2 sch 40":[240]}}'))).toEqual(['shop.stock["pipe 2 sch 40"] fault.duplicate']);
  });

  test.each(['{}', '1', 'null', '{"radius":144,"polluted":true}'])('a name of the language\'s own, holding %s', (value) => {
    expect(told(with_(`"__proto__":${value}`))).toEqual(['__proto__ fault.name']);
    expect(told(with_(`"marks":{"__proto__":${value}}`))).toEqual(['marks.__proto__ fault.name']);
    expect(told(with_(`"constructor":${value}`))).toEqual(['constructor fault.unknown']);
    expect(({} as Record<string, unknown>)['polluted']).toBeUndefined();
  });
});

describe('hostile files', () => {
  test('very deep', () => {
    for (const open of ['[', '{"a":']) expect(told(open.repeat(200_000)).map((fault) => fault.split(' ')[1])).toEqual(['fault.deep']);
  });

  test('very long', () => {
    expect(told(`"${'x'.repeat(9_000_000)}"`)).toEqual([' fault.huge']);
    expect(told(with_(`"client":"${'x'.repeat(2_000_000)}"`))).toEqual(['client fault.characters']);
    expect(told(with_(`"${'k'.repeat(100_000)}":1`))).toHaveLength(1);
    expect(told(with_(`"chute":{"width":20,"runs":[${'5,'.repeat(50_000)}5]}`)).length).toBeGreaterThan(50_000);
  });

  test('any text at all is read or refused, never thrown at', () => {
    const sample = frozenText();
    fc.assert(fc.property(fc.oneof(fc.string(), fc.json(), fc.tuple(fc.nat(), fc.nat({ max: 40 }), fc.string({ maxLength: 6 })).map(([at, cut, text]) => {
      const place = at % sample.length;
      return sample.slice(0, place) + text + sample.slice(place + cut);
    })), (text) => {
      const result = readBrief(text);
      expect(result.ok || result.faults.length > 0).toBe(true);
    }), { seed: 5, numRuns: 1500 });
  });

  test('any value in any place is read or refused, never thrown at', () => {
    const paths: (readonly (string | number)[])[] = [];
    const walk = (value: unknown, path: readonly (string | number)[]): void => {
      paths.push(path);
      if (Array.isArray(value)) value.forEach((entry, index) => { walk(entry, [...path, index]); });
      else if (typeof value === 'object' && value !== null) for (const [key, entry] of Object.entries(value)) walk(entry, [...path, key]);
    };
    walk(JSON.parse(frozenText()), []);
    const odd = fc.oneof(fc.jsonValue({ maxDepth: 1 }), fc.constantFrom(null, '', -1, 1e9, [], {}, 'left', '12 ft', 'pipe 2 sch 40', [[]], { kind: 'arc' }));
    fc.assert(fc.property(fc.array(fc.tuple(fc.nat(), odd), { minLength: 1, maxLength: 3 }), (changes) => {
      const project = JSON.parse(frozenText()) as Record<string, unknown>;
      for (const [pick, value] of changes) {
        const path = paths[pick % paths.length] ?? [];
        const around = path.slice(0, -1).reduce<unknown>((group, step) => (typeof group === 'object' && group !== null ? Reflect.get(group, step) : undefined), project);
        if (typeof around === 'object' && around !== null && path.length > 0) Reflect.set(around, path.at(-1) ?? '', value);
      }
      const result = readBrief(JSON.stringify(project));
      expect(result.ok || result.faults.every(({ path }) => path !== '')).toBe(true);
    }), { seed: 6, numRuns: 1000 });
  });
});
