/**
 * Seen length along the centerline for a straight lead, then one arc that goes on far enough (geometry contract, Sight). The tests' oracle:
 * no ray is cast here. `inside` radius, clear `width` and `lead` in inches.
 */
export function seenClosedForm(inside: number, width: number, lead: number): number {
  return lead + (inside + width / 2) * seenAngle(inside, width, lead);
}

/** How far round the arc the centerline is seen, radians. */
export function seenAngle(inside: number, width: number, lead: number): number {
  const rc = inside + width / 2;
  const e = Math.sqrt(rc ** 2 + lead ** 2);
  return Math.acos(inside / e) - Math.atan(lead / rc) + Math.acos(inside / rc);
}
