import type { App, Session, WebContents } from 'electron';
import { isPageAddress } from '../scheme.ts';

/** Keeps every page of the program where it is: no other address, no new window, no page within the page. */
export function denyWays(app: Pick<App, 'on'>): void {
  app.on('web-contents-created', (_, contents) => { denyWaysOf(contents); });
}

export function denyWaysOf(contents: Pick<WebContents, 'on' | 'setWindowOpenHandler'>): void {
  contents.setWindowOpenHandler(() => ({ action: 'deny' }));
  contents.on('will-navigate', (event) => { event.preventDefault(); });
  contents.on('will-frame-navigate', (event) => { event.preventDefault(); });
  contents.on('will-redirect', (event) => { event.preventDefault(); });
  contents.on('will-attach-webview', (event) => { event.preventDefault(); });
}

/** What the page itself makes and shows. */
const isOwnPicture = (address: string): boolean => address.startsWith('data:image/') || address.startsWith('blob:penwright://window/');
/** The developer tools' own pages; they are there only where the program is not packed. */
const isTools = (address: string, packed: boolean): boolean => !packed && address.startsWith('devtools:');

/** Leaves the page no permission, no device, no download, and no address but its own. */
export function denyReach(session: Pick<Session, 'setPermissionRequestHandler' | 'setPermissionCheckHandler' | 'setDevicePermissionHandler' | 'on' | 'webRequest'>, packed: boolean): void {
  session.setPermissionRequestHandler((_, __, answer) => { answer(false); });
  session.setPermissionCheckHandler(() => false);
  session.setDevicePermissionHandler(() => false);
  session.on('will-download', (event) => { event.preventDefault(); });
  session.webRequest.onBeforeRequest(({ url }, answer) => {
    answer({ cancel: !(isPageAddress(url) || isOwnPicture(url) || isTools(url, packed)) });
  });
}
