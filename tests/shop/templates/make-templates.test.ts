import { describe, expect, it } from 'vitest';
import { inches } from '../../../core/base/quantity.ts';
import { type Brief } from '../../../core/brief/types.ts';
import { makeTemplates, type Template } from '../../../core/shop/templates/index.ts';
import { fences, makeBrief } from '../../support/brief-builder.ts';
import { partsOf } from '../../support/laid-out.ts';
import { LOAD, withRamp } from '../../support/ramp-briefs.ts';
import { randomWorked, work } from '../../schedules/project.ts';

const of = (brief: Brief): readonly Template[] => makeTemplates(brief, partsOf(brief));
const coped = makeBrief({
  fences: fences({ construction: 'coped' }),
  openings: [{ kind: 'man-gate', run: 'alley-1', side: 'right', at: inches(100), width: inches(16), path: 'openings[0]' }],
});

describe('the templates of a project', () => {
  it('serve each end of pipe that is not square once, and no other, however the fences are built', () => {
    for (const { brief, parts: { pieces } } of [...[makeBrief(), coped, withRamp(LOAD), withRamp(LOAD, { construction: 'coped' })].map(work), ...randomWorked(30)]) {
      const templates = makeTemplates(brief, { pieces, marks: {}, hardware: [] });
      const marks = new Map(pieces.map((piece) => [piece.mark, piece]));
      for (const piece of marks.values()) {
        const round = piece.flatHeight === null && !/^(tube|timber)/.test(piece.section);
        const cut = round ? piece.ends.filter(({ kind }) => kind !== 'square' && kind !== 'plumb').length : 0;
        const served = templates.flatMap(({ uses }) => uses).filter(({ mark }) => mark === piece.mark).reduce((sum, { ends }) => sum + ends, 0);
        expect([piece.mark, served]).toEqual([piece.mark, cut]);
      }
      for (const { uses } of templates) for (const { mark, quantity } of uses) expect(quantity).toBe(pieces.filter((piece) => piece.mark === mark).length);
    }
  });

  it('are named by their lowest mark, each name once', () => {
    const templates = of(coped);
    expect(new Set(templates.map(({ name }) => name)).size).toBe(templates.length);
    const number = (mark: string): number => Number(/\d+/.exec(mark)?.[0]);
    for (const { name, uses } of templates) {
      expect(name.split('-')[0]).toBe(uses[0]?.mark);
      for (const { mark } of uses) if (mark.startsWith(name.charAt(0))) expect(number(mark)).toBeGreaterThanOrEqual(number(name));
    }
  });

  it('are one for every size of pipe, header, angle and bend', () => {
    const saddles = of(coped).flatMap(({ cope }) => (cope.kind === 'saddle' ? [`${String(cope.branch)} ${String(cope.header)} ${String(cope.bend)}`] : []));
    expect(saddles).toContain(`${String(2.375 / 2)} ${String(2.875 / 2)} null`);
    expect(new Set(saddles).size).toBe(saddles.length);
    // The crowd pen's rails: axis radius R + t + D/2.
    expect(saddles.some((one) => one.endsWith(String(144 + 0.1046 + 2.875 / 2)))).toBe(true);
  });

  it('turn the seams of a rolled rail, and of a ramp\'s, half round; those of a level straight one not at all', () => {
    const ends = (brief: Brief, wanted: (cope: Template['cope']) => boolean): readonly (number | null)[] =>
      [...new Set(of(brief).filter(({ cope }) => wanted(cope)).flatMap(({ uses }) => uses.map(({ turn }) => turn)))];
    const saddle = (test: (cope: Extract<Template['cope'], { kind: 'saddle' }>) => boolean) => (cope: Template['cope']): boolean => cope.kind === 'saddle' && test(cope);
    expect(ends(coped, saddle(({ bend }) => bend !== null))).toEqual([180]);
    expect(ends(coped, saddle(({ bend }) => bend === null))).toEqual([0]);
    expect(ends(withRamp(LOAD, { construction: 'coped' }), saddle(({ slope }) => slope > 0))).toEqual([180]);
    // A gate's frame has its long points in line: printed one way, the paper's seam lies on the one face and then on the other.
    expect(ends(coped, (cope) => cope.kind === 'mitre')).toEqual([180]);
  });
});
