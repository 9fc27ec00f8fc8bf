import { GATE_PRACTICE } from '../../brief/gate-practice.ts';
import { type CrowdGate, type Layout, type ManGate } from '../../layout/index.ts';
import { type Sector } from './sector.ts';

/** A gate that swings, with the ground that it takes. */
export interface Swinging {
  readonly path: string;
  readonly kind: 'man-gate' | 'crowd-gate';
  readonly sector: Sector;
}

/** Every gate of a layout that swings: the crowd gate from its rest to the exit, the man gates from shut to open. */
export function swingsOf(layout: Layout): readonly Swinging[] {
  return [crowdSwing(layout.crowdGate), ...layout.openings.filter((one) => one.kind === 'man-gate').map(manSwing)];
}

function crowdSwing({ path, swing, rest, half }: CrowdGate): Swinging {
  const back = rest?.turn ?? 0;
  return { path, kind: 'crowd-gate', sector: { pin: swing.pin, reach: Math.hypot(swing.reach, half), from: swing.shut + back, turn: swing.turn - back } };
}

/** The leaf's farthest corner stands half a barrel before its pin. */
function manSwing({ path, swing }: ManGate): Swinging {
  const reach = Math.hypot(swing.reach, GATE_PRACTICE.hinge.barrel / 2);
  return { path, kind: 'man-gate', sector: { pin: swing.pin, reach, from: swing.shut, turn: swing.turn } };
}
