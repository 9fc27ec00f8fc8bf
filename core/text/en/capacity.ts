/** Words for how many head a facility takes. */
export const capacityWords = {
  'capacity.title': 'Capacity',
  'capacity.pen': 'Crowd pen: {area}, {full} head at {each} a head, {draft} at three quarters full.',
  'capacity.chute': 'Chute: {head} head in line, a body of {body} each.',
  'capacity.drafts': 'Day\'s work: {head} head in {drafts} drafts of {draft} at the most.',
  'capacity.noDraft': 'The crowd pen is too small at three quarters full for one head at {each}.',
} as const;
