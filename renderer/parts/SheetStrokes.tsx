import { createElement, memo, type ReactElement } from 'react';
import { type FontSize } from '../../core/drafting/font.ts';
import { LAYERS, type Sheet, type Stroke, strokesOf } from '../../core/drafting/primitives.ts';
import { svgGroups } from '../../core/writers/svg/layer.ts';
import { svgElement } from '../../core/writers/svg/stroke.ts';

export interface SheetStrokesProps {
  readonly sheet: Sheet;
  readonly font: FontSize;
}

/** Everything that is printed on a drawing, as the SVG file has it: the same elements, in the same order, with the same figures. */
export const SheetStrokes = memo(function SheetStrokes({ sheet, font }: SheetStrokesProps): ReactElement {
  const strokes = strokesOf(sheet.primitives);
  return (
    <g className="sheet-strokes" fill="none" stroke="#000" aria-hidden="true">
      {LAYERS.map((layer) => {
        const groups = svgGroups(layer, strokes);
        if (groups.length === 0) return null;
        return (
          <g key={layer} className={layer.toLowerCase()}>
            {groups.map(({ look, strokes: drawn }, index) => (
              <g key={index} {...propsOf(look)}>
                {drawn.map((stroke, at) => strokeElement(stroke, sheet.paper.height, font, String(at)))}
              </g>
            ))}
          </g>
        );
      })}
    </g>
  );
});

/** One stroke as an element of the page. */
export function strokeElement(stroke: Stroke, height: number, font: FontSize, key: string): ReactElement {
  const { name, attributes, words } = svgElement(stroke, height, font);
  return createElement(name, { key, ...propsOf(attributes) }, words ?? undefined);
}

/** Names as React calls them: `stroke-width` is `strokeWidth`. */
const propsOf = (attributes: Readonly<Record<string, string>>): Record<string, string> =>
  Object.fromEntries(Object.entries(attributes).map(([name, value]) => [name.replace(/-([a-z])/g, (_, letter: string) => letter.toUpperCase()), value]));
