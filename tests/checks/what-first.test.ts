import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readBrief } from '../../core/brief/index.ts';
import { type JsonObject } from '../../core/brief/json/types.ts';
import { dangerOf, DANGERS, fieldOfRule, inOrder, namedRuns, printFigures, ruleIds, rules, type Finding } from '../../core/checks/index.ts';
import { withValue } from '../../renderer/project/json-path.ts';

const finding = (id: string, result: Finding['result'], where = ''): Finding =>
  ({ id, result, measured: null, limit: '', unit: '', trust: 'practice', source: '', where, at: null });

describe('what to fix first', () => {
  it('puts a person before an animal, the steel before the flow of the work, and a Fix before any Look', () => {
    const given = [finding('crowd-sweep', 'look'), finding('see-ahead', 'fix'), finding('load-ramp-slope', 'fix'), finding('foul-post', 'fix'), finding('man-gate', 'fix'), finding('fence-height', 'look')];
    expect(inOrder(given).map((group) => [group.result, ...group.findings.map(({ id }) => id)])).toEqual([
      ['fix', 'man-gate', 'load-ramp-slope', 'foul-post', 'see-ahead'],
      ['look', 'fence-height', 'crowd-sweep'],
    ]);
  });

  it('keeps the order of the table within one rank, and leaves what it is given as it was', () => {
    const given = [finding('lone-animal', 'fix', '1'), finding('man-gate', 'fix', '2'), finding('lone-animal', 'fix', '3')];
    const before = [...given];
    expect(inOrder(given)[0]!.findings.map(({ where }) => where)).toEqual(['1', '2', '3']);
    expect(given).toEqual(before);
  });

  it('never lets a rule that it does not know sink', () => {
    expect(dangerOf('a-rule-of-tomorrow')).toBe(DANGERS[0]);
    expect(dangerOf('constructor')).toBe(DANGERS[0]);
  });

  it('counts every rule that speaks of a fall or of a way out as a person\'s', () => {
    // 29 CFR 1910.28 and 1910.29 protect workers from falls; the escapes are named by the cautions.
    const law = ruleIds.filter((id) => rules[id].source.includes('29 CFR 1910'));
    expect(law.length).toBeGreaterThan(4);
    for (const id of [...law, 'man-gate', 'lone-animal', 'swing-foul']) expect(dangerOf(id), id).toBe('person');
  });
});

describe('the field behind a rule', () => {
  const example = JSON.parse(readFileSync(new URL('../../shared/examples/juniper-flat.penwright.json', import.meta.url), 'utf8')) as JsonObject;

  it('is one that the project file has: a wrong value there is a fault of that very field', () => {
    const fields = ruleIds.map((id) => fieldOfRule(id)).filter((path) => path !== null);
    expect(fields.length).toBeGreaterThan(40);
    for (const path of new Set(fields)) {
      const read = readBrief(JSON.stringify(withValue(example, path, true)));
      if (read.ok) throw new Error(`${path} takes anything`);
      expect(read.faults.map((fault) => fault.path), path).toContain(path);
      expect(read.faults.filter((fault) => fault.path === path).map((fault) => fault.code), path).not.toContain('fault.unknown');
    }
  });

  it('is none where no field plainly sets the figure', () => {
    expect(fieldOfRule('foul-path')).toBeNull();
    expect(fieldOfRule('toString')).toBeNull();
  });
});

describe('the runs that a finding\'s place names', () => {
  const runs = ['alley-1', 'crowd-pen', 'junction', 'chute-1', 'chute-2', 'chute-12'];

  it('are those of its name, or all of a part', () => {
    expect(namedRuns('chute-2, 6\'-0"', runs)).toEqual(['chute-2']);
    expect(namedRuns('alley left and right, crowd-pen right: open', runs)).toEqual(['alley-1', 'crowd-pen']);
    expect(namedRuns('chute, 28" for 1250 lb', runs)).toEqual(['chute-1', 'chute-2', 'chute-12']);
    expect(namedRuns('junction to chute-1, right side', runs)).toEqual(['junction', 'chute-1']);
    expect(namedRuns('none in this project', runs)).toEqual([]);
  });
});

describe('measure and limit', () => {
  it('stand in inches as the rules have them, finer than a sixteenth', () => {
    expect(printFigures({ measured: 23.917, limit: '>= 24', unit: 'in' }, 'in')).toEqual({ measured: '23.917 in', limit: '>= 24 in' });
    expect(printFigures({ measured: null, limit: 'report', unit: 'in' }, 'in')).toEqual({ measured: null, limit: 'report' });
  });

  it('stand in millimeters and square meters in a metric project; 1 in is 25.4 mm', () => {
    expect(printFigures({ measured: 137.795, limit: '120 to 144', unit: 'in' }, 'mm')).toEqual({ measured: '3500 mm', limit: '3048 to 3657.6 mm' });
    expect(printFigures({ measured: 10, limit: '>= 6 / 10 / 12', unit: 'ft2' }, 'mm')).toEqual({ measured: '0.93 m2', limit: '>= 0.56 / 0.93 / 1.11 m2' });
    expect(printFigures({ measured: 0.3, limit: '<= 0.25', unit: 'in' }, 'mm').limit).toBe('<= 6.35 mm');
  });

  it('leave counts, angles and a law\'s own millimeters as they are', () => {
    expect(printFigures({ measured: 2, limit: '<= 1 each 240; ask why', unit: 'in' }, 'mm').limit).toBe('<= 1 each 6096 mm; ask why');
    expect(printFigures({ measured: 30, limit: '25 to 40', unit: 'deg' }, 'mm')).toEqual({ measured: '30 deg', limit: '25 to 40 deg' });
    expect(printFigures({ measured: 1000, limit: '>= 1100', unit: 'mm' }, 'in')).toEqual({ measured: '1000 mm', limit: '>= 1100 mm' });
  });
});
