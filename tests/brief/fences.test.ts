import { describe, expect, test } from 'vitest';
import { readBrief, type Brief } from '../../core/brief/index.ts';
import { changed, leastProject, type Change } from '../support/change-project.ts';

function briefOf(...changes: readonly Change[]): Brief {
  const result = readBrief(changed(leastProject(), ...changes));
  if (!result.ok) throw new Error(JSON.stringify(result.faults));
  return result.brief;
}
const faults = (...changes: readonly Change[]): readonly string[] => {
  const result = readBrief(changed(leastProject(), ...changes));
  return result.ok ? [] : result.faults.map(({ path, code }) => `${path} ${code}`);
};

describe('a fence takes what it does not say from the one around it', () => {
  test('sides from their place, that from the crowd pen', () => {
    const { fences } = briefOf(
      ['fences.crowdPen.rails', 7], ['fences.crowdPen.postSpacing', 90], ['fences.crowdPen.height', 66],
      ['fences.chute', { postSpacing: 80, bottomRail: 10, right: { bottomRail: 14 } }], ['fences.alley', { left: { sheet: null } }],
    );
    expect(fences.chute.left).toMatchObject({ rails: 7, postSpacing: 80, bottomRail: 10, height: 66, path: 'fences.chute' });
    expect(fences.chute.right).toMatchObject({ rails: 7, postSpacing: 80, bottomRail: 14, height: 66, path: 'fences.chute.right' });
    expect(fences.alley.left).toMatchObject({ rails: 7, postSpacing: 90, sheet: null, path: 'fences.alley.left' });
    expect(fences.alley.right).toMatchObject({ rails: 7, postSpacing: 90, sheet: { name: '12 ga' }, path: 'fences.alley' });
    expect(fences.junction.left).toEqual(fences.crowdPen);
  });

  test('every place takes a left and a right', () => {
    const sides = { left: { rails: 4 }, right: { rails: 6 } };
    expect(faults(...['alley', 'junction', 'chute', 'ramp', 'pad', 'pens'].map((place): Change => [`fences.${place}`, sides]))).toEqual([]);
    expect(faults(['fences.crowdPen.left', { rails: 4 }])).toEqual(['fences.crowdPen.left fault.unknown']);
    expect(faults(['fences.sortPens', {}])).toEqual(['fences.sortPens fault.unknown']);
  });
});

describe('solidTo', () => {
  test('that no fence says is each fence\'s own height', () => {
    const { fences } = briefOf(['fences.crowdPen.height', 60], ['fences.chute', { height: 72 }], ['fences.alley', { right: { height: 48 } }]);
    expect([fences.crowdPen.solidTo, fences.chute.left.solidTo, fences.alley.right.solidTo, fences.alley.left.solidTo]).toEqual([60, 72, 48, 60]);
  });

  test('that the fence around says is taken as it is, whatever the height', () => {
    const { fences } = briefOf(['fences.crowdPen.solidTo', 50], ['fences.chute', { height: 72 }]);
    expect([fences.chute.left.height, fences.chute.left.solidTo]).toEqual([72, 50]);
    expect(faults(['fences.crowdPen.solidTo', 50], ['fences.chute', { height: 48 }])).toEqual(['fences.chute.solidTo fault.solid-over-height']);
  });

  test('of the fence\'s height is the greatest', () => {
    expect(faults(['fences.chute', { solidTo: 60 }])).toEqual([]);
    expect(faults(['fences.chute', { solidTo: 60.0625 }])).toEqual(['fences.chute.solidTo fault.solid-over-height']);
  });

  test('over solidFrom, or 0 for an open fence', () => {
    expect(faults(['fences.crowdPen.solidFrom', 6], ['fences.chute', { solidTo: 0 }])).toEqual([]);
    expect(faults(['fences.crowdPen.solidFrom', 6], ['fences.chute', { solidTo: 6 }])).toContain('fences.chute.solidTo fault.solid-empty');
    expect(faults(['fences.crowdPen.solidTo', 20], ['fences.chute', { right: { solidFrom: 24 } }])).toEqual(['fences.chute.right.solidTo fault.solid-empty']);
  });
});

describe('rails', () => {
  test('may touch, no closer', () => {
    // 2.375 in rails, the top one's center at 58.8125: ten rails at 2.375 reach down to 37.4375.
    const rows = (bottomRail: number): Change => ['fences.crowdPen', { rail: 'pipe 2 sch 40', post: 'pipe 3 sch 40', rails: 12, bottomRail }];
    expect(faults(rows(32.6875))).toEqual([]);
    expect(faults(rows(32.75))).toEqual(['fences.crowdPen.rails fault.rails-close']);
  });

  test('are counted upright: a tube is as tall as its second figure', () => {
    const rail = (name: string): Change => ['fences.crowdPen', { rail: name, post: 'pipe 3 sch 40', rails: 12, bottomRail: 28, height: 60 }];
    expect(faults(rail('tube 4 x 2 x 3/16'))).toEqual([]);
    expect(faults(rail('tube 2 x 4 x 3/16'))).toEqual(['fences.crowdPen.rails fault.rails-close']);
  });

  test('a fault that every fence takes over is told once, at the crowd pen', () => {
    expect(faults(['fences.crowdPen.bottomRail', 36], ['fences.crowdPen.height', 36])).toEqual(['fences.crowdPen.bottomRail fault.rail-order']);
  });
});

describe('coped fences', () => {
  test('need round tubes, the rail thinner than the post', () => {
    expect(faults(['fences.crowdPen.construction', 'coped'])).toEqual([]);
    expect(faults(['fences.crowdPen.construction', 'coped'], ['fences.crowdPen.post', 'pipe 2 sch 40'])).toEqual(['fences.crowdPen.rail fault.rail-thick']);
    expect(faults(['fences.crowdPen.construction', 'coped'], ['fences.crowdPen.post', 'tubing 2.376 x 0.19'])).toEqual([]);
    expect(faults(['fences.crowdPen', { construction: 'coped', rail: 'tube 2 x 2 x 1/8', post: 'tube 3 x 3 x 3/16' }]))
      .toEqual(['fences.crowdPen.rail fault.cope-round', 'fences.crowdPen.post fault.cope-round']);
  });

  test('lapped ones take any', () => {
    expect(faults(['fences.crowdPen', { construction: 'lapped', rail: 'tube 2 x 2 x 1/8', post: 'tube 2 x 2 x 1/8' }])).toEqual([]);
  });
});
