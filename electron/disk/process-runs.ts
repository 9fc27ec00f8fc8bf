import { errorCode } from './disk.ts';

/** Whether a process with this number goes on, be it the same or one that got the number anew. */
export function processRuns(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    // Any other refusal (it belongs to somebody else) means that it is there.
    return errorCode(error) !== 'ESRCH';
  }
}
