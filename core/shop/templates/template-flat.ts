/** A template as a plotter or a table cuts it: its outline, and what is scribed on it. */
import { straightPath, type FlatShape } from '../../base/flat-shape.ts';
import { type Vec } from '../../base/points.ts';
import { say, type StringKey } from '../../text/index.ts';
import { strokeText, strokeWidth, type Polyline } from '../stroke-text/index.ts';
import { sampleWrap } from './sample-wrap.ts';
import { type Cope, type Template } from './types.ts';
import { wrapOf } from './wrap-of.ts';

/** Kept between what is scribed and what is cut, and between a line and its words, inches. */
const CLEAR = 0.1;
const TALLEST = 0.2;
const NAME = 0.3;

export interface TemplateFlat {
  readonly shape: FlatShape;
  readonly etch: readonly Polyline[];
}

/** Lays a template out from the foot of its seam: closed outline, quarter lines, their words, and the name. */
export function templateFlat({ name, cope }: Pick<Template, 'name' | 'cope'>): TemplateFlat {
  const wrap = wrapOf(cope);
  const quarter = wrap.around / 4;
  const line = (x: number): Polyline => [{ x, y: CLEAR }, { x, y: wrap.cutAt(x) - CLEAR }];
  const word = (text: string, x: number, y: number, tallest: number): readonly Polyline[] => {
    if (text === '') return [];
    const at: Vec = { x: x + CLEAR, y };
    return strokeText(text, at, Math.min(tallest, (quarter - 2 * CLEAR) / strokeWidth(text, 1)));
  };
  return {
    shape: { outer: straightPath([{ x: 0, y: 0 }, { x: wrap.around, y: 0 }, ...sampleWrap(wrap).toReversed()]), holes: [] },
    etch: [
      ...[1, 2, 3].map((i) => line(i * quarter)),
      ...keysOf(cope).flatMap((key, i) => word(key === null ? '' : say(key), i * quarter, 2 * CLEAR, TALLEST)),
      ...word(name, 0, 6 * CLEAR, NAME),
    ],
  };
}

/** What stands beside the seam and the quarter lines, in capitals: a scribe has no others. */
function keysOf(cope: Cope): readonly (StringKey | null)[] {
  if (cope.bend !== null) return ['template.etch.seam', 'template.etch.inside', 'template.etch.top', 'template.etch.outside'];
  if (cope.kind === 'saddle') {
    return cope.slope === 0
      ? ['template.etch.seam', null, 'template.etch.top', null]
      : ['template.etch.top-upper', null, 'template.etch.top-lower', null];
  }
  return cope.lies === 'slope' ? ['template.etch.seam', null, 'template.etch.top', null] : ['template.etch.seam', 'template.etch.long', null, 'template.etch.short'];
}
