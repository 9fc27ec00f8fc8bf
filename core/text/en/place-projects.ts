/** Words of opening and saving projects. */
export const placeProjects = {
  'place-projects.title': 'Projects',
  'place-projects.undo': 'Undo',
  'place-projects.redo': 'Redo',
} as const;
