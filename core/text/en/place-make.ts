/** Words of the place `make`. */
export const placeMake = {
  'place-make.title': 'Make',
} as const;
