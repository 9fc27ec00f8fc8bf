/** A worker that plans a cut list. It is ended from outside: its best plans are with the page by then. */
import { planCutList } from '../../core/shop/cut-list/index.ts';
import { createSolver } from '../../electron/solver/highs.ts';
import { type CutAsk, type CutTold } from './protocol.ts';

const tell = (told: CutTold): void => { self.postMessage(told); };

async function plan({ jobs }: CutAsk): Promise<void> {
  try {
    const plans = planCutList(jobs, await createSolver());
    for (;;) {
      const step = plans.next();
      if (step.done === true) {
        tell({ kind: 'ended', list: step.value });
        return;
      }
      tell({ kind: 'progress', progress: step.value });
    }
  } catch (error) {
    tell({ kind: 'broken', message: error instanceof Error ? error.message : String(error) });
  }
}

self.addEventListener('message', ({ data }: MessageEvent<CutAsk>) => void plan(data));
