import { type PackageMaker } from '../places/hand-over/packages.ts';
import { type PackageTold } from './protocol.ts';

/** A worker for one package. */
export function packageMaker(): PackageMaker {
  const worker = new Worker(new URL('./package-worker.ts', import.meta.url), { type: 'module' });
  return {
    start: (ask, told) => {
      worker.addEventListener('message', ({ data }: MessageEvent<PackageTold>) => { told(data); });
      worker.addEventListener('error', (event) => { told({ kind: 'broken', message: event.message }); });
      worker.postMessage(ask);
    },
    end: () => { worker.terminate(); },
  };
}
