import fc from 'fast-check';
import { degrees, inches } from '../../../core/base/quantity.ts';
import { type Cope } from '../../../core/shop/templates/index.ts';

/** Any cope that a project may ask for. */
export const aCope: fc.Arbitrary<Cope> = fc.record({
  branch: fc.double({ min: 0.4, max: 4.5, noNaN: true }), over: fc.double({ min: 1.01, max: 3, noNaN: true }), angle: fc.double({ min: 1, max: 60, noNaN: true }),
  bend: fc.option(fc.double({ min: 60, max: 1240, noNaN: true })), long: fc.constantFrom('inside' as const, 'outside' as const), kind: fc.constantFrom('saddle', 'level', 'frame', 'slope'),
}).map(({ branch, over, angle, bend, long, kind }): Cope => {
  const round = bend === null || kind === 'frame' || kind === 'slope' ? null : inches(bend);
  if (kind === 'saddle') return { kind, branch: inches(branch), header: inches(branch * over), slope: degrees(round === null ? Math.min(35, angle) : 0), bend: round };
  return { kind: 'mitre', branch: inches(branch), angle: degrees(angle), lies: kind as 'level', bend: round, long: round === null ? null : long };
});

