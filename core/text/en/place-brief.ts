/** Words of the place where the brief is filled in. */
export const placeBrief = {
  'place-brief.title': 'Brief',
} as const;
