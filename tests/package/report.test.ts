import { readFileSync } from 'node:fs';
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readBrief } from '../../core/brief/index.ts';
import { check, inOrder } from '../../core/checks/index.ts';
import { clipLine } from '../../core/drawings/clip-line.ts';
import { type Sheet, strokesOf } from '../../core/drafting/primitives.ts';
import { layOut } from '../../core/layout/index.ts';
import { type Report, reportSheets } from '../../core/package/report/report-sheets.ts';
import { makeParts } from '../../core/parts/index.ts';
import { drawingFont as FONT } from '../support/drawn.ts';
import { randomProjects } from '../support/random-brief.ts';
import { sheetBreaches } from '../support/sheet-breaches.ts';

function reportOf(text: string): Report | null {
  const read = readBrief(text);
  if (!read.ok) return null;
  const laid = layOut(read.brief);
  const made = laid.ok ? makeParts(read.brief, laid.layout) : laid;
  if (!laid.ok || !made.ok) return null;
  return { brief: read.brief, layout: laid.layout, findings: check(read.brief, laid.layout, made.parts), defaults: read.defaults };
}
const example = (name: string): Report => reportOf(readFileSync(new URL(`../../shared/examples/${name}.penwright.json`, import.meta.url), 'utf8'))!;
const textOf = (sheets: readonly Sheet[]): string =>
  sheets.flatMap((sheet) => strokesOf(sheet.primitives)).flatMap((stroke) => (stroke.kind === 'text' ? [stroke.text] : [])).join(' ');

describe('the report to read', () => {
  it.each(['juniper-flat', 'kalgara-yard', 'tight-curve'])('is legible, page for page: %s', (name) => {
    for (const sheet of reportSheets(example(name), FONT)) expect(sheetBreaches(sheet, FONT), sheet.number).toEqual([]);
  });

  it('is legible for random projects, whatever they find', () => {
    let told = 0;
    for (const project of randomProjects(23, 8)) {
      const report = reportOf(JSON.stringify(project));
      if (report === null) continue;
      told++;
      for (const sheet of reportSheets(report, FONT)) expect(sheetBreaches(sheet, FONT), sheet.number).toEqual([]);
    }
    expect(told).toBeGreaterThan(4);
  });

  it('says every finding, what to fix first and what may hurt a person before the rest, with the cautions and the capacity', () => {
    const report = example('tight-curve');
    const text = textOf(reportSheets(report, FONT));
    let from = 0;
    for (const { result, findings } of inOrder(report.findings)) {
      if (result === 'ok') continue;
      for (const { id } of findings) {
        const at = text.indexOf(`(${id})`, from + 1);
        expect(at, id).toBeGreaterThan(from);
        from = at;
      }
    }
    for (const { id } of report.findings) expect(text).toContain(`(${id})`);
    expect(text).toMatch(/Local codes and licensed practice come first.*last animal alone.*buried lines.*Vent sealed pipe/);
    expect(text).toMatch(/at three quarters full/);
  });

  it('has a ring for each finding to act on that has a place, and no more', () => {
    const report = example('juniper-flat');
    const rings = reportSheets(report, FONT).flatMap((sheet) => strokesOf(sheet.primitives)).filter((stroke) => stroke.kind === 'circle');
    expect(rings.length).toBe(report.findings.filter(({ result, at }) => result !== 'ok' && at !== null).length);
    expect(rings.length).toBeGreaterThan(3);
  });
});

describe('a line cut by a frame', () => {
  const frame = { x: 1, y: 2, width: 3, height: 5 };
  const inside = ({ x, y }: { readonly x: number; readonly y: number }): boolean => x >= 1 - 1e-9 && x <= 4 + 1e-9 && y >= 2 - 1e-9 && y <= 7 + 1e-9;

  it('keeps just what lies inside, by points along it', () => {
    const coordinate = fc.double({ min: -3, max: 9, noNaN: true });
    fc.assert(fc.property(coordinate, coordinate, coordinate, coordinate, (ax, ay, bx, by) => {
      const cut = clipLine({ x: ax, y: ay }, { x: bx, y: by }, frame);
      for (let i = 0; i <= 50; i++) {
        const point = { x: ax + ((bx - ax) * i) / 50, y: ay + ((by - ay) * i) / 50 };
        if (!inside(point)) continue;
        // A point inside lies on the part that was kept, or the line only touches the frame.
        const [a, b] = cut ?? [point, point];
        const along = Math.hypot(a.x - point.x, a.y - point.y) + Math.hypot(b.x - point.x, b.y - point.y);
        expect(along).toBeCloseTo(Math.hypot(a.x - b.x, a.y - b.y), 6);
      }
      for (const end of cut ?? []) expect(inside(end)).toBe(true);
    }), { numRuns: 300, seed: 7 });
    expect(clipLine({ x: 0, y: 3 }, { x: 9, y: 3 }, frame)).toEqual([{ x: 1, y: 3 }, { x: 4, y: 3 }]);
    expect(clipLine({ x: 0, y: 0 }, { x: 9, y: 1 }, frame)).toBeNull();
  });
});
