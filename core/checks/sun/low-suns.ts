import { clockOffset } from '../../base/time/clock-offset.ts';
import { dayNumber, daysInMonth } from '../../base/time/day-number.ts';
import { type Radians } from '../../base/quantity.ts';
import { type Brief } from '../../brief/types.ts';
import { sunPlace } from './sun-place.ts';

/** A low sun in working hours. */
export interface LowSun {
  readonly month: number;
  /** On the site's wall clock, from midnight. */
  readonly minute: number;
  /** Degrees clockwise from true north. */
  readonly azimuth: number;
}

/** What of a site the sun's place follows from, all of it known. */
export interface SunSite {
  readonly latitude: number;
  readonly longitude: number;
  readonly timeZone: string;
  readonly bearing: Radians;
  readonly work: NonNullable<Brief['site']['work']>;
}

/** The sun is low under this, degrees over the horizon (from memory, no source). */
export const LOW = 30;
/** Minutes from one look at the sun to the next, from the first working minute on. */
export const STEP = 10;
/** The year whose days stand for every year's: from year to year the sun's place on a date differs by a quarter of a degree. */
const YEAR = 2026;

/** Days of a month that stand for all of it: a week apart, and the last. */
const daysOf = (month: number): readonly number[] => [1, 8, 15, 22, daysInMonth(YEAR, month)];

/** What the sun asks of a site, or the fields that the brief leaves open. */
export function sunSite({ site }: Pick<Brief, 'site'>): SunSite | readonly string[] {
  const { latitude, longitude, timeZone, bearing, work } = site;
  if (latitude !== null && longitude !== null && timeZone !== null && bearing !== null && work !== null) return { latitude, longitude, timeZone, bearing, work };
  return Object.entries({ latitude, longitude, timeZone, bearing, work }).filter(([, value]) => value === null).map(([field]) => `site.${field}`);
}

let last: { readonly key: string; readonly suns: readonly LowSun[] } = { key: '', suns: [] };

/** The low suns over all working hours and months, in order; an open horizon is taken all round. Kept while the site stays as it is. */
export function lowSuns(site: SunSite): readonly LowSun[] {
  const key = JSON.stringify([site.latitude, site.longitude, site.timeZone, site.work]);
  if (key !== last.key) last = { key, suns: reckon(site) };
  return last.suns;
}

function reckon({ latitude, longitude, timeZone, work }: SunSite): readonly LowSun[] {
  const suns: LowSun[] = [];
  for (const month of [...work.months].sort((a, b) => a - b)) {
    for (const day of daysOf(month)) {
      for (let minute = work.from; minute <= work.to; minute += STEP) {
        const utc = dayNumber(YEAR, month, day) * 1440 + minute - clockOffset(timeZone, YEAR, month, day, minute);
        const { azimuth, altitude } = sunPlace(utc, latitude, longitude);
        if (altitude > 0 && altitude < LOW) suns.push({ month, minute, azimuth });
      }
    }
  }
  return suns;
}
