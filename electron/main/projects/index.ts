/** Projects on the desktop: opened, saved, kept in mind, and kept as drafts. */
export { createProjects, type Projects } from './projects.ts';
export { fileName } from './file-name.ts';
export { ENDINGS, isProjectName } from './endings.ts';
export { type Clock } from './drafts.ts';
