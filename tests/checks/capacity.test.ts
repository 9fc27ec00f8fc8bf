import { describe, expect, it } from 'vitest';
import { degrees, inches, pounds } from '../../core/base/quantity.ts';
import { type Brief } from '../../core/brief/types.ts';
import { capacityLines, capacityOf, type Capacity } from '../../core/checks/index.ts';
import { makeBrief, straight } from '../support/brief-builder.ts';
import { laidOut } from '../support/laid-out.ts';

const of = (brief: Brief): Capacity => capacityOf(brief, laidOut(brief).runs);
const cattle = (parts: Partial<Brief['cattle']>): Brief['cattle'] => ({ ...makeBrief().cattle, ...parts });

describe('capacity', () => {
  // 12 ft half round: π·144/2 = 226.19 ft2. Areas a head: Univ. of Arkansas Extension (MP239 companion), 6 / 10 / 12 ft2.
  it.each([
    ['calf', 500, 37, 28], ['yearling', 700, 22, 16], ['mature', 1100, 18, 14],
  ] as const)('of the crowd pen at the area a head and three quarters full, by hand: %s', (kind, weight, full, draft) => {
    expect(of(makeBrief({ cattle: cattle({ kind, weight: pounds(weight) }) }))).toMatchObject({ penFull: full, draft });
  });

  it('of the chute is as many bodies as lie in it whole', () => {
    const chute = (length: number, bodyLength: number) => of(makeBrief({ chute: { width: inches(28), runs: [straight(length)] }, cattle: cattle({ bodyLength: inches(bodyLength) }) })).chute;
    expect([chute(480, 96), chute(479.9, 96), chute(240, 60), chute(90, 96)]).toEqual([5, 4, 4, 0]);
  });

  it('of the day is as many drafts as it takes, the last one not full', () => {
    const drafts = (headPerDay: number) => of(makeBrief({ cattle: cattle({ headPerDay, weight: pounds(1100) }) })).drafts;
    expect([drafts(14), drafts(15), drafts(300), drafts(1)]).toEqual([1, 2, 22, 1]);
  });

  it('says where a pen does not hold a draft: 6 ft at 90 deg is 28.3 ft2, 21.2 at three quarters', () => {
    const small = makeBrief({ crowdPen: { radius: inches(72), sweep: degrees(90) } });
    expect(of(small)).toMatchObject({ penFull: 2, draft: 1 });
    const brief = makeBrief({ cattle: cattle({ weight: pounds(1100) }) });
    expect(capacityLines(brief, of(brief))).toEqual([
      'Crowd pen: 226.2 ft2, 18 head at 12.0 ft2 a head, 14 at three quarters full.', 'Chute: 5 head in line, a body of 8\'-0" each.', 'Day\'s work: 300 head in 22 drafts of 14 at the most.',
    ]);
    expect(capacityLines({ ...brief, units: 'mm' }, of(brief))[0]).toContain('21.0 m2');
    expect(capacityLines(brief, { ...of(brief), draft: 0, drafts: null })[2]).toContain('too small');
  });
});
