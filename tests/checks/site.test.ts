import { describe, expect, it } from 'vitest';
import { degrees, inches } from '../../core/base/quantity.ts';
import { type Brief, type CatwalkBrief } from '../../core/brief/types.ts';
import { makeBrief } from '../support/brief-builder.ts';
import { findingOf, findingsOf } from './support/checked.ts';

const at = (site: Partial<Brief['site']>): Brief => {
  const brief = makeBrief();
  return { ...brief, site: { ...brief.site, ...site } };
};

describe('what the site decides', () => {
  it('is on owned ground (common practice, no source); unset is said, not guessed', () => {
    expect(findingOf(at({ tenure: 'owned' }), 'tenure').result).toBe('ok');
    expect(findingOf(at({ tenure: 'leased' }), 'tenure').result).toBe('look');
    expect(findingOf(at({}), 'tenure')).toMatchObject({ result: 'look', measured: null, where: 'not given: site.tenure' });
  });

  it('names each field that the sun needs and the brief leaves open', () => {
    const work = { from: 420, to: 1020, months: [10, 11] };
    const whole = { latitude: 46.2, longitude: -110.4, timeZone: 'America/Denver', bearing: degrees(15), work };
    expect(findingsOf(at(whole), 'sun-glare').map(({ where }) => where.split(':')[0])).toEqual(['alley-1', 'crowd-pen', 'junction', 'chute-1', 'chute-2', 'chute-3']);
    expect(findingOf(at({ ...whole, bearing: null, work: null }), 'sun-glare').where).toBe('not given: site.bearing, site.work');
  });

  it('asks a person for the light at the entrance, which no brief names (common practice, no source)', () => {
    expect(findingOf(at({}), 'night-light')).toMatchObject({ result: 'look', measured: null, limit: 'note' });
  });

  it('has another jurisdiction\'s rail only where there is a catwalk outside the United States', () => {
    const walk: CatwalkBrief = { run: 'chute', side: 'left', from: inches(0), to: inches(200), width: inches(20), deckHeight: null, path: 'catwalks[0]' };
    const catwalk = (jurisdiction: Brief['site']['jurisdiction']): Brief => ({ ...at({ jurisdiction }), catwalks: [walk] });
    expect(findingOf(at({ jurisdiction: 'eu' }), 'rail-other-jurisdiction').where).toBe('none in this project');
    expect(findingOf(catwalk('us'), 'rail-other-jurisdiction').where).toBe('none in this project');
    // 42 in is 1066.8 mm: under EN ISO 14122-3, over the United Kingdom's.
    expect(findingOf(catwalk('eu'), 'rail-other-jurisdiction')).toMatchObject({ result: 'fix', measured: 1066.8 });
    expect(findingOf(catwalk('uk'), 'rail-other-jurisdiction').result).toBe('ok');
    expect(findingOf(catwalk(null), 'rail-other-jurisdiction')).toMatchObject({ result: 'look', where: 'not given: site.jurisdiction' });
  });
});
