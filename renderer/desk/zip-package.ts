import { type HandedFile } from '../../electron/bridge/desk.ts';

/** A package as a zip, made in a worker that ends with it. */
export function zipPackage(files: readonly HandedFile[]): Promise<Uint8Array<ArrayBuffer>> {
  const worker = new Worker(new URL('./zip-worker.ts', import.meta.url), { type: 'module' });
  return new Promise<Uint8Array<ArrayBuffer>>((done, failed) => {
    worker.addEventListener('message', ({ data }: MessageEvent<Uint8Array<ArrayBuffer>>) => { done(data); });
    worker.addEventListener('error', (event) => { failed(new Error(event.message)); });
    worker.postMessage(files);
  }).finally(() => { worker.terminate(); });
}
