import { fileURLToPath } from 'node:url';
import { buildPage } from '../../electron/start/build-window.ts';
import { buildCommand } from './build-command.ts';

/** Once before all tests: the window's page as it ships, for those that drive it in a browser, and the command, for those that start it. */
export default async function setup(): Promise<void> {
  await buildCommand();
  await buildPage(fileURLToPath(new URL('../..', import.meta.url)));
}
