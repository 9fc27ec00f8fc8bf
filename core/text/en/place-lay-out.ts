/** Words of the place `lay-out`. */
export const placeLayOut = {
  'place-lay-out.title': 'Lay out',
  'place-lay-out.plan': 'The plan',
  'place-lay-out.board': 'Plan of the facility',
  'place-lay-out.board-help': 'Arrow keys move the sheet, plus and minus bring it closer or farther, 0 shows the whole, M measures. Tab goes from handle to handle: there the arrow keys change the figure, with Shift by ten steps, and Enter lets you type it.',
  'place-lay-out.handle': 'Drag {label}',
  'place-lay-out.drag': 'Change {label}',
  'place-lay-out.finding': '{result} {number}: {rule}, {where}',
} as const;
