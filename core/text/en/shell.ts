/** Words of the desktop window around the page: menus, dialogs, and what could not be done there. */
export const shell = {
  'shell.name': 'Penwright',
} as const;
