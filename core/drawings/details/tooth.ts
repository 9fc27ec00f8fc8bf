/** One of the ratchet's teeth on the outer fence's top rail, from the front. */
import { GATE_PRACTICE } from '../../brief/gate-practice.ts';
import { gateSheet } from '../../brief/gate-steel.ts';
import { PENS } from '../../drafting/kit.ts';
import { type Brief } from '../../brief/types.ts';
import { toothWeld } from '../../schedules/index.ts';
import { say } from '../../text/index.ts';
import { boundsOf } from '../bounds.ts';
import { type Detail } from '../detail.ts';
import { rectangle, straight } from '../gate-outline.ts';
import { size, weldAt, word } from './say-size.ts';

/** x along the rail from the tooth's middle, y from the rail's lower edge. */
export function toothDetail(brief: Brief): Detail {
  const { tooth } = GATE_PRACTICE.crowdGate;
  const { rail } = brief.fences.crowdPen;
  const tall = rail.along;
  const half = Math.max(4, 2 * tooth.width);
  const plate = gateSheet(tooth.plate);
  return {
    id: 'tooth',
    title: say('drawings.detail.tooth', { plate: plate.name, rail: rail.name }),
    bounds: boundsOf([{ x: -half, y: 0 }, { x: half, y: tall + tooth.length }]),
    shapes: [
      straight(PENS.outline, -half, 0, half, 0), straight(PENS.outline, -half, tall, half, tall),
      ...rectangle(PENS.outline, -tooth.width / 2, tooth.width / 2, tall, tall + tooth.length),
    ],
    dimensions: (h) => [
      size(h, 'x', [-tooth.width / 2, tall + tooth.length], [tooth.width / 2, tall + tooth.length], 1),
      size(h, 'y', [-tooth.width / 2, tall], [-tooth.width / 2, tall + tooth.length], -1),
      size(h, 'y', [half, 0], [half, tall], 1),
    ],
    callouts: [word('drawings.detail.topRail', [half * 0.7, tall / 2], [0.5, -1])],
    welds: [weldAt(toothWeld(brief, plate.thickness, rail.wall), [tooth.width / 2, tall], [1, 0.8])],
  };
}
