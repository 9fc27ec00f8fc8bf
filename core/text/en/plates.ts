/** Words of plates and nests. */
export const platesWords = {
  'package.plates': 'Plate list',
  'plates.title': 'Plate {mark}: {quantity} of {section}',
  'plates.refused': 'Plate {mark} is not written, for a table could not cut it: {reason}',
  'plates.unmarked': 'no room for its mark on ETCH',
  'plates.refusal.not-finite': 'a figure of its outline is no number',
  'plates.refusal.zero-length': 'an edge, arc or circle of no size',
  'plates.refusal.twice': 'an edge that stands twice',
  'plates.refusal.open': 'an outline that does not close',
  'plates.refusal.crossing': 'edges that cross or touch',
  'plates.refusal.hole-outside': 'a hole that is not inside its outline',
} as const;
