/** The same facility seen in a mirror: for properties that a mirrored project must keep. Works on a whole project as JSON, or any part of it. */
import { type ProjectJson } from './random-brief.ts';

type Json = Readonly<Record<string, unknown>>;

const SWAP: Readonly<Record<string, string>> = { left: 'right', right: 'left' };
const swapped = (word: unknown): unknown => (typeof word === 'string' ? SWAP[word] ?? word : word);
const isGroup = (value: unknown): value is Json => typeof value === 'object' && value !== null && !Array.isArray(value);

/** Fields that hold a hand or side, and those that hold a plan point. */
const SIDED = ['hand', 'side'];
const POINTS = ['b', 'c', 'at'];

function negative(length: unknown): unknown {
  if (typeof length === 'number') return 0 - length;
  if (typeof length !== 'string') throw new Error(`not a length: ${String(length)}`);
  return length.startsWith('-') ? length.slice(1) : `-${length}`;
}

function mirrorField(key: string, value: unknown): unknown {
  if (SIDED.includes(key)) return swapped(value);
  if (key === 'open' && Array.isArray(value)) return value.map(swapped);
  if (POINTS.includes(key) && Array.isArray(value)) return [negative(value[0]), value[1]];
  // Within what a heading may be, and mirrored twice the same figure again.
  if (key === 'heading' && typeof value === 'number') return (value < -180 ? -540 : 180) - value;
  return mirror(value);
}

function mirror(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(mirror);
  if (!isGroup(value)) return value;
  return Object.fromEntries(Object.entries(value).map(([key, field]) => [String(swapped(key)), mirrorField(key, field)]));
}

/** A project mirrored throughout in the plan's y axis: every hand, every side, the stakeout points. Nothing of the steel changes. */
export function mirrorProject(project: ProjectJson): ProjectJson {
  const mirrored = mirror(project) as ProjectJson;
  const pen = mirrored['crowdPen'] as Json;
  const control = (mirrored['control'] ?? {}) as Json;
  // What the file leaves to a default stands on the other side too.
  return { ...mirrored, crowdPen: { ...pen, hand: pen['hand'] ?? 'right' }, control: { ...control, b: control['b'] ?? ['-20 ft', 0] } };
}
