import { toDegrees, type Radians } from '../base/quantity.ts';

/** An angle in degrees with its sign, at most `places` decimals, trailing zeros left off: `22.5°`. Throws on what is not finite. */
export function printAngle(angle: Radians, places = 2): string {
  const value = toDegrees(angle);
  if (!Number.isFinite(value)) throw new Error(`not an angle: ${String(angle)}`);
  const text = value.toFixed(places);
  const short = text.includes('.') ? text.replace(/\.?0+$/, '') : text;
  return `${short === '-0' ? '0' : short}°`;
}
