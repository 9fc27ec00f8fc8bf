/** The two ramps of the geometry contract's worked values, in briefs made by hand. */
import { degrees, inches } from '../../core/base/quantity.ts';
import { type Brief, type FenceBrief, type RampBrief } from '../../core/brief/types.ts';
import { fence, fences, makeBrief } from './brief-builder.ts';

/** Dock 48 in at 20°, cleats of 2 in. */
export const UNLOAD: RampBrief = {
  name: 'unload-1', kind: 'unload', dockHeight: inches(48), width: inches(120), dockLength: inches(120),
  surface: { kind: 'cleated', slope: degrees(20), cleat: inches(2) }, at: null, heading: null, path: 'ramps[0]',
};
/** Dock 48 in in steps of 14 in tread. */
export const LOAD: RampBrief = {
  ...UNLOAD, name: 'load-1', kind: 'load', width: inches(30), dockLength: inches(60), surface: { kind: 'stepped', tread: inches(14) },
};

/** A project with one ramp, its fence of the example's build, any part replaced. */
export function withRamp(ramp: RampBrief, parts: Partial<FenceBrief> = {}): Brief {
  const own = fence('fences.ramp', parts);
  return makeBrief({ fences: { ...fences(), ramp: { left: own, right: own } }, ramps: [ramp] });
}
