import { type Radians } from './quantity.ts';

const TURN = 2 * Math.PI;

/** An angle brought into (-180°, 180°]. */
export function signedAngle(angle: number): Radians {
  const rest = positiveAngle(angle);
  return (rest > Math.PI ? rest - TURN : rest) as Radians;
}

/** An angle brought into [0°, 360°). */
export function positiveAngle(angle: number): Radians {
  const rest = angle % TURN;
  const positive = rest < 0 ? rest + TURN : rest;
  return (positive >= TURN ? 0 : positive) as Radians;
}
