import { describe, expect, it } from 'vitest';
import { limitText, ruleIds, rules } from '../../core/checks/index.ts';
import { say } from '../../core/text/index.ts';
import { meets } from '../../core/checks/rules/limit.ts';
import { agreed } from './support/rules-as-agreed.ts';

describe('the table of rules', () => {
  it('holds every rule as agreed, in that order', () => {
    expect(ruleIds.map((id) => [id, limitText(rules[id].limit), rules[id].unit, rules[id].failsAs, rules[id].trust])).toEqual(agreed);
  });

  it('has words for what each rule asks and for how far to trust it', () => {
    for (const id of ruleIds) {
      expect(say(`rule.${id}`).length).toBeGreaterThan(5);
      expect(say(`trust.${rules[id].trust}`).length).toBeGreaterThan(5);
    }
  });

  it('names a source wherever a rule was read, and none for common practice', () => {
    for (const id of ruleIds) {
      const { trust, source } = rules[id];
      if (trust === 'read' || trust === 'second') expect(source, id).not.toBe('');
      if (trust === 'practice' || trust === 'memory') expect(source, id).toBe('');
    }
  });
});

describe('meeting a limit', () => {
  it('takes the limit itself and what is within rounding of it, no more', () => {
    expect(meets({ is: 'least', value: 120 }, 120 - 1e-7)).toBe(true);
    expect(meets({ is: 'least', value: 120 }, 120 - 1e-5)).toBe(false);
    expect(meets({ is: 'most', value: 0.25 }, 0.25 + 1e-7)).toBe(true);
    expect(meets({ is: 'most', value: 0.25 }, 0.2501)).toBe(false);
    expect([119.99, 120, 131, 144, 144.01].map((value) => meets({ is: 'range', low: 120, high: 144 }, value))).toEqual([false, true, true, true, false]);
    expect([15.9, 16, 20, 20.1].map((value) => meets({ is: 'near', by: 2, of: 18 }, value))).toEqual([false, true, true, false]);
    expect([179.99, 180, 180.01].map((value) => meets({ is: 'equal', value: 180 }, value))).toEqual([false, true, false]);
  });

  it('is never met by what is not a number', () => {
    for (const limit of [{ is: 'least', value: -1 }, { is: 'most', value: 1 }, { is: 'range', low: -1, high: 1 }, { is: 'near', by: 9, of: 0 }] as const) {
      expect(meets(limit, NaN)).toBe(false);
    }
  });
});
