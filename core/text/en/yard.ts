/** Words of the squeeze pad, its roof, the floors and the sort pens. */
export const yard = {
  'board.handle.padLength': 'length of the squeeze pad',
  'board.handle.padWidth': 'clear width of the squeeze pad',
  'where.roofOpen': 'squeeze-pad: the roof is open where the cattle come in and go out',
  'where.roofClad': 'squeeze-pad: the roof is clad {sides}',
  'where.roof.in': 'where the cattle come in',
  'where.roof.out': 'where the cattle go out',
  'where.roofDaylight': 'squeeze-pad: share of the roof that lets daylight in',
} as const;
