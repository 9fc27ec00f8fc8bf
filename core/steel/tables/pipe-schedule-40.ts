/**
 * Schedule 40 pipe, ASME B36.10M: nominal size, outside diameter and wall, inches. NPS 1 to 6 from reprints of the standard;
 * 1/2, 3/4, 8, 10 and 12 from a reprint of B36.10 pipe schedules (8 and 10 also in Ill. Admin. Code 35-604 subpart O, table A).
 */
export const PIPE_SCHEDULE_40: readonly { readonly nominal: number; readonly outside: number; readonly wall: number }[] = [
  { nominal: 0.5, outside: 0.84, wall: 0.109 },
  { nominal: 0.75, outside: 1.05, wall: 0.113 },
  { nominal: 1, outside: 1.315, wall: 0.133 },
  { nominal: 1.25, outside: 1.66, wall: 0.14 },
  { nominal: 1.5, outside: 1.9, wall: 0.145 },
  { nominal: 2, outside: 2.375, wall: 0.154 },
  { nominal: 2.5, outside: 2.875, wall: 0.203 },
  { nominal: 3, outside: 3.5, wall: 0.216 },
  { nominal: 3.5, outside: 4, wall: 0.226 },
  { nominal: 4, outside: 4.5, wall: 0.237 },
  { nominal: 5, outside: 5.563, wall: 0.258 },
  { nominal: 6, outside: 6.625, wall: 0.28 },
  { nominal: 8, outside: 8.625, wall: 0.322 },
  { nominal: 10, outside: 10.75, wall: 0.365 },
  { nominal: 12, outside: 12.75, wall: 0.406 },
];
