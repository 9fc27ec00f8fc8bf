/** Words of the place `hand-over`. */
export const placeHandOver = {
  'place-hand-over.title': 'Hand over',
} as const;
