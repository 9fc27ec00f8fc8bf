/** The kinds of files a package may hold: its folders, and the path's stations. */
export const PACKAGE_KINDS = ['drawings', 'plates', 'nests', 'templates', 'schedules', 'report', 'stations'] as const;
export type PackageKind = (typeof PACKAGE_KINDS)[number];

/** Those that this version makes. */
export const BUILT_KINDS: readonly PackageKind[] = ['drawings', 'plates', 'nests', 'templates', 'schedules', 'report', 'stations'];

export const isPackageKind = (text: string): text is PackageKind => (PACKAGE_KINDS as readonly string[]).includes(text);
