import { GATE_PRACTICE } from '../../brief/gate-practice.ts';
import { isSwingGate, latchedHalf, type CrowdGate, type Layout, type SwingGate } from '../../layout/index.ts';
import { type Sector } from './sector.ts';

/** A gate that swings, with the ground that it takes. */
export interface Swinging {
  readonly path: string;
  readonly kind: SwingGate['kind'] | 'crowd-gate';
  readonly run: string;
  readonly sector: Sector;
}

/** Every gate of a layout that swings: the crowd gate from its rest to the exit, the others from shut to open. */
export function swingsOf(layout: Layout): readonly Swinging[] {
  return [crowdSwing(layout.crowdGate), ...layout.openings.filter(isSwingGate).map(leafSwing)];
}

function crowdSwing({ path, swing, rest, half }: CrowdGate): Swinging {
  const back = rest?.turn ?? 0;
  return { path, kind: 'crowd-gate', run: 'crowd-pen', sector: { pin: swing.pin, reach: Math.hypot(swing.reach, half), from: swing.shut + back, turn: swing.turn - back } };
}

/** The leaf's farthest corner: a man gate's stands half a barrel before its pin, a latched leaf's half its thickness aside of it. */
function leafSwing({ path, kind, run, swing }: SwingGate): Swinging {
  const reach = Math.hypot(swing.reach, kind === 'man-gate' ? GATE_PRACTICE.hinge.barrel / 2 : latchedHalf());
  return { path, kind, run, sector: { pin: swing.pin, reach, from: swing.shut, turn: swing.turn } };
}
