/** Words of the place `check`. */
export const placeCheck = {
  'place-check.title': 'Check',
} as const;
