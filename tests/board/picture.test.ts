/** The live plan: no text touches another or a line, its steel is there with its keys, its sizes read what they measure. */
import { describe, expect, it } from 'vitest';
import { boardPicture, handles, type BoardOptions, type BoardPicture } from '../../core/board/index.ts';
import { strokesOf, type Sheet } from '../../core/drafting/primitives.ts';
import { type DrawInput } from '../../core/drawings/index.ts';
import { layOut } from '../../core/layout/index.ts';
import { makeParts } from '../../core/parts/index.ts';
import { dimensionBreaches } from '../support/dimension-breaches.ts';
import { drawingFont, drawSound, exampleText, EXAMPLES } from '../support/drawn.ts';
import { extentOf, strokePoints } from '../support/paper-shapes.ts';
import { randomBriefObject } from '../support/random-brief-object.ts';
import { textBreaches } from '../support/sheet-breaches.ts';

const ALL: BoardOptions = { scale: 1 / 60, sizes: true, marks: true, sights: true, dragged: null };
const SCALES = [1 / 400, 1 / 96, 1 / 40, 1 / 8, 1];

const inputOf = (seed: number): DrawInput | null => {
  const brief = randomBriefObject(seed);
  const laid = layOut(brief);
  if (!laid.ok) return null;
  const made = makeParts(brief, laid.layout);
  return made.ok ? { brief, layout: laid.layout, parts: made.parts, font: drawingFont } : null;
};
const inputs = Array.from({ length: 60 }, (_, seed) => inputOf(seed)).filter((input) => input !== null);
const example = (name: (typeof EXAMPLES)[number]): DrawInput => ({ ...drawSound(exampleText(name)), font: drawingFont });

function breachesOf(input: DrawInput, picture: BoardPicture): string[] {
  const strokes = strokesOf(picture.primitives);
  const view = { id: 'board', title: '', scale: picture.scale, scaleText: '', at: { x: 0, y: 0 }, box: picture.box };
  const sheet = { units: input.brief.units, views: [view], primitives: picture.primitives } as unknown as Sheet;
  const { x, y, width, height } = picture.box;
  const outside = strokes.filter((stroke) => {
    const { x0, x1, y0, y1 } = extentOf(strokePoints(stroke, drawingFont));
    return !(x0 >= x - 1e-6 && y0 >= y - 1e-6 && x1 <= x + width + 1e-6 && y1 <= y + height + 1e-6);
  });
  return [
    ...textBreaches(strokes, drawingFont),
    ...picture.primitives.flatMap((item) => (item.kind === 'dimension' ? dimensionBreaches(sheet, item) : [])),
    ...outside.map((stroke) => `a ${stroke.kind} outside the box`),
    ...strokes.flatMap((stroke) => (stroke.kind === 'text' && stroke.height !== 0.13 ? [`"${stroke.text}" ${String(stroke.height)} high`] : [])),
  ];
}

describe('the board', () => {
  it('of random briefs, at any zoom, has no text that touches another or a line, and sizes that read what they measure', () => {
    expect(inputs.length).toBeGreaterThan(25);
    inputs.forEach((input, i) => {
      const scale = SCALES[i % SCALES.length]!;
      expect(breachesOf(input, boardPicture(input, { ...ALL, scale })), `brief ${String(i)} at ${String(scale)}`).toEqual([]);
    });
  });

  it.each(EXAMPLES)('of %s has none at any zoom, whatever is dragged', (name) => {
    const input = example(name);
    for (const scale of SCALES) expect(breachesOf(input, boardPicture(input, { ...ALL, scale })), String(scale)).toEqual([]);
    for (const { path } of handles(input.brief, input.layout)) expect(breachesOf(input, boardPicture(input, { ...ALL, dragged: path })), path).toEqual([]);
  });

  it('shows each post, closing plate and skin, and the highest rails, by the key of its piece', () => {
    for (const input of inputs) {
      const drawn = new Set(boardPicture(input, ALL).primitives.flatMap((item) => ('piece' in item ? [item.piece] : [])));
      const rows = new Map(input.layout.fences.map((fence) => [`${fence.run} ${fence.side}`, fence.section.rows.length]));
      const lowest = (key: string): boolean => key.endsWith('/0');
      const wanted = input.parts.pieces.filter(({ kind, key, place, run, side }) => {
        if (kind === 'post' || kind === 'plate') return true;
        if (kind === 'skin') return lowest(key);
        return place.kind === 'rail' && place.row + 1 === rows.get(`${run} ${side}`);
      });
      expect(wanted.filter(({ key }) => !drawn.has(key)).map(({ key }) => key)).toEqual([]);
      const known = new Set(input.parts.pieces.map(({ key }) => key));
      expect([...drawn].filter((key) => !known.has(key))).toEqual([]);
    }
  });

  it('says every run by name and every station where there is room', () => {
    const input = example('juniper-flat');
    const said = boardPicture(input, ALL).primitives.flatMap((item) => (item.kind === 'callout' ? [item.text] : []));
    for (const run of input.layout.runs) if (run.length > 1) expect(said).toContain(run.name);
    expect(said).toContain('sta 0"');
  });

  it('draws of a drag the one size that is dragged, and the names of the runs', () => {
    const input = example('juniper-flat');
    const { primitives } = boardPicture(input, { ...ALL, dragged: 'crowdPen.radius' });
    expect(primitives.flatMap((item) => (item.kind === 'dimension' ? [item.text] : []))).toEqual([`R 12'-0"`]);
    expect(primitives.flatMap((item) => (item.kind === 'callout' ? [item.text] : [])).sort()).toEqual(input.layout.runs.filter((run) => run.length > 1).map((run) => run.name).sort());
    const text = JSON.parse(exampleText('juniper-flat')) as { ramps: object[]; catwalks: object[] };
    text.ramps[1] = { ...text.ramps[1], at: [900, -200], heading: 30 };
    text.catwalks[0] = { ...text.catwalks[0], from: 24 };
    const placed: DrawInput = { ...drawSound(JSON.stringify(text)), font: drawingFont };
    for (const { brief, layout, ...rest } of [input, placed]) {
      for (const { path, value } of handles(brief, layout)) {
        const sizes = boardPicture({ brief, layout, ...rest }, { ...ALL, dragged: path }).primitives.filter((item) => item.kind === 'dimension');
        // Nothing lies between a start and itself.
        const none = value === 0 && path === 'catwalks[0].from';
        expect(sizes.length, path).toBe(none ? 0 : 1);
      }
    }
  });

  it('marks one post of a fence from far off, and from close by every piece that it draws whole', () => {
    const input = example('juniper-flat');
    const marked = (scale: number): Set<string> =>
      new Set(boardPicture(input, { ...ALL, scale }).primitives.flatMap((item) => (item.kind === 'callout' ? item.pieces : [])));
    expect([...marked(1 / 120)].filter((key) => !key.startsWith('post/'))).toEqual([]);
    const close = marked(1 / 8);
    const kinds = (kind: string): readonly string[] => input.parts.pieces.filter((piece) => piece.kind === kind).map((piece) => piece.key);
    for (const kind of ['post', 'rail', 'skin', 'plate']) expect(kinds(kind).some((key) => close.has(key)), kind).toBe(true);
    expect(kinds('post').filter((key) => close.has(key)).length).toBeGreaterThan(kinds('post').length * 0.8);
    const marks = new Map(input.parts.pieces.map(({ key, mark }) => [key, mark]));
    for (const item of boardPicture(input, { ...ALL, scale: 1 / 8 }).primitives) {
      if (item.kind === 'callout' && item.pieces.length > 0) expect(item.text).toBe(marks.get(item.pieces[0]!));
    }
  });

  it('leaves out what is not asked for', () => {
    const input = example('juniper-flat');
    const kinds = (options: BoardOptions): string[] => boardPicture(input, options).primitives.map((item) => item.kind);
    expect(kinds({ ...ALL, sizes: false })).not.toContain('dimension');
    const bare = boardPicture(input, { ...ALL, marks: false }).primitives;
    expect(bare.filter((item) => item.kind === 'callout' && item.pieces.length > 0)).toEqual([]);
    // Words and sizes may give way to the sight lines: the lines themselves are counted.
    const lines = (options: BoardOptions): number => kinds(options).filter((kind) => kind !== 'callout' && kind !== 'dimension').length;
    expect(lines({ ...ALL, sights: false })).toBeLessThan(lines(ALL));
  });

  it('has one picture for one design, and no scale of nothing', () => {
    const input = example('tight-curve');
    expect(boardPicture(input, ALL)).toEqual(boardPicture(input, ALL));
    expect(() => boardPicture(input, { ...ALL, scale: 0 })).toThrow('a scale must be over 0: 0');
  });
});
