/** Words of the place `lay-out`. */
export const placeLayOut = {
  'place-lay-out.title': 'Lay out',
} as const;
