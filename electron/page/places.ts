import { join } from 'node:path';

/** Where the built parts of the window are, from the program's folder; packed, the same paths hold inside the archive. */
export const BUILT_PAGE = join('.build', 'window');
export const BUILT_SHELL = join('.build', 'shell');
export const BUILT_PRELOAD = join(BUILT_SHELL, 'preload.cjs');
