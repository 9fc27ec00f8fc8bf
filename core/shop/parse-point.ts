import { type Vec } from '../base/points.ts';
import { parseLength } from '../units/index.ts';

/** A point as a person writes it, two lengths with a comma between: `18 in, 1 1/8 in`. null for anything else. */
export function parsePoint(text: string): Vec | null {
  const [x = null, y = null, ...more] = text.split(',').map((part) => parseLength(part.trim()));
  return x === null || y === null || more.length > 0 ? null : { x, y };
}
