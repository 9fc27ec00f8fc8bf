import { describe, expect, it } from 'vitest';
import { inches } from '../../core/base/quantity.ts';
import { arc, fences, makeBrief, straight } from '../support/brief-builder.ts';
import { findingOf, findingsOf } from './support/checked.ts';

describe('fouls (follow from the drawing itself)', () => {
  it('of a sound project are none, which is measured', () => {
    for (const id of ['foul-fence', 'foul-path', 'foul-post'] as const) {
      expect(findingOf(makeBrief(), id)).toMatchObject({ result: 'ok', measured: 0, limit: '0', where: 'nowhere in this project' });
    }
  });

  it('of a chute that crosses itself are a fix with their place', () => {
    const brief = makeBrief({ chute: { width: inches(28), runs: [straight(300), arc(60, 270, 'right'), straight(200)] } });
    for (const id of ['foul-fence', 'foul-path'] as const) {
      const found = findingsOf(brief, id);
      expect(found.length, id).toBeGreaterThan(0);
      for (const finding of found) {
        expect(finding).toMatchObject({ result: 'fix', limit: '0' });
        expect(finding.measured, id).toBeGreaterThanOrEqual(1);
        expect(finding.where).toMatch(/^chute-\d( and chute-\d)?, first at \(/);
        expect(finding.at).not.toBeNull();
      }
    }
  });

  it('of posts too near one another say by how much', () => {
    // Where the chute crosses itself, posts of the two legs at 24 in spacing stand 3 in apart in one place.
    const brief = makeBrief({ fences: fences({ postSpacing: inches(24) }), chute: { width: inches(28), runs: [straight(300), arc(60, 270, 'right'), straight(200)] } });
    const found = findingsOf(brief, 'foul-post').filter(({ result }) => result === 'fix');
    for (const finding of found) expect(finding.where).toMatch(/too near at \(/);
    expect(found.length).toBeGreaterThan(0);
  });
});
