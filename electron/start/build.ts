import { HOME } from '../command/terminal-io.ts';
import { buildWindow } from './build-window.ts';

await buildWindow(HOME);
