import { type Reply } from '../bridge/desk.ts';
import { printRefusal, Refused } from '../disk/index.ts';

/** What came of something that a person can put right. A mistake in the program is thrown on. */
export async function reply<T>(action: () => Promise<T>): Promise<Reply<T>> {
  try {
    return { ok: true, value: await action() };
  } catch (error) {
    if (!(error instanceof Refused)) throw error;
    return { ok: false, message: printRefusal(error.refusal) };
  }
}
