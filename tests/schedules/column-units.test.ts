import { describe, expect, it } from 'vitest';
import { pieceColumns, pieceRows } from '../../core/schedules/index.ts';
import { makeBrief } from '../support/brief-builder.ts';
import { partsOf } from '../support/laid-out.ts';

describe('columns of lengths', () => {
  it('prints millimeters where they are asked for, pounds and degrees always', () => {
    const row = pieceRows(partsOf(makeBrief())).find((each) => each.bend !== null && each.kind === 'rail')!;
    const cells = (units: 'in' | 'mm') => Object.fromEntries(pieceColumns(units).map((column) => [column.name, column.value(row)]));
    const [feet, metric] = [cells('in'), cells('mm')];
    for (const name of ['length', 'bend_radius']) expect(metric[name]).toBeCloseTo((feet[name] as number) * 25.4, 9);
    for (const name of ['quantity', 'bend_angle_deg', 'weight_lb', 'bay', 'mark']) expect(metric[name]).toBe(feet[name]);
    expect(feet['bend_angle_deg']).toBeCloseTo(((feet['length'] as number) / (feet['bend_radius'] as number)) * (180 / Math.PI), 9);
    expect(feet['length_short']).toBeNull();
  });
});
