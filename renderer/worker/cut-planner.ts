import { type CutAsk, type CutTold } from './protocol.ts';

/** What plans a cut list away from the page. */
export interface CutPlanner {
  start(ask: CutAsk, told: (what: CutTold) => void): void;
  end(): void;
}

/** A worker for one cut list. */
export function cutPlanner(): CutPlanner {
  const worker = new Worker(new URL('./cut-worker.ts', import.meta.url), { type: 'module' });
  return {
    start: (ask, told) => {
      worker.addEventListener('message', ({ data }: MessageEvent<CutTold>) => { told(data); });
      worker.addEventListener('error', (event) => { told({ kind: 'broken', message: event.message }); });
      worker.postMessage(ask);
    },
    end: () => { worker.terminate(); },
  };
}
