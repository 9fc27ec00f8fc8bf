/** What our DXF says, read as tags. What others read in it is held in dxf-readers.test.ts. */
import { describe, expect, test } from 'vitest';
import { inches, radians } from '../../core/base/quantity.ts';
import { sheetPoint } from '../../core/base/points.ts';
import { type Primitive, type Sheet } from '../../core/drafting/primitives.ts';
import { writeDxf } from '../../core/writers/index.ts';
import { arc, circle, dimension, fill, font, inchSheet, line, metricSheet, pen, text } from './fixtures.ts';

const withOnly = (...primitives: Primitive[]): Sheet => ({ ...inchSheet, primitives });
const written = (...primitives: Primitive[]): string => writeDxf(withOnly(...primitives), font);
const entities = (file: string): string => /2\nENTITIES\n([^]*?)0\nENDSEC/.exec(file)?.[1] ?? '';

describe('a DXF of ours', () => {
  test('is the same file each time', () => {
    expect(writeDxf(inchSheet, font)).toBe(writeDxf(inchSheet, font));
  });

  test('an inch of steel is one unit, or 25.4 where the project is metric', () => {
    expect(entities(written(line(1, 2, 3, 4)))).toContain('10\n24.0\n20\n48.0\n30\n0.0\n11\n72.0\n21\n96.0\n31\n0.0\n');
    expect(entities(writeDxf({ ...metricSheet, primitives: [line(1, 2, 3, 4)] }, font))).toContain('10\n762.0\n20\n1524.0\n');
  });

  test('a pen that is its layer’s says nothing of itself, another names its linetype and weight', () => {
    expect(entities(written(line(1, 1, 2, 2, pen('STEEL', 'thick'))))).toContain('8\nSTEEL\n100\n');
    expect(entities(written(line(1, 1, 2, 2, pen('STEEL', 'thin', 'hidden'))))).toContain('8\nSTEEL\n6\nHIDDEN\n370\n30\n100\n');
    expect(entities(written(line(1, 1, 2, 2, pen('HIDDEN', 'thin'))))).toContain('8\nHIDDEN\n6\nCONTINUOUS\n100\n');
  });

  test('dashes are as long at the scale of the drawing as on paper', () => {
    // 0.12 in on and 0.06 in off, at 1:24 and, in millimeters, at 1:30.
    expect(writeDxf(inchSheet, font)).toContain('2\nHIDDEN\n70\n0\n3\n__ __ __ __\n72\n65\n73\n2\n40\n4.32\n49\n2.88\n74\n0\n49\n-1.44\n74\n0\n');
    expect(writeDxf(metricSheet, font)).toContain('40\n137.16\n49\n91.44\n74\n0\n49\n-45.72\n74\n0\n');
  });

  test('an arc turns counter-clockwise whichever way it was drawn, a whole turn is a circle, and next to no turn is nothing', () => {
    const quarter = 'AcDbArc\n50\n0.0\n51\n90.0\n';
    expect(entities(written(arc(5, 5, 1, 0, Math.PI / 2)))).toContain(quarter);
    expect(entities(written(arc(5, 5, 1, Math.PI / 2, -Math.PI / 2)))).toContain(quarter);
    expect(entities(written(arc(5, 5, 1, -2 * Math.PI, Math.PI / 2)))).toContain(quarter);
    expect(entities(written(arc(5, 5, 1, 0.3, -2 * Math.PI)))).toMatch(/^0\nCIRCLE\n/);
    expect(entities(written(arc(5, 5, 1, 0.3, 1e-12)))).toBe('');
  });

  test('a text that shows nothing is left out', () => {
    expect(entities(written(text('', 1, 1), text('   ', 1, 2)))).toBe('');
  });

  test('the text of a dimension is empty, so that it reads what it measures, but in a chain', () => {
    const own = [...entities(writeDxf(inchSheet, font)).matchAll(/AcDbDimension\n[^]*?\n71\n5\n1\n(.*)\n/g)].map((match) => match[1]);
    expect(own).toEqual([...Array<string>(8).fill(''), `9'-4 1/16" \\{x\\}`, ...Array<string>(8).fill(''), `9'-4 1/16" \\{x\\}`]);
  });

  test('a dimension line is placed abreast of the second point, however it is given', () => {
    const at = { view: 'plan', value: 36, text: 'x', textAt: sheetPoint(2, 3), from: sheetPoint(2, 2), to: sheetPoint(3.5, 2.4) } as const;
    expect(entities(written(dimension({ ...at, measure: 'linear', line: sheetPoint(-7, 3) })))).toContain('2\n*D1\n10\n84.0\n20\n72.0\n');
    const aslant = { ...at, to: sheetPoint(2.8, 2.6), measure: 'aligned', line: sheetPoint(2 - 0.6, 2 + 0.8) } as const;
    expect(entities(written(dimension(aslant)))).toContain('10\n52.8\n20\n81.6\n');
  });

  test('the length of an arc has no entity in this version and is drawn only', () => {
    const size = dimension({
      measure: 'arc', view: 'plan', from: sheetPoint(3, 2), to: sheetPoint(2, 3), center: sheetPoint(2, 2), line: sheetPoint(3, 3), value: 37.7, text: 'arc', textAt: sheetPoint(4, 4),
    });
    const file = written(size);
    expect(file).not.toContain('DIMENSION\n');
    expect(entities(file).match(/^0\n(LINE|SOLID|TEXT)$/gm)).toHaveLength(3);
  });

  test('what no drawing may hold is thrown, with the figure', () => {
    const size = { measure: 'linear', view: 'elsewhere', from: sheetPoint(1, 1), to: sheetPoint(2, 1), line: sheetPoint(1, 2), value: 24, text: 'x', textAt: sheetPoint(1, 2) } as const;
    expect(() => written(line(NaN, 1, 2, 2))).toThrow('NaN');
    expect(() => written(circle(1, 1, 0))).toThrow('radius not above zero: 0');
    expect(() => written(arc(1, 1, -1, 0, 1))).toThrow('radius not above zero: -1');
    expect(() => written(fill('SIZES', [1, 1], [2, 1]))).toThrow('three or four points, not 2');
    expect(() => written(fill('SIZES', [1, 1], [2, 1], [2, 2], [1.5, 3], [1, 2]))).toThrow('three or four points, not 5');
    expect(() => written(dimension(size))).toThrow('no view elsewhere');
    expect(() => written(dimension({ ...size, view: 'plan', measure: 'angle', rotation: radians(0) }))).toThrow('angle has no center');
    expect(() => writeDxf({ ...inchSheet, scale: 0 }, font)).toThrow('has no scale: 0');
    expect(() => writeDxf({ ...inchSheet, paper: { ...inchSheet.paper, width: inches(Infinity) } }, font)).toThrow('Infinity');
  });
});
