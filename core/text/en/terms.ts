/** Words of the trade and of the format that stand alone. */
export const terms = {
  'term.none': 'none',
  'term.unset': 'unset',
  'term.empty': 'empty',
  'term.yes': 'yes',
  'term.no': 'no',
  'term.own-height': 'its height, {height}',
  'term.straight-run': '{length} straight',
  'term.figure-pair': '{a} x {b}',
  'term.pivot-post': 'the pivot post',
  'term.point': '{x}, {y}',
  'term.stock-each': '{length}, each section that is not in the list',
  'term.height-and-depth': 'fence height and footing depth',
  'term.under-the-fence': '{below} below the fence\'s top',
  'term.by-head': 'by its head, at the area that each needs',
  'term.by-gate-width': 'by the gate\'s width, or the fence\'s own where that is thicker',
  'term.clear-of-all': 'clear of everything else',
} as const;
