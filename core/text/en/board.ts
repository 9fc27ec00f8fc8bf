/** What is said on the live plan of what a hand may take hold of. */
export const board = {
  'board.handle.radius': 'radius of the crowd pen',
  'board.handle.sweep': 'sweep of the crowd pen',
  'board.handle.funnel': 'funnel angle',
  'board.handle.width': 'clear width of the chute',
  'board.handle.length': 'length of {run}',
  'board.handle.insideRadius': 'inside radius of {run}',
  'board.handle.angle': 'angle of {run}',
  'board.handle.spacing': 'post spacing, {side} fence of {run}',
  'board.handle.man-gate': 'place of the man gate on {run}',
  'board.handle.holdingLength': 'length of the pen beside {run}',
  'board.handle.holdingWidth': 'width of the pen beside {run}',
  'board.handle.pen-gate': 'place of the pen gate on {run}',
  'board.handle.alley-gate': 'place of the alley gate on {run}',
  'board.handle.backstop': 'place of the backstop on {run}',
} as const;
