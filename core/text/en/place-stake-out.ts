/** Words of the place `stake-out`. */
export const placeStakeOut = {
  'place-stake-out.title': 'Stake out',
} as const;
