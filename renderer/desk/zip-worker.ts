/** Zips a package away from the page, which stays quick meanwhile. */
import { type HandedFile } from '../../electron/bridge/desk.ts';
import { zipEntries } from './zip-entries.ts';

self.addEventListener('message', ({ data }: MessageEvent<readonly HandedFile[]>) => {
  const bytes = zipEntries(data);
  self.postMessage(bytes, { transfer: [bytes.buffer] });
});
