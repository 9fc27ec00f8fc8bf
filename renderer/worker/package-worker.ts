/** A worker that makes one package. It is ended from outside: by then nothing has been written anywhere. */
import { type PackageAsk, type PackageTold } from './protocol.ts';
import { tellPackage } from './tell-package.ts';
import { browserTools } from './tools.ts';

const tell = (told: PackageTold): void => { self.postMessage(told); };

async function make(ask: PackageAsk): Promise<void> {
  try {
    for await (const told of tellPackage(ask, await browserTools())) tell(told);
  } catch (error) {
    tell({ kind: 'broken', message: error instanceof Error ? (error.stack ?? error.message) : String(error) });
  }
}

self.addEventListener('message', ({ data }: MessageEvent<PackageAsk>) => void make(data));
