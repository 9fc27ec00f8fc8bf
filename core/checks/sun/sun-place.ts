import { getPosition } from 'suncalc';

export interface SunPlace {
  /** Degrees clockwise from true north. */
  readonly azimuth: number;
  /** Over the horizon as it is seen, degrees: lifted by refraction. */
  readonly altitude: number;
}

/**
 * Where the sun stands, from an instant in minutes of UTC since 1970-01-01 and a place in degrees, north and east positive. suncalc
 * (Meeus' series) asks a date for its milliseconds alone, so a number in its stead keeps every clock out of the core.
 */
export function sunPlace(minute: number, latitude: number, longitude: number): SunPlace {
  const instant = { valueOf: () => minute * 60_000 } as unknown as Parameters<typeof getPosition>[0];
  return getPosition(instant, latitude, longitude);
}
