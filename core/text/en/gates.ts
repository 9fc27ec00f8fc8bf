/** Words about gates and backstops: findings first, then drawings and lists. */
export const gates = {
  'where.manGates': '{place}: {count} that swing to the cattle, shut by a spring and have no latch ({names})',
  'where.noManGateHere': '{place}: no man gate in its fences',
  'where.manGate': '{opening}, {run} {side} at {at}: {width} clear',
  'where.wayOutGate': '{place}: {names}, {width} or wider, worked from outside',
  'where.noWayOutHere': '{place}: no opening {width} or wider in its fences, which an animal of this class passes',
  'where.backstopAt': '{opening}, station {station}',
  'where.backstopHeld': '{opening}: worked by a rope from a distance, the leaf between guides',
  'where.backstopPin': '{opening}: held by a pin at the backstop itself',
  'where.backstopNone': '{opening}: nothing holds it open',
  'where.backstopCount': '{count} in {length} of chute, one each {each}',
  'where.quietGates': 'crowd gate and {count} man gates: stops and springs; {backstops} backstops: guides',
} as const;
