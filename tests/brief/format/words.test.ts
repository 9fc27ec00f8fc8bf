import { describe, expect, test } from 'vitest';
import { choiceOf, FORMAT, helpOf, labelOf, topicOf } from '../../../core/brief/format/index.ts';
import { originOf, ruleIds } from '../../../core/checks/index.ts';
import { fieldOfRule } from '../../../core/checks/rule-fields.ts';
import { choiceWords } from '../../../core/text/en/brief/choices.ts';
import { fieldLabels } from '../../../core/text/en/brief/labels.ts';
import { helpFences } from '../../../core/text/en/brief/help-fences.ts';
import { helpShop } from '../../../core/text/en/brief/help-shop.ts';
import { helpWalk } from '../../../core/text/en/brief/help-walk.ts';
import { helpYard } from '../../../core/text/en/brief/help-yard.ts';

const told = (tell: () => string): string => {
  try {
    return tell();
  } catch {
    return '';
  }
};

describe('every place of the format', () => {
  test('has a label', () => {
    expect(FORMAT.filter((field) => told(() => labelOf(field)) === '').map(({ pattern }) => pattern)).toEqual([]);
  });

  test('has a line of help that is more than its label', () => {
    expect(FORMAT.filter((field) => told(() => helpOf(field)).length <= told(() => labelOf(field)).length).map(({ pattern }) => pattern)).toEqual([]);
  });

  test('says where its help comes from: a rule, common practice, memory, the shop, the drawing, the person, or the file alone', () => {
    const origins = FORMAT.map(({ pattern }) => [pattern, originOf(pattern)] as const);
    expect(origins.filter(([, origin]) => origin === null || (origin.rules.length === 0 && origin.source === null)).map(([pattern]) => pattern)).toEqual([]);
    expect(originOf('nothing.of.it')).toBeNull();
  });

  test('has words for each of its choices but the names of paper', () => {
    const keys = new Set(Object.keys(choiceWords));
    const wordless = FORMAT.flatMap(({ pattern, what }) =>
      (what.kind === 'choice' && pattern !== 'paper' ? what.choices : [])
        .filter((choice) => !keys.has(`choice.${choice}`) && !keys.has(`choice.${topicOf(pattern)}.${choice}`))
        .map((choice) => `${pattern} ${choice}`));
    expect(wordless).toEqual([]);
    const field = (pattern: string) => FORMAT.find((entry) => entry.pattern === pattern)!;
    expect([choiceOf(field('units'), 'in'), choiceOf(field('squeezePad.roof.open[]'), 'in'), choiceOf(field('paper'), 'ANSI B')]).toEqual(['feet and inches', 'where cattle come in', 'ANSI B']);
  });
});

test('no label or help is left of a field that is no more', () => {
  const topics = new Set(FORMAT.map(({ pattern }) => topicOf(pattern)));
  const keys = [fieldLabels, helpFences, helpShop, helpWalk, helpYard].flatMap((words) => Object.keys(words));
  expect(keys.filter((key) => !topics.has(key.replace(/^(field|help)\./, '')))).toEqual([]);
});

test('every rule is told at some field or group, and where one field sets what a rule measures, at that one or under it', () => {
  const toldAt = new Set(FORMAT.flatMap(({ pattern }) => originOf(pattern)?.rules ?? []));
  expect(ruleIds.filter((id) => !toldAt.has(id))).toEqual([]);
  const pattern = (path: string): string => path.replace(/\[\d+\]/g, '[]');
  const silent = ruleIds.filter((id) => {
    const field = fieldOfRule(id);
    if (field === null) return false;
    const there = FORMAT.filter((entry) => `${entry.pattern}.`.startsWith(`${pattern(field)}.`) || entry.pattern.startsWith(`${pattern(field)}[`));
    return !there.some((entry) => originOf(entry.pattern)?.rules.includes(id) === true);
  });
  expect(silent).toEqual([]);
});

test('fences share their topics, alley and chute theirs', () => {
  expect(['fences.crowdPen.height', 'fences.chute.left.height', 'alley.runs[].angle', 'chute.runs', 'fences.chute', 'fences.chute.left'].map(topicOf))
    .toEqual(['fence.height', 'fence.height', 'runs[].angle', 'chute.runs', 'fences.chute', 'fence.left']);
});
