import '../support/page.ts';
import { act } from 'react';
import { createRoot } from 'react-dom/client';
import { describe, expect, it } from 'vitest';
import { type Sheet } from '../../../core/drafting/primitives.ts';
import { writeSvg } from '../../../core/writers/index.ts';
import { SheetStrokes } from '../../../renderer/parts/SheetStrokes.tsx';
import { drawingFont, drawSound, EXAMPLES, exampleText } from '../../support/drawn.ts';
import { inchSheet, metricSheet } from '../../writers/fixtures.ts';

/** Every drawn element with its figures and words, in order, and the look of the group that it stands in. */
function drawnElements(root: Element): string[] {
  return [...root.querySelectorAll('*')].filter((element) => element.tagName !== 'g').map((element) => {
    const list = (of: Element): string => [...of.attributes].map(({ name, value }) => `${name}=${value}`).sort().join(' ');
    const group = element.parentElement;
    if (group === null) throw new Error('an element in no group');
    return `${group.parentElement?.getAttribute('class') ?? ''} | ${list(group)} | ${element.tagName} ${list(element)} | ${element.textContent}`;
  });
}

function onScreen(sheet: Sheet): string[] {
  const svg = document.createElementNS('http://www.w3.org/2000/svg', 'svg');
  document.body.append(svg);
  const root = createRoot(svg);
  act(() => { root.render(<SheetStrokes sheet={sheet} font={{ unitsPerEm: drawingFont.unitsPerEm, capHeight: drawingFont.capHeight }} />); });
  const elements = drawnElements(svg);
  act(() => { root.unmount(); });
  svg.remove();
  return elements;
}

function inFile(sheet: Sheet): string[] {
  const file = new DOMParser().parseFromString(writeSvg(sheet, drawingFont), 'image/svg+xml');
  const drawing = file.getElementById('drawing');
  if (drawing === null) throw new Error('no drawing in the file');
  return drawnElements(drawing);
}

describe('a drawing on the screen', () => {
  it.each(EXAMPLES)('has the elements of its SVG, figure for figure: %s', (name) => {
    const { sheets } = drawSound(exampleText(name));
    expect(sheets.length).toBeGreaterThan(8);
    for (const sheet of sheets) {
      const file = inFile(sheet);
      expect(file.length, sheet.number).toBeGreaterThan(20);
      expect(onScreen(sheet), sheet.number).toEqual(file);
    }
  });

  it('also where it has one of everything, with odd texts of a person', () => {
    for (const sheet of [inchSheet, metricSheet]) expect(onScreen(sheet)).toEqual(inFile(sheet));
  });

  it('is told from another: one line moved by a hundredth of an inch shows', () => {
    const moved = { ...inchSheet, primitives: inchSheet.primitives.map((item) => (item.kind === 'line' ? { ...item, a: { ...item.a, x: item.a.x + 0.01 } } : item)) };
    expect(onScreen(moved)).not.toEqual(inFile(inchSheet));
  });
});
