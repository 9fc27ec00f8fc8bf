import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readBrief, type Brief } from '../../core/brief/index.ts';
import { layOut } from '../../core/layout/index.ts';
import { mirrorProject } from '../support/mirror-project.ts';
import { projectArbitrary, randomProjects, type ProjectJson } from '../support/random-brief.ts';

const briefOf = (project: ProjectJson): Brief | null => {
  const result = readBrief(JSON.stringify(project));
  return result.ok ? result.brief : null;
};

describe('random projects', () => {
  const projects = randomProjects(20260302, 400);
  const briefs = projects.map(briefOf).filter((brief) => brief !== null);

  test('are the same from the same seed', () => {
    expect(randomProjects(20260302, 20)).toEqual(projects.slice(0, 20));
    expect(randomProjects(1, 20)).not.toEqual(projects.slice(0, 20));
  });

  test('come through the door, nearly all', () => {
    expect(briefs.length).toBeGreaterThanOrEqual(0.95 * projects.length);
  });

  test('can be set out, at least 80 of 100', () => {
    expect(briefs.filter((brief) => layOut(brief).ok).length).toBeGreaterThanOrEqual(0.8 * projects.length);
  });

  test('reach the ends of the ranges', () => {
    const ends = (of: (brief: Brief) => number): readonly [number, number] => [Math.min(...briefs.map(of)), Math.max(...briefs.map(of))];
    expect(ends(({ crowdPen }) => crowdPen.radius)).toEqual([72, 240]);
    expect(ends(({ chute }) => chute.width)).toEqual([14, 40]);
    expect(ends(({ fences }) => fences.crowdPen.height)).toEqual([36, 96]);
    expect(ends(({ fences }) => fences.crowdPen.rails)[0]).toBe(2);
    expect(ends(({ fences }) => fences.crowdPen.postSpacing)[1]).toBe(144);
    expect(ends(({ footings }) => footings.depth)).toEqual([12, 120]);
    expect(ends(({ shop }) => shop.grip)).toEqual([0, 48]);
    const [fewest, most] = ends(({ chute }) => chute.runs.length);
    expect([fewest, most > 20]).toEqual([1, true]);
    expect(ends(({ chute }) => Math.max(...chute.runs.map((run) => (run.kind === 'arc' ? run.insideRadius : 60))))[1]).toBeGreaterThan(800);
  });

  test('have every hand, build, unit and paper, and every subject, catwalks beside ramps too', () => {
    const seen = <T>(of: (brief: Brief) => T): number => new Set(briefs.map(of)).size;
    expect(seen(({ crowdPen }) => crowdPen.hand)).toBe(2);
    expect(seen(({ fences }) => fences.chute.left.construction)).toBe(2);
    expect(seen(({ units }) => units)).toBe(2);
    expect(seen(({ paper }) => paper)).toBe(10);
    expect(seen(({ fences }) => fences.crowdPen.rail.shape)).toBe(2);
    const having = (has: (brief: Brief) => boolean): number => briefs.filter(has).length;
    for (const subject of ['openings', 'catwalks', 'ramps', 'sortPens', 'holdingPens'] as const) expect([subject, having((brief) => brief[subject].length > 0) > 20]).toEqual([subject, true]);
    for (const subject of ['squeezePad', 'returnAlley'] as const) expect([subject, having((brief) => brief[subject] !== null) > 20]).toEqual([subject, true]);
    expect(having(({ catwalks }) => catwalks.some(({ run }) => /^(load|unload)-/.test(run)))).toBeGreaterThan(10);
  });
});

test('a project from fast-check is as good, and one mirrored twice is itself', () => {
  const size = (value: unknown): string => JSON.stringify(briefOf(value as ProjectJson));
  fc.assert(fc.property(projectArbitrary, (project) => {
    const once = mirrorProject(project);
    expect(size(mirrorProject(once))).toBe(size(project));
    expect(briefOf(once) === null).toBe(briefOf(project) === null);
  }), { seed: 8, numRuns: 60 });
});

test('a mirrored project has every hand and side the other way', () => {
  const [project] = randomProjects(4, 1);
  const [brief, mirrored] = [project, mirrorProject(project!)].map((json) => briefOf(json!));
  expect(mirrored?.crowdPen.hand).not.toBe(brief?.crowdPen.hand);
  expect(mirrored?.control.b.x).toBe(-(brief?.control.b.x ?? NaN));
  // Where its settings are said is of the other side too.
  expect({ ...mirrored?.fences.chute.left, path: '', postSpacingPath: '' }).toEqual({ ...brief?.fences.chute.right, path: '', postSpacingPath: '' });
});
