/** A sheet as an SVG: one file, its font inside, drawn in paper inches. */
import { MM_PER_INCH } from '../../base/quantity.ts';
import { type Font } from '../../drafting/font.ts';
import { type Sheet, LAYERS, strokesOf } from '../../drafting/primitives.ts';
import { base64 } from '../base64.ts';
import { plainNumber } from '../plain-number.ts';
import { svgLayer } from './layer.ts';
import { escapeXml } from './escape.ts';
import { PLACES } from './place.ts';

/** Our own name for the embedded font, so that no font of the reader's is taken in its stead. */
const FAMILY = 'penwright-drawing';

/**
 * Writes a sheet as an SVG. The paper is the viewBox, in inches, its size in the project's units; everything drawn stands in the one
 * group `drawing`, y turned down in the figures themselves, a group a layer. The same sheet gives the same text.
 */
export function writeSvg(sheet: Sheet, font: Font): string {
  const { width, height } = sheet.paper;
  const strokes = strokesOf(sheet.primitives);
  const views = sheet.views.map((view) => `${view.title} ${view.scaleText}`).join('; ');
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    `<svg xmlns="http://www.w3.org/2000/svg" width="${size(sheet, width)}" height="${size(sheet, height)}" ` +
      `viewBox="0 0 ${plainNumber(width, PLACES)} ${plainNumber(height, PLACES)}" style="background:#fff" aria-labelledby="title" aria-describedby="desc">`,
    `<title id="title">${escapeXml(`${sheet.number} ${sheet.title}`)}</title>`,
    `<desc id="desc">${escapeXml(views)}</desc>`,
    `<style>${style(font)}</style>`,
    '<g id="drawing" fill="none" stroke="#000" xml:space="preserve">',
    ...LAYERS.flatMap((layer) => svgLayer(layer, strokes, sheet.paper.height, font)),
    '</g>',
    '</svg>',
    '',
  ].join('\n');
}

function size(sheet: Sheet, inches: number): string {
  return sheet.units === 'mm' ? `${plainNumber(inches * MM_PER_INCH, PLACES)}mm` : `${plainNumber(inches, PLACES)}in`;
}

/** No text-rendering: asked for geometric precision, a browser lays letters out at their size in user units, which is a fraction of a pixel here. */
function style(font: Font): string {
  const source = `url("data:font/ttf;base64,${base64(font.bytes)}") format("truetype")`;
  return (
    `@font-face{font-family:"${FAMILY}";src:${source}}` +
    `#drawing text{font-family:"${FAMILY}",sans-serif;font-kerning:none;font-variant-ligatures:none;` +
    'white-space:pre;fill:#000;stroke:none}'
  );
}
