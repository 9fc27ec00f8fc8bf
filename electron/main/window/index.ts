/** The window around the page. */
export { createPageAsker, type PageAsker } from './ask-page.ts';
export { createCloseGuard, type CloseGuard } from './close-guard.ts';
export { menuTemplate } from './menu.ts';
export { pathDialogs } from './path-dialogs.ts';
export { fileInWords, readHanded } from './handed-over.ts';
export { windowOptions } from './window-options.ts';
