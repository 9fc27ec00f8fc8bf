import { type Desk } from '../../electron/bridge/desk.ts';
import { DESK_NAME } from '../../electron/bridge/names.ts';
import { browserDesk } from './browser-desk.ts';

declare global {
  interface Window {
    /** Put there by the preload on the desktop. */
    readonly [DESK_NAME]?: Desk;
  }
}

/** The machine that the page runs on. */
export const pickDesk = (): Desk => window[DESK_NAME] ?? browserDesk();
