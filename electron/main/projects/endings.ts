/** The endings of a project file. The short one is for systems that know a file by its last ending alone. */
export const ENDINGS = ['.penwright.json', '.penwright'] as const;

export const isProjectName = (name: string): boolean => ENDINGS.some((ending) => name.toLowerCase().endsWith(ending));

/** A path with the ending of a project file: as it is where it has one, else with the first of them put after it. */
export const withEnding = (path: string): string => (isProjectName(path) ? path : `${path.replace(/\.json$/i, '')}${ENDINGS[0]}`);
