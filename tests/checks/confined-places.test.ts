/** Which places ask for a man gate of their own, each just with one and just without (man-gate: common practice, no source). */
import { describe, expect, it } from 'vitest';
import { readBrief, type Brief } from '../../core/brief/index.ts';
import { findingsOf } from './support/checked.ts';

type Group = Readonly<Record<string, unknown>>;

function project(parts: Group): Brief {
  const read = readBrief(JSON.stringify({
    format: 'penwright-project', version: 1, title: 'Confined', crowdPen: { radius: 144 }, alley: { runs: [{ kind: 'straight', length: 240 }] },
    chute: { width: 28, runs: [{ kind: 'straight', length: 240 }] },
    fences: { crowdPen: { height: 60, rail: 'pipe 2 sch 40', post: 'pipe 2 1/2 sch 40', rails: 5, bottomRail: 12 } }, ...parts,
  }));
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  return read.brief;
}
const gate = (run: string, side: 'left' | 'right', at = 60): Group => ({ kind: 'man-gate', run, side, at, width: 14 });
const told = (parts: Group): Readonly<Record<string, string>> =>
  Object.fromEntries(findingsOf(project(parts), 'man-gate').map(({ where, result }) => [where.split(':')[0], result]));

describe('a confined place', () => {
  it('is the crowd pen and the chute alone where the brief has no more', () => {
    expect(told({})).toEqual({ 'crowd-pen': 'fix', chute: 'fix' });
    expect(told({ openings: [gate('crowd-pen', 'right'), gate('chute', 'left')] })).toEqual({ 'crowd-pen': 'ok', chute: 'ok' });
  });

  it.each([
    ['squeeze-pad', { squeezePad: {} }, gate('squeeze-pad', 'right', 72)],
    ['sort-1', { sortPens: [{ side: 'left' }] }, gate('sort-1-back', 'left')],
    ['hold-1', { holdingPens: [{ head: 30 }] }, gate('hold-1-back', 'right')],
    ['load-1', { ramps: [{ kind: 'load' }] }, gate('load-1', 'left', 200)],
    ['unload-1', { ramps: [{ kind: 'unload' }] }, gate('unload-1', 'left', 60)],
  ] as const)('%s too, whose own fence it stands in', (place, subject, own) => {
    expect(told(subject)[place]).toBe('fix');
    expect(told({ ...subject, openings: [own] })[place]).toBe('ok');
  });

  it('is the alley only where a gate across it shuts it', () => {
    const across = { kind: 'alley-gate', run: 'alley-1', side: 'right', at: 24 };
    expect(told({ openings: [across] })['alley']).toBe('fix');
    expect(told({ openings: [across, gate('alley-1', 'right', 200)] })['alley']).toBe('ok');
    expect(told({ openings: [gate('alley-1', 'right', 200)] })['alley']).toBeUndefined();
  });

  it('has no way out through a gate to another place with cattle in it', () => {
    const holdingPens = [{ head: 30 }, { head: 30 }];
    // The fence between the two pens, and the drive alley's on the side of the pens.
    expect(told({ holdingPens, openings: [gate('hold-1-end', 'left')] })).toMatchObject({ 'hold-1': 'fix', 'hold-2': 'fix' });
    expect(told({ holdingPens, openings: [gate('hold-2-end', 'left')] })).toMatchObject({ 'hold-1': 'fix', 'hold-2': 'ok' });
    expect(told({ sortPens: [{ side: 'left' }], openings: [gate('sort-1', 'right')] })['sort-1']).toBe('fix');
  });
});

describe('a sort gate', () => {
  const gates = (first: number, second: number) => findingsOf(project({ squeezePad: {}, sortPens: [{ side: 'left', gate: first }, { side: 'right', gate: second }] }), 'sort-gate');
  it('narrower than the widest leaves that much to the fence across the alley, and diverts nothing (common practice, no source)', () => {
    expect(gates(156, 156).map(({ result }) => result)).toEqual(['ok']);
    const found = gates(156, 100);
    expect(found.map(({ result }) => result)).toEqual(['ok', 'look']);
    expect(found[1]!.where).toMatch(/^sortPens\[1\]: its open leaf leaves /);
  });

  it('is let pass up to 8 in of it', () => {
    // An alley of 156 and a gate of 136: 20 in, and what the leaf itself stays clear of its jambs and hinges.
    const [, wide] = gates(156, 136);
    const clear = Number(/leaves (\d+)(?: (\d+)\/16)?/.exec(wide!.where)![1]) - 20;
    expect(clear).toBeGreaterThanOrEqual(0);
    expect(clear).toBeLessThan(6);
    expect([gates(156, 156 - (7 - clear)).length, gates(156, 156 - (9 - clear)).length]).toEqual([1, 2]);
  });
});
