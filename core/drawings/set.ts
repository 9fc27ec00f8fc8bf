import { draft } from '../drafting/draft.ts';
import { type Drawing } from '../drafting/model.ts';
import { type Sheet } from '../drafting/primitives.ts';
import { bendDrawings } from './bends/index.ts';
import { coverDrawings } from './cover.ts';
import { gateDrawings } from './gates.ts';
import { detailDrawings } from './details/index.ts';
import { type DrawInput, titleBlockOf } from './input.ts';
import { junctionDrawings } from './junction.ts';
import { pieceDrawings } from './lists.ts';
import { panelDrawings } from './panels.ts';
import { planDrawings } from './plan.ts';
import { rampDrawings } from './ramps/index.ts';
import { sectionDrawings } from './sections.ts';
import { setUpDrawings } from './set-up/index.ts';
import { stakeoutDrawings } from './stakeout.ts';

/** Every drawing of a design as plain data, in the order of the set. */
export function drawings(input: DrawInput): Drawing[] {
  const rest = [
    ...planDrawings(input),
    ...stakeoutDrawings(input),
    ...panelDrawings(input),
    ...junctionDrawings(input),
    ...sectionDrawings(input),
    ...bendDrawings(input),
    ...pieceDrawings(input),
    ...gateDrawings(input),
    ...rampDrawings(input),
    ...detailDrawings(input),
    ...setUpDrawings(input),
  ];
  return [...coverDrawings(input, rest), ...rest];
}

/** Every drawing of a design, drafted, in the order of the set. */
export function drawSet(input: DrawInput): Sheet[] {
  const block = titleBlockOf(input.brief);
  return drawings(input).map((drawing) => draft(input.font, block, drawing).sheet);
}
