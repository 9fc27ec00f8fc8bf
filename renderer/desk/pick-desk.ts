import { type Desk } from '../../electron/bridge/desk.ts';
import { browserDesk } from './browser-desk.ts';

declare global {
  interface Window {
    /** Put there by the preload on the desktop. */
    readonly penwright?: Desk;
  }
}

/** The machine that the page runs on. */
export const pickDesk = (): Desk => window.penwright ?? browserDesk();
