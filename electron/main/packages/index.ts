/** The package on the desktop: a folder for it, its files written there, and a PDF handed on to print. */
export { createPackages } from './packages.ts';
export { createPrint } from './print.ts';
export { isPackagePath } from './package-files.ts';
