import { degrees } from '../../base/quantity.ts';
import { RANGES } from '../../brief/index.ts';

/** What a field may be: inches, or radians for an angle. */
export function rangeOf(field: keyof typeof RANGES): { readonly least: number; readonly greatest: number } {
  const { least, greatest, unit } = RANGES[field];
  return unit === 'deg' ? { least: degrees(least), greatest: degrees(greatest) } : { least, greatest };
}
