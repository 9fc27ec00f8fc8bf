/** A plate by which the side forms of a stepped ramp are marked out: as many of its steps as a hand can carry. */
import { straightPath } from '../../base/flat-shape.ts';
import { type Vec } from '../../base/points.ts';
import { inches, pounds } from '../../base/quantity.ts';
import { SAME_LENGTH } from '../../base/tolerance.ts';
import { gateSheet } from '../../brief/gate-steel.ts';
import { type Ramp } from '../../layout/index.ts';
import { pieceKey, type DraftPiece } from '../draft-piece.ts';
import { RAMP_PRACTICE } from './practice.ts';

/**
 * The template of a ramp's steps, its foot at the lowest riser's; none where the ramp is cleated or a riser has no tread behind it. It
 * stands in no fence and is no part of what is built: alike ramps share one mark.
 */
export function formTemplate({ name, figures: { surface } }: Ramp): readonly DraftPiece[] {
  if (surface.kind === 'cleated' || surface.risers < 2) return [];
  const { risers, riser, tread } = surface;
  const { sheet: named, long } = RAMP_PRACTICE.formTemplate;
  const steps = Math.max(1, Math.min(risers - 1, Math.floor((long + SAME_LENGTH) / tread)));
  const sheet = gateSheet(named);
  // Half of the whole box, and half a step's box for each step.
  const area = (riser * tread * steps * (steps + 1)) / 2;
  return [{
    key: pieceKey('form', name, 'left', 1, 0),
    kind: 'form',
    section: sheet.name,
    length: inches(steps * tread),
    lengthShort: null,
    flatHeight: inches(steps * riser),
    flat: { outer: straightPath(stepCorners(steps, riser, tread)), holes: [] },
    bend: null,
    weight: pounds(sheet.weightPerArea * area),
    run: name,
    side: 'left',
    bay: 1,
    bays: 0,
    ends: [{ kind: 'square' }, { kind: 'square' }],
    place: { kind: 'form', steps },
  }];
}

/** Counter-clockwise from the foot: level under the steps, up the back of the highest, and down over the treads. */
export function stepCorners(steps: number, riser: number, tread: number): readonly Vec[] {
  const down = Array.from({ length: steps }, (_, i) => steps - i).flatMap((step) => [{ x: step * tread, y: step * riser }, { x: (step - 1) * tread, y: step * riser }]);
  return [{ x: 0, y: 0 }, { x: steps * tread, y: 0 }, ...down];
}
