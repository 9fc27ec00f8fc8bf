import { describe, expect, it } from 'vitest';
import { dayNumber } from '../../../core/base/time/day-number.ts';
import { sunPlace } from '../../../core/checks/sun/sun-place.ts';

/** Minutes of UTC. */
const at = (year: number, month: number, day: number, hour: number, minute: number): number => dayNumber(year, month, day) * 1440 + hour * 60 + minute;

describe('the sun\'s place', () => {
  it('is that of the NREL solar position algorithm\'s published example, within 0.01 deg (NREL/TP-560-34302)', () => {
    // 2003-10-17 12:30:30 at UTC-7, 39.742476 N, 105.1786 W: zenith 50.111622, azimuth 194.340241 deg. The example's zenith is refracted, as ours is.
    const { azimuth, altitude } = sunPlace(at(2003, 10, 17, 19, 30.5), 39.742476, -105.1786);
    expect(Math.abs(azimuth - 194.340241)).toBeLessThan(0.01);
    expect(Math.abs(90 - altitude - 50.111622)).toBeLessThan(0.01);
  });

  it('rises when that example says, 06:12:43; it sets within two minutes of the 17:20:19 printed there', () => {
    // The example takes the sun's middle 0.8333 deg under the horizon, unrefracted; ours is lifted by 0.48 deg there.
    const altitude = (minute: number): number => sunPlace(at(2003, 10, 17, 7, minute), 39.742476, -105.1786).altitude;
    expect(altitude(6 * 60 + 12 + 43 / 60)).toBeCloseTo(0.48 - 0.8333, 2);
    const sets = 17 * 60 + 20 + 19 / 60;
    expect(altitude(sets - 2)).toBeGreaterThan(0.48 - 0.8333);
    expect(altitude(sets + 2)).toBeLessThan(0.48 - 0.8333);
  });

  it('passes overhead on the equator at the equinox and stands in the north at noon in the southern winter', () => {
    // 2026-03-20 14:46 UTC is the equinox; by the equation of time (7.5 min) the sun passes longitude 0 at 12:07:30.
    expect(sunPlace(at(2026, 3, 20, 12, 7.5), 0, 0).altitude).toBeGreaterThan(89.5);
    const noon = sunPlace(at(2026, 6, 21, 12, 1.8), -35, 0);
    expect(Math.min(noon.azimuth, 360 - noon.azimuth)).toBeLessThan(0.5);
    expect(noon.altitude).toBeCloseTo(90 - 35 - 23.44, 1);
  });
});
