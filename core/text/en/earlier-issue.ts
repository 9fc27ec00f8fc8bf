/** Words about the issue that the drawings are compared with. */
export const earlierIssue = {
  'earlier.title': 'Clouds',
  'earlier.since': 'Clouds since {name}',
  'earlier.none': 'Compare with the project file as it was issued: what changed in the drawings stands in clouds, and the cover lists it.',
  'earlier.choose': 'Choose the earlier file',
  'earlier.chosen': 'What changed since {name} stands in clouds.',
  'earlier.drop': 'No clouds',
  'earlier.refused': '{name} can\'t be compared with: {reason}',
} as const;
