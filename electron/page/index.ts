/** The built page: its files, and the headers that it is served with, whoever serves it. */
export { contentSecurity, guardHeaders, pageHeaders } from './headers.ts';
export { listPage, pathInPage, type PageFiles } from './page-files.ts';
export { mimeType } from './mime.ts';
export { BUILT_PAGE, BUILT_PRELOAD, BUILT_SHELL } from './places.ts';
