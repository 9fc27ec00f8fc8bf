import { fileURLToPath } from 'node:url';
import { buildPage } from '../../electron/start/build-window.ts';

/** Once before all tests: the window's page as it ships, for those that drive it in a browser. */
export default async function setup(): Promise<void> {
  await buildPage(fileURLToPath(new URL('../..', import.meta.url)));
}
