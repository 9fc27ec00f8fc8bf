/** What a new entry of a list begins as: figures in sight, to be typed over. They are no defaults: the file says them. */
import { type Json, type JsonObject, isJsonObject } from '../../../core/brief/json/types.ts';
import { valueAt } from '../../project/json-path.ts';

export interface Starter {
  /** Word of the kind, as the file has it; empty where the list has one kind alone. */
  readonly kind: string;
  readonly entry: (project: JsonObject) => Json;
}

const otherHand = (project: JsonObject): 'left' | 'right' => (valueAt(project, 'crowdPen.hand') === 'right' ? 'right' : 'left');
/** The side of the crowd pen's outer fence. */
const outerSide = (project: JsonObject): 'left' | 'right' => (otherHand(project) === 'left' ? 'right' : 'left');

const straight: Starter = { kind: 'straight', entry: () => ({ kind: 'straight', length: '10 ft' }) };
const arc: Starter = { kind: 'arc', entry: (project) => ({ kind: 'arc', insideRadius: '16 ft', angle: 45, hand: outerSide(project) }) };

const STARTERS: Readonly<Record<string, readonly Starter[]>> = {
  'alley.runs': [straight, arc],
  'chute.runs': [straight, arc],
  'returnAlley.runs': [straight, arc],
  openings: [
    { kind: 'man-gate', entry: (project) => ({ kind: 'man-gate', run: 'crowd-pen', side: outerSide(project), at: '5 ft' }) },
    { kind: 'pen-gate', entry: (project) => ({ kind: 'pen-gate', run: 'alley-1', side: outerSide(project), at: '10 ft', width: '4 ft', swings: 'out' }) },
    { kind: 'alley-gate', entry: (project) => ({ kind: 'alley-gate', run: 'alley-1', side: outerSide(project), at: '2 ft', swings: 'back' }) },
    { kind: 'backstop', entry: () => ({ kind: 'backstop', run: 'chute', at: '8 ft' }) },
  ],
  catwalks: [{ kind: '', entry: () => ({ run: 'chute', side: 'left', from: 0, to: '10 ft' }) }],
  ramps: [{ kind: 'load', entry: () => ({ kind: 'load' }) }, { kind: 'unload', entry: () => ({ kind: 'unload' }) }],
  sortPens: [{ kind: '', entry: () => ({ side: 'left' }) }],
  revisions: [{ kind: '', entry: () => ({ letter: '-' }) }],
  holdingPens: [{ kind: '', entry: () => ({ head: 30 }) }],
};

/** What may be added to a list of groups; one that says nothing where nothing is known of it. */
export const startersOf = (path: string): readonly Starter[] => STARTERS[path] ?? [{ kind: '', entry: () => ({}) }];

/** What a group that a project may be without begins as. One that asks for nothing begins empty. */
export function groupBegun(path: string, project: JsonObject): JsonObject {
  if (path !== 'returnAlley') return {};
  const from = valueAt(project, 'squeezePad') === undefined ? { run: 'chute', side: outerSide(project), at: '5 ft' } : { run: 'squeeze-pad', side: outerSide(project), at: '4 ft' };
  return { from, runs: [{ kind: 'straight', length: '20 ft' }] };
}

/** An entry that becomes another kind: what both kinds have stays as it is. */
export function asKind(path: string, kind: string, entry: Json | undefined, project: JsonObject): Json {
  const begun = startersOf(path).find((starter) => starter.kind === kind)?.entry(project) ?? { kind };
  if (!isJsonObject(entry) || !isJsonObject(begun)) return begun;
  const kept = Object.entries(entry).filter(([name]) => name !== 'kind' && name in begun);
  return { ...begun, ...Object.fromEntries(kept) };
}
