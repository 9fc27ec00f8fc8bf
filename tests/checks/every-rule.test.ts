import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { planPoint } from '../../core/base/points.ts';
import { check, dangerOf, DANGERS, inOrder, ruleIds, rules, type Finding } from '../../core/checks/index.ts';
import { readBrief } from '../../core/brief/index.ts';
import { layOut } from '../../core/layout/index.ts';
import { makeParts } from '../../core/parts/index.ts';
import { type Brief } from '../../core/brief/types.ts';
import { makeBrief } from '../support/brief-builder.ts';
import { randomProjects } from '../support/random-brief.ts';
import { mirrorBrief, randomBriefObject } from '../support/random-brief-object.ts';
import { checked } from './support/checked.ts';

/** Findings of a brief, null where it is refused. */
function findingsFor(brief: Brief): readonly Finding[] | null {
  const laid = layOut(brief);
  if (!laid.ok) return null;
  const made = makeParts(brief, laid.layout);
  return made.ok ? check(brief, laid.layout, made.parts) : null;
}

/** The other hand of everything, the control points with it. */
const mirrored = (brief: Brief): Brief => {
  const { b, c, note } = brief.control;
  return { ...mirrorBrief(brief), control: { b: planPoint(-b.x, b.y), c: c === null ? null : planPoint(-c.x, c.y), note } };
};

describe('every rule', () => {
  it('is answered in the table\'s order, for any brief that is built', () => {
    let built = 0;
    for (let seed = 0; seed < 80; seed++) {
      const brief: Brief = { ...randomBriefObject(seed), control: { b: planPoint(400, -200), c: seed % 3 === 0 ? planPoint(-90, 600) : null, note: '' } };
      const found = findingsFor(brief);
      if (found === null) continue;
      built++;
      expect([...new Set(found.map((finding) => finding.id))], String(seed)).toEqual(ruleIds);
      for (const finding of found) {
        expect(['ok', 'look', rules[finding.id as keyof typeof rules].failsAs]).toContain(finding.result);
        expect(finding.measured === null || Number.isFinite(finding.measured), `${String(seed)} ${finding.id}`).toBe(true);
        expect(finding.where.trim(), finding.id).not.toBe('');
        expect(finding.where + finding.limit).not.toMatch(/[{}]|undefined|NaN/);
      }
    }
    expect(built).toBeGreaterThan(40);
  });

  it('comes out the same for the mirrored project', () => {
    let built = 0;
    for (let seed = 0; seed < 40; seed++) {
      const brief: Brief = { ...randomBriefObject(seed), control: { b: planPoint(400, -200), c: seed % 3 === 0 ? planPoint(-90, 600) : null, note: '' } };
      const [one, other] = [findingsFor(brief), findingsFor(mirrored(brief))];
      expect(one === null, String(seed)).toBe(other === null);
      if (one === null || other === null) continue;
      built++;
      const told = (found: readonly Finding[]) => found.map(({ id, result, limit }) => `${id} ${result} ${limit}`).sort();
      expect(told(other), String(seed)).toEqual(told(one));
      const sums = (found: readonly Finding[]) => ruleIds.map((id) => found.reduce((sum, finding) => sum + (finding.id === id ? finding.measured ?? 0 : 0), 0));
      sums(other).forEach((sum, i) => { expect(sum, `${String(seed)} ${ruleIds[i]!}`).toBeCloseTo(sums(one)[i]!, 5); });
    }
    expect(built).toBeGreaterThan(20);
  });

  it('is printed in the project\'s units and measured in its own', () => {
    const [feet, metric] = [checked(makeBrief()), checked(makeBrief({ units: 'mm' }))];
    expect(metric.map(({ measured }) => measured)).toEqual(feet.map(({ measured }) => measured));
    const told = metric.map(({ where }) => where).join(' ');
    expect(told).not.toMatch(/\d'-|\d"| lb\b|ft2/);
    expect(told).toContain('3658 mm');
  });
});

describe('every rule of a project file', () => {
  const read = (text: string): readonly Finding[] | null => {
    const project = readBrief(text);
    if (!project.ok) throw new Error(JSON.stringify(project.faults));
    return findingsFor(project.brief);
  };

  it.each(['juniper-flat', 'kalgara-yard', 'tight-curve'])('is answered for the example %s', (name) => {
    const found = read(readFileSync(new URL(`../../shared/examples/${name}.penwright.json`, import.meta.url), 'utf8'))!;
    expect([...new Set(found.map((finding) => finding.id))]).toEqual(ruleIds);
  });

  it('is answered for random files with subjects of every kind, a subject never as if it were not there', () => {
    let built = 0;
    for (const random of randomProjects(5, 60)) {
      const project = readBrief(JSON.stringify(random));
      const found = project.ok ? findingsFor(project.brief) : null;
      if (!project.ok || found === null) continue;
      built++;
      expect([...new Set(found.map((finding) => finding.id))]).toEqual(ruleIds);
      // Every subject that a brief can name is drawn and checked.
      for (const { where } of found) expect(where).not.toMatch(/this version/);
    }
    expect(built).toBeGreaterThan(20);
  });
});

describe('findings for a person', () => {
  it('come Fix first, then Look, then OK, none lost, people\'s safety first in each, then the table\'s order', () => {
    const found = checked(makeBrief());
    const groups = inOrder(found);
    expect(groups.map((group) => group.result)).toEqual(['fix', 'look', 'ok']);
    expect(groups.flatMap((group) => group.findings).length).toBe(found.length);
    for (const group of groups) {
      const all = found.filter((finding) => finding.result === group.result);
      const rank = all.map((finding) => DANGERS.indexOf(dangerOf(finding.id)));
      // A stable sort by rank alone: the table's order stays where ranks are equal.
      const sorted = all.map((finding, i) => ({ finding, i })).sort((a, b) => rank[a.i]! - rank[b.i]! || a.i - b.i).map(({ finding }) => finding);
      expect(group.findings).toEqual(sorted);
      expect(group.findings.length).toBeGreaterThan(0);
    }
    expect(inOrder(found.filter((finding) => finding.result === 'ok')).map((group) => group.result)).toEqual(['ok']);
  });
});
