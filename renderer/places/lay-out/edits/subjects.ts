/** Openings, catwalks and ramps as a person adds them: in the middle of the run, with the least that the project format asks for. */
import { type Json, type JsonObject } from '../../../../core/brief/json/types.ts';
import { type StationRun } from '../../../../core/schedules/index.ts';
import { valueAt, withValue } from '../../../project/json-path.ts';
import { type Units } from '../../../worker/protocol.ts';
import { writtenLength } from '../figures.ts';

export type Subject = 'man-gate' | 'pen-gate' | 'alley-gate' | 'backstop' | 'catwalk';

/** What may be added to a run: gates in a fence to any with one, gates across it where two stand at an even width, a backstop over the chute. */
export function subjectsFor(run: StationRun): readonly Subject[] {
  if (/^chute-\d+$/.test(run.run)) return ['man-gate', 'pen-gate', 'alley-gate', 'backstop', 'catwalk'];
  if (/^(alley|hold|return)-\d+$/.test(run.run)) return ['man-gate', 'pen-gate', 'alley-gate', 'catwalk'];
  if (/^(squeeze-pad|(sort|load|unload)-\d+)$/.test(run.run)) return ['man-gate', 'pen-gate', 'catwalk'];
    return /^(crowd-pen|junction)$/.test(run.run) ? ['man-gate', 'pen-gate', 'catwalk'] : [];
}

/** Width of a man gate to begin with, inches: what the examples of the project format have. */
const GATE = { in: 14, mm: 360 / 25.4 } as const;
/** Width of a pen gate to begin with: one that an animal walks through. */
const PEN_GATE = { in: 48, mm: 1200 / 25.4 } as const;

export function addSubject(project: JsonObject, subject: Subject, run: StationRun, units: Units): JsonObject {
  const hand = valueAt(project, 'crowdPen.hand') === 'right' ? 'right' : 'left';
  // The pen has its fence on the side away from the pivot post; elsewhere a person goes out on the same side.
  const side = hand === 'left' ? 'right' : 'left';
  const along = (share: number): number | string => writtenLength((run.from ?? 0) + run.length * share, units);
  const name = run.from === null ? run.run : 'chute';
  // A ramp takes a gate beside its level dock, at the top.
  const middle = run.run.startsWith('load-') ? 0.9 : run.run.startsWith('unload-') ? 0.1 : 0.5;
  switch (subject) {
    case 'man-gate':
      return added(project, 'openings', { kind: 'man-gate', run: name, side, at: along(middle), width: writtenLength(GATE[units], units) });
    case 'pen-gate':
      return added(project, 'openings', { kind: 'pen-gate', run: name, side, at: along(middle), width: writtenLength(PEN_GATE[units], units), swings: 'out' });
    case 'alley-gate':
      return added(project, 'openings', { kind: 'alley-gate', run: name, side, at: along(0.5) });
    case 'backstop':
      return added(project, 'openings', { kind: 'backstop', run: name, at: along(0.5) });
    case 'catwalk':
      return added(project, 'catwalks', { run: name, side, from: along(0), to: along(1) });
  }
}

export const addRamp = (project: JsonObject, kind: 'load' | 'unload'): JsonObject => added(project, 'ramps', { kind });

function added(project: JsonObject, list: string, item: Json): JsonObject {
  const items = valueAt(project, list);
  return withValue(project, list, [...(Array.isArray(items) ? (items as readonly Json[]) : []), item]);
}
