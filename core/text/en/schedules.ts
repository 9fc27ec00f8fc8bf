/** Words in the schedules that are no names of the contract. */
export const scheduleWords = {
  'schedules.postHoles': 'post holes',
  'schedules.premix': '{bag} lb bags in place of the concrete for post holes',
} as const;
