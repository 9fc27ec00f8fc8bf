import { type Disk, nodeDisk } from '../../../electron/disk/index.ts';

/** What a stopped machine answers: nothing that a program can handle. */
export class Stopped extends Error {}

type Change = 'makeFolder' | 'writeNew' | 'rename' | 'removeFile' | 'removeFolder' | 'setMode' | 'flushFolder';

interface Counted {
  readonly disk: Disk;
  /** How many changes were asked for. */
  steps(): number;
}

function counted(before: (step: number, act: () => Promise<void>, half: () => Promise<void>) => Promise<void>): Counted {
  let steps = 0;
  const change = (name: Change, act: () => Promise<void>, half: () => Promise<void> = () => Promise.resolve()): Promise<void> => {
    steps += 1;
    void name;
    return before(steps, act, half);
  };
  return {
    steps: () => steps,
    disk: {
      ...nodeDisk,
      makeFolder: (path) => change('makeFolder', () => nodeDisk.makeFolder(path)),
      writeNew: (path, bytes, mode) =>
        change('writeNew', () => nodeDisk.writeNew(path, bytes, mode), () => nodeDisk.writeNew(path, bytes.subarray(0, bytes.length >> 1), mode)),
      rename: (from, to) => change('rename', () => nodeDisk.rename(from, to)),
      removeFile: (path) => change('removeFile', () => nodeDisk.removeFile(path)),
      removeFolder: (path) => change('removeFolder', () => nodeDisk.removeFolder(path)),
      setMode: (path, mode) => change('setMode', () => nodeDisk.setMode(path, mode)),
      flushFolder: (path) => change('flushFolder', () => nodeDisk.flushFolder(path)),
    },
  };
}

/** A disk of a machine that stops in the middle of a change: of a file that it was writing, half is there. Nothing works after it. */
export function stoppingDisk(last: number): Counted {
  return counted(async (step, act, half) => {
    if (step < last) {
      await act();
      return;
    }
    if (step === last) await half();
    throw new Stopped();
  });
}

/** A disk that refuses the changes from `first` to `last` as a worn-out one does, with half of a file written. */
export function refusingDisk(first: number, last: number, code: string): Counted {
  return counted(async (step, act, half) => {
    if (step < first || step > last) {
      await act();
      return;
    }
    await half();
    throw Object.assign(new Error(code), { code });
  });
}

export const sureDisk = (): Counted => counted((_, act) => act());
