import { type Brief } from '../brief/types.ts';
import { type Run } from '../layout/index.ts';
import { cattleClass } from './judges/cattle-class.ts';
import { rules } from './rules/table.ts';

/** A crowd pen that is filled only so far lets cattle turn to the chute (common practice, no source). */
const WELL_FILLED = 3 / 4;

/** How many head the facility takes at once, and how often it is filled in a day. */
export interface Capacity {
  /** Of the crowd pen, square feet: R²·S/2. */
  readonly penArea: number;
  /** Least square feet a head: rule crowd-area, by class of cattle. */
  readonly areaPerHead: number;
  readonly penFull: number;
  /** At three quarters full: a draft. */
  readonly draft: number;
  /** Head in the chute, by body length. */
  readonly chute: number;
  /** Drafts to work the day's head; null where the pen does not hold a draft of one. */
  readonly drafts: number | null;
}

/** Whole head and whole drafts. Pure; lengths of the layout in inches. */
export function capacityOf(brief: Brief, runs: readonly Run[]): Capacity {
  const { radius, sweep } = brief.crowdPen;
  const penArea = (radius ** 2 * sweep) / 2 / 144;
  const areaPerHead = rules['crowd-area'].limit.values[cattleClass(brief)];
  const draft = whole((penArea * WELL_FILLED) / areaPerHead);
  const chuteLength = runs.reduce((sum, run) => sum + (run.from === null ? 0 : run.length), 0);
  return {
    penArea,
    areaPerHead,
    penFull: whole(penArea / areaPerHead),
    draft,
    chute: whole(chuteLength / brief.cattle.bodyLength),
    drafts: draft === 0 ? null : Math.ceil(brief.cattle.headPerDay / draft),
  };
}

/** A length that is whole bodies but for rounding holds them all. */
const whole = (count: number): number => Math.floor(count + 1e-9);
