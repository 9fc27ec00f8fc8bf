import { draft } from '../drafting/draft.ts';
import { type Drawing } from '../drafting/model.ts';
import { type Sheet } from '../drafting/primitives.ts';
import { bendDrawings } from './bends/index.ts';
import { catwalkDrawings } from './catwalks/index.ts';
import { billDrawings } from './bill.ts';
import { compareDrawings } from './changes/compare.ts';
import { checklistDrawings } from './checklist/checklist.ts';
import { coverDrawings } from './cover.ts';
import { cutListDrawings } from './cut-list.ts';
import { gateDrawings } from './gates.ts';
import { detailDrawings } from './details/index.ts';
import { type DrawInput, titleBlockOf } from './input.ts';
import { junctionDrawings } from './junction.ts';
import { pieceDrawings } from './lists.ts';
import { nestDrawings } from './nests/index.ts';
import { panelDrawings } from './panels.ts';
import { planDrawings } from './plan.ts';
import { rampDrawings } from './ramps/index.ts';
import { sectionDrawings } from './sections.ts';
import { setUpDrawings } from './set-up/index.ts';
import { stakeoutDrawings } from './stakeout.ts';
import { yardDrawings } from './yard/index.ts';

/** The cut list, and the bill that follows from it. */
function cutDrawings(input: DrawInput): Drawing[] {
  const cuts = cutListDrawings(input);
  return [...cuts, ...billDrawings(input, cuts.length)];
}

/** Every drawing of a design as plain data, in the order of the set; where an earlier issue is given, what changed since in clouds. */
export function drawings(input: DrawInput): Drawing[] {
  const rest = inOrder(input);
  const { since } = input;
  if (since === undefined || since === null) return [...coverDrawings(input, rest, null), ...rest];
  const before = inOrder({ ...since, font: input.font });
  const planned = (since.cuts ?? null) !== null;
  const isCompared = ({ number }: Drawing): boolean => planned || number.slice(0, -2) !== CUT;
  const compared = compareDrawings(rest.filter(isCompared), before.filter(isCompared));
  const clouded = new Map(compared.drawings.map((drawing) => [drawing.number, drawing]));
  const whole = rest.map((drawing) => clouded.get(drawing.number) ?? drawing);
  return [...coverDrawings(input, whole, { letter: since.brief.revision.letter, changes: compared.changes }), ...whole];
}

/** The series of the cut list and the bill: compared where the earlier issue's cut list is planned too. */
const CUT = '14';

function inOrder(input: DrawInput): Drawing[] {
  return [
    ...planDrawings(input),
    ...stakeoutDrawings(input),
    ...panelDrawings(input),
    ...junctionDrawings(input),
    ...sectionDrawings(input),
    ...bendDrawings(input),
    ...pieceDrawings(input),
    ...gateDrawings(input),
    ...rampDrawings(input),
    ...catwalkDrawings(input),
    ...yardDrawings(input),
    ...detailDrawings(input),
    ...setUpDrawings(input),
    ...cutDrawings(input),
    ...nestDrawings(input),
    ...checklistDrawings(input),
  ];
}

/** Every drawing of a design, drafted, in the order of the set. */
export function drawSet(input: DrawInput): Sheet[] {
  const block = titleBlockOf(input.brief);
  return drawings(input).map((drawing) => draft(input.font, block, drawing).sheet);
}
