/** Templates as files for a plotter or a table. */
import { describe, expect, it } from 'vitest';
import fc from 'fast-check';
import { fileURLToPath } from 'node:url';
import { degrees, inches } from '../../../core/base/quantity.ts';
import { refusalOf, tableModel } from '../../../core/shop/plates/index.ts';
import { templateFlat, wrapOf, type Cope } from '../../../core/shop/templates/index.ts';
import { writeTableFile } from '../../../core/writers/index.ts';
import { outside, PYTHON, run } from '../../support/outside.ts';
import { tableBreaches } from '../../support/table-breaches.ts';
import { inFolder } from '../../support/temporary.ts';
import { aCope } from './any-cope.ts';

const READER = fileURLToPath(new URL('../../readers/read_ezdxf.py', import.meta.url));
/** What the reader tells of a file. */
interface Told { readonly errors: unknown[]; readonly fixes: unknown[]; readonly entities: readonly { readonly layer: string; readonly figures: readonly number[] }[] }

const fileOf = (cope: Cope, units: 'in' | 'mm'): string => {
  const { shape, etch } = templateFlat({ name: 'R12-B', cope });
  return writeTableFile(tableModel([shape], etch), units);
};
const SLOPED: Cope = { kind: 'saddle', branch: inches(2.375 / 2), header: inches(2.875 / 2), slope: degrees(20), bend: null };

describe('a template\'s outline', () => {
  it('is fit for a table, for any cope, and all that is scribed lies within it', () => {
    fc.assert(fc.property(aCope, fc.constantFrom('in' as const, 'mm' as const), (cope, units) => {
      const { shape, etch } = templateFlat({ name: 'R12-B', cope });
      expect(refusalOf(shape)).toBeNull();
      expect(tableBreaches(fileOf(cope, units), { parts: 1, pierces: 1 })).toEqual([]);
      const wrap = wrapOf(cope);
      expect(etch.length).toBeGreaterThan(6);
      for (const { x, y } of etch.flat()) {
        expect(x > 0 && x < wrap.around && y > 0).toBe(true);
        expect(y).toBeLessThan(wrap.cutAt(x));
      }
    }), { seed: 20260302, numRuns: 25 });
  });
});

describe.skipIf(!outside('ezdxf'))('a template\'s file read by ezdxf', () => {
  it('is sound, and in millimeters as wide as the pipe is round, its cut-back that of the worked values', async () => {
    const told = await inFolder({ 'r12.dxf': fileOf(SLOPED, 'mm') }, (folder) => JSON.parse(run(PYTHON, [READER, folder])) as Readonly<Record<string, Told>>);
    const { errors, fixes, entities } = told['r12.dxf']!;
    expect([errors, fixes]).toEqual([[], []]);
    const cut = entities.filter(({ layer }) => layer === 'CUT').map(({ figures }) => figures);
    const [xs, ys] = [0, 1].map((i) => cut.flatMap((figures) => [figures[i]!, figures[i + 2]!]));
    expect(Math.max(...xs!) - Math.min(...xs!)).toBeCloseTo(Math.PI * 2.375 * 25.4, 6);
    // w at 180° less w at 0, at 70° (geometry contract); the line lies there on its very points.
    const at = (x: number): number => Math.max(...cut.flatMap(([ax, ay, bx, by]) => [[ax!, ay!], [bx!, by!]]).filter(([px]) => Math.abs(px! - x) < 1e-6).map(([, y]) => y!));
    expect(Math.abs((at(0) - at((Math.PI * 2.375 * 25.4) / 2)) / 25.4 - (1.962 - 1.0975))).toBeLessThan(1e-4);
    expect(Math.min(...ys!)).toBe(0);
  });
});
