/** Handles of what stands beside and past the chute: the field that is set to what a drag asks for puts the handle under the hand. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { distance, planPoint, unitAt } from '../../core/base/points.ts';
import { figureAt, handles, type Handle } from '../../core/board/index.ts';
import { printFault, readBrief } from '../../core/brief/index.ts';
import { layOut } from '../../core/layout/index.ts';
import { type Change, changed } from '../support/change-project.ts';

type Project = Parameters<typeof changed>[0];
const winterQuill = (): Project => JSON.parse(readFileSync(new URL('../../shared/examples/winter-quill.penwright.json', import.meta.url), 'utf8')) as Project;

function handlesOf(...changes: readonly Change[]): readonly Handle[] {
  const read = readBrief(changed(winterQuill(), ...changes));
  if (!read.ok) throw new Error(read.faults.map(printFault).join('; '));
  const laid = layOut(read.brief);
  if (!laid.ok) throw new Error(laid.faults.map(printFault).join('; '));
  return handles(read.brief, laid.layout);
}

/** Inches that a hand moves: a part of a small figure. */
const MOVES: Readonly<Record<string, number>> = { 'openings[3].width': 1, 'openings[0].width': 2, 'catwalks[0].width': 2 };

/** By path; what the plan does not show from above (heights of decks and docks, slopes and treads, thickness and fall of floors) is typed. */
const FIELDS: readonly string[] = [
  'squeezePad.length', 'squeezePad.width', 'squeezePad.roof.length', 'squeezePad.roof.width',
  'sortPens[0].gate', 'sortPens[1].gate', 'holdingPens[0].gate', 'holdingPens[1].gate', 'holdingPens[0].length', 'holdingPens[0].width',
  'returnAlley.from.at', 'returnAlley.width', 'returnAlley.runs[0].length', 'returnAlley.runs[1].insideRadius',
  'openings[0].at', 'openings[0].width', 'openings[1].at', 'openings[2].at', 'openings[3].at', 'openings[3].width', 'openings[4].width', 'openings[5].at', 'openings[7].width',
  'catwalks[0].from', 'catwalks[0].to', 'catwalks[0].width', 'ramps[0].dockLength', 'ramps[1].dockLength',
];

const still = handlesOf();

describe('on the plan of a whole place', () => {
  it.each(FIELDS)('%s comes to where the hand is', (path) => {
    const handle = still.find((one) => one.path === path);
    if (handle === undefined) throw new Error(`no handle for ${path}`);
    expect(figureAt(handle.drag, handle.at, handle.value)).toBeCloseTo(handle.value, 6);
    const way = unitAt(handle.grows);
    const far = MOVES[path] ?? 3;
    const hand = planPoint(handle.at.x + far * way.x, handle.at.y + far * way.y);
    const value = figureAt(handle.drag, hand, handle.value);
    expect(value).toBeGreaterThan(handle.value);
    expect(value).toBeLessThanOrEqual(handle.greatest);
    const after = handlesOf([path, value]).find(({ id }) => id === handle.id);
    if (after === undefined) throw new Error(`no handle for ${path} once it is ${String(value)}`);
    expect(after.value).toBeCloseTo(value, 6);
    const off = planPoint(after.at.x - hand.x, after.at.y - hand.y);
    expect(Math.abs(off.x * way.x + off.y * way.y)).toBeLessThan(0.05);
    // A hand that moves straight leaves an arc by a hair: 3 in along one of 192 in is 0.023 in off it. The sort alley is as wide as its
    // widest gate, so that its fence goes sideways, by half of what the gate is wider.
    expect(distance(after.at, hand)).toBeLessThan(path.startsWith('sortPens') ? far / 2 + 0.05 : 0.05);
  });

  it('has one handle for each field, and each a name of its own', () => {
    const own = still.filter(({ path }) => FIELDS.includes(path));
    expect(own.map(({ path }) => path).toSorted()).toEqual(FIELDS.toSorted());
    expect(new Set(still.map(({ id }) => id)).size).toBe(still.length);
  });

  it('widens a gate by both its jambs: 6 in for a hand that moves one by 3 in', () => {
    const gate = still.find(({ path }) => path === 'openings[4].width');
    if (gate === undefined) throw new Error('no handle for the pen gate');
    const hand = planPoint(gate.at.x + 3 * Math.cos(gate.grows), gate.at.y + 3 * Math.sin(gate.grows));
    // Seen from the pivot, 144 in away, a straight 3 in at the face is an arc of 144 atan(3 / 144) in.
    expect(figureAt(gate.drag, hand, gate.value) - 30).toBeCloseTo(2 * 144 * Math.atan(3 / 144), 9);
  });
});
