import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { keepMarks } from '../../core/package/keep-marks.ts';

const marks = { 'rail|pipe 2 sch 40|240': 'R1', 'post "q" \\ | é': 'P1' };

describe('marks kept in a project\'s text', () => {
  it('take the place of those that stood there, and nothing else moves', () => {
    const text = '{\n  "title" : "A, {\\"}",\n\t"marks":{"old|1":"R9"}  ,\n  "list": [1.50, 2e1,{"marks":{}}]\n}\n';
    expect(keepMarks(text, marks)).toBe(
      '{\n  "title" : "A, {\\"}",\n\t"marks":{\n    "rail|pipe 2 sch 40|240": "R1",\n    "post \\"q\\" \\\\ | é": "P1"\n  }  ,\n  "list": [1.50, 2e1,{"marks":{}}]\n}\n',
    );
  });

  it('come last where the project has none, with its own indents and line ends', () => {
    expect(keepMarks('{\r\n\t"a": 1\r\n}\r\n', { s: 'R1' })).toBe('{\r\n\t"a": 1,\r\n\t"marks": {\r\n\t\t"s": "R1"\r\n\t}\r\n}\r\n');
    expect(keepMarks('{"a":[1]}', { s: 'R1' })).toBe('{"a":[1], "marks": { "s": "R1" }}');
  });

  it('leave the text alone where it holds them already, or there are none', () => {
    const text = '{ "marks" : { "s":   "R1" }, "a": 1 }';
    expect(keepMarks(text, { s: 'R1' })).toBe(text);
    expect(keepMarks('{"a":1}', {})).toBe('{"a":1}');
    expect(keepMarks('{"a":1,"marks":{}}', {})).toBe('{"a":1,"marks":{}}');
  });

  it('are found behind a name written in escapes', () => {
    expect(keepMarks('{"mar\\u006bs":{},"a":1}', { s: 'R1' })).toBe('{"mar\\u006bs":{ "s": "R1" },"a":1}');
  });

  it('change what the text means in that one field, for any project text', () => {
    const names = fc.oneof(fc.string(), fc.constantFrom('marks', 'title', 'a"b', '\\'));
    const value = fc.jsonValue();
    fc.assert(
      fc.property(fc.dictionary(names, value, { minKeys: 1 }), fc.dictionary(fc.string(), fc.string()), fc.constantFrom(0, 1, 2, '\t', ' \t'), (project, kept, space) => {
        const text = JSON.stringify({ ...project, ...('marks' in project ? { marks: {} } : {}) }, null, space);
        const result = JSON.parse(keepMarks(text, kept)) as Record<string, unknown>;
        const expected = JSON.parse(text) as Record<string, unknown>;
        if (Object.keys(kept).length > 0 || 'marks' in expected) expected['marks'] = JSON.parse(JSON.stringify(kept));
        expect(result).toEqual(expected);
        expect(Object.keys(result)).toEqual(Object.keys(expected));
        expect(keepMarks(keepMarks(text, kept), kept)).toBe(keepMarks(text, kept));
      }),
      { seed: 20260302, numRuns: 500 },
    );
  });
});
