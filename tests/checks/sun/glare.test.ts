import { describe, expect, it } from 'vitest';
import { degrees, inches } from '../../../core/base/quantity.ts';
import { type Brief } from '../../../core/brief/types.ts';
import { type Finding } from '../../../core/checks/index.ts';
import { arc, makeBrief, straight } from '../../support/brief-builder.ts';
import { checked } from '../support/checked.ts';

/** A facility on the equator at Greenwich, worked in March from 6 to 9: its clock is the sun's but for the equation of time. */
const equator = (bearing: number, parts: Partial<Brief> = {}, work: Partial<NonNullable<Brief['site']['work']>> = {}): Brief => {
  const brief = makeBrief(parts);
  return {
    ...brief,
    site: { ...brief.site, latitude: 0, longitude: 0, timeZone: 'UTC', bearing: degrees(bearing), work: { from: 360, to: 540, months: [3], ...work } },
  };
};
const STRAIGHT = { chute: { width: inches(28), runs: [straight(240)] } };
const ofRun = (brief: Brief, run: string): Finding => checked(brief).find(({ id, where }) => id === 'sun-glare' && where.startsWith(`${run}: `))!;

describe('the sun in the eyes of cattle (common practice, no source; its angles from memory)', () => {
  /*
   * By hand, from a table of the equation of time and the declination, at the equator, where sin(altitude) = cos(decl)·cos(hour angle):
   *   1 March: decl -7.7, the sun passes at 12:12.4; up from 06:12.4 less 2 min of refraction; 30 deg high 59.70 deg before noon, 08:13.6
   *   31 March: decl +4.2, 12:04.1; up from 06:02; 30 deg high at 08:04.5
   * So of the looks at 06:00, 06:10, … the first with a low sun is 06:10 (31 March) and the last 08:10 (1 March), all about due east.
   */
  it('is told by the hour, as a March morning on the equator comes out by hand', () => {
    expect(ofRun(equator(90, STRAIGHT), 'chute-1')).toMatchObject({ result: 'look', limit: 'none', unit: 'deg', where: 'chute-1: Mar 06:10 to 08:10' });
    // The alley is walked the other way, out of the sun.
    expect(ofRun(equator(90, STRAIGHT), 'alley-1')).toMatchObject({ result: 'ok', where: 'alley-1: no low sun ahead in working hours' });
    expect(ofRun(equator(270, STRAIGHT), 'alley-1')).toMatchObject({ result: 'look', where: 'alley-1: Mar 06:10 to 08:10' });
  });

  it('turns with the clock of the site: the same sun an hour later where the clock is an hour ahead', () => {
    const ahead = equator(90, STRAIGHT);
    expect(ofRun({ ...ahead, site: { ...ahead.site, timeZone: 'Etc/GMT-1' } }, 'chute-1').where).toBe('chute-1: Mar 07:10 to 09:00');
  });

  it('is just within 30 deg of the heading and just outside it', () => {
    const far = ofRun(equator(150, STRAIGHT), 'chute-1').measured!;
    // The nearest low sun is that of 1 March, 08:10: by hand decl -7.6, 29 deg high, cos(azimuth) = sin(decl) / cos(altitude).
    expect(150 - far).toBeCloseTo((Math.acos(Math.sin((-7.6 * Math.PI) / 180) / Math.cos((29 * Math.PI) / 180)) * 180) / Math.PI, 0);
    const just = (angle: number): Finding => ofRun(equator(150 - far + angle, STRAIGHT), 'chute-1');
    expect([just(29.9).result, just(30.1).result]).toEqual(['look', 'ok']);
    expect(just(30.1).measured).toBeCloseTo(30.1, 6);
  });

  it('meets a curve somewhere round its turn, and the crowd pen only as cattle leave it', () => {
    const curved = equator(0, { chute: { width: inches(28), runs: [straight(120), arc(192, 90, 'right')] } });
    // The arc leads from north to east: at its end the sun stands ahead. The straight before it leads north, the pen too.
    expect(ofRun(curved, 'chute-2')).toMatchObject({ result: 'look', measured: 0 });
    expect(['chute-1', 'crowd-pen', 'junction'].map((run) => ofRun(curved, run).result)).toEqual(['ok', 'ok', 'ok']);
    const away = equator(0, { chute: { width: inches(28), runs: [straight(120), arc(192, 90, 'left')] } });
    expect(ofRun(away, 'chute-2').result).toBe('ok');
  });

  it('is none where no working hour has a low sun', () => {
    expect(ofRun(equator(90, STRAIGHT, { from: 11 * 60, to: 13 * 60 }), 'chute-1')).toMatchObject({ result: 'ok', measured: null, where: 'chute-1: no low sun in working hours' });
  });

  it('says months with the same hours together', () => {
    const { where } = ofRun(equator(90, STRAIGHT, { from: 420, to: 450, months: [9, 3] }), 'chute-1');
    expect(where).toBe('chute-1: Mar, Sep 07:00 to 07:30');
  });
});
