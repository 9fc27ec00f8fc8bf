import { sheetPoint } from '../base/points.ts';
import { inches } from '../base/quantity.ts';
import { makeKit } from '../drafting/kit.ts';
import { type View } from '../drafting/model.ts';
import { makeStand } from '../drafting/stand.ts';
import { shapeStroke } from '../drafting/view.ts';
import { boundsOf } from '../drawings/bounds.ts';
import { type DrawInput } from '../drawings/index.ts';
import { siteExtremes } from '../drawings/site-view.ts';
import { paintedBox } from './painted-box.ts';
import { showAll } from './shows/index.ts';
import { type BoardOptions, type BoardPicture } from './types.ts';

/** Height of a letter on the screen, inches: read at arm's length. */
const LETTER = inches(0.13);
/** How far words may stand from the steel, in letter heights. */
const ROUND = 40;

/**
 * The live plan at one scale of the screen, drafted in one pass by the step that drafts the drawings: no text touches another or a
 * line. What finds no room is left out: it is on paper. A scale that is not over 0 is a programmer's mistake and throws.
 */
export function boardPicture(input: DrawInput, options: BoardOptions): BoardPicture {
  const { scale } = options;
  if (!(scale > 0 && Number.isFinite(scale))) throw new Error(`a scale must be over 0: ${String(scale)}`);
  const kit = makeKit(input.font, input.brief.units, { name: '', width: inches(0), height: inches(0), text: LETTER });
  const extremes = siteExtremes(input.layout, new Set(input.layout.runs.map((run) => run.name)));
  const bounds = boundsOf(extremes);
  const middle = { x: (bounds.left + bounds.right) / 2, y: (bounds.low + bounds.high) / 2 };
  const show = showAll({ input, options, h: kit.h, extremes, middle });
  const round = ROUND * kit.h;
  const view: View = {
    id: 'board', title: '', scale, scaleText: '', at: sheetPoint(0, 0),
    box: {
      x: bounds.left * scale - round, y: bounds.low * scale - round,
      width: (bounds.right - bounds.left) * scale + 2 * round, height: (bounds.high - bounds.low) * scale + 2 * round,
    },
    shapes: [], dimensions: [], runnings: [], bands: [], callouts: [],
  };
  const stand = makeStand(kit);
  stand.steel(view, show.steel);
  stand.strokes(show.lines.map((shape) => shapeStroke(view, shape)));
  for (const { spec } of show.sizes) if (spec.required) stand.dimension(view, spec);
  for (const word of show.words) stand.callout(view, word);
  for (const { spec } of show.sizes) if (!spec.required) stand.dimension(view, spec);
  return { scale, primitives: stand.primitives, box: paintedBox(kit, stand.primitives) };
}
