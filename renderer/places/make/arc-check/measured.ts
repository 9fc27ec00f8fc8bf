import { inches, type Inches } from '../../../../core/base/quantity.ts';
import { arcCheck, arcCheckPoints, parsePoint, type ArcCheck } from '../../../../core/shop/index.ts';
import { type Class13920 } from '../../../../core/steel/tables/iso-13920.ts';
import { say } from '../../../../core/text/index.ts';
import { parseLength } from '../../../../core/units/index.ts';
import { type DrawnArc } from './drawn-arc.ts';

/** What is in the fields, as typed. */
export interface ArcFields {
  readonly by: 'chord' | 'points';
  readonly chord: string;
  readonly rise: string;
  readonly points: readonly [string, string, string];
  readonly read: string;
  readonly grade: Class13920;
}

export type Measured =
  | { readonly kind: 'empty' }
  | { readonly kind: 'faults'; readonly faults: readonly string[] }
  | { readonly kind: 'told'; readonly checked: ArcCheck };

/** What the fields tell, or what is wrong with each. Fields that are all empty tell nothing. */
export function measured(fields: ArcFields, drawn: DrawnArc | null): Measured {
  const texts = fields.by === 'chord' ? [fields.chord, fields.rise] : fields.points;
  if (texts.every((text) => text.trim() === '')) return { kind: 'empty' };
  const faults: string[] = [];
  const length = (text: string, field: string): Inches => {
    const value = parseLength(text);
    if (value === null || value <= 0) faults.push(say('place-arc-check.fault.length', { field }));
    return value ?? inches(0);
  };
  const read = parseLength(fields.read);
  const chord = fields.by === 'chord' ? length(fields.chord, say('place-arc-check.chord')) : null;
  if (read === null || read < 0 || (chord !== null && chord > 0 && read >= chord / 2)) faults.push(say('place-arc-check.fault.read', { field: say('place-arc-check.read') }));
  const held = { read: read ?? inches(0), expected: drawn?.radius ?? null, panel: drawn?.length ?? null, grade: fields.grade };
  if (chord !== null) {
    const rise = length(fields.rise, say('place-arc-check.rise'));
    return faults.length > 0 ? { kind: 'faults', faults } : toldOf(arcCheck({ chord, rise, ...held }));
  }
  const [a, b, c] = fields.points.map((text, i) => {
    const point = parsePoint(text);
    if (point === null) faults.push(say('place-arc-check.fault.point', { field: say('place-arc-check.point', { number: i + 1 }) }));
    return point;
  });
  if (faults.length > 0 || !a || !b || !c) return { kind: 'faults', faults };
  return toldOf(arcCheckPoints({ points: [a, b, c], ...held }));
}

const toldOf = (checked: ArcCheck | Exclude<ReturnType<typeof arcCheckPoints>, ArcCheck>): Measured =>
  (typeof checked === 'string' ? { kind: 'faults', faults: [say(`place-arc-check.fault.${checked}`)] } : { kind: 'told', checked });
