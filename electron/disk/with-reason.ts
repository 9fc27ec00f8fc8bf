import { type StringKey } from '../../core/text/index.ts';
import { errorCode } from './disk.ts';
import { Refused, systemReason } from './refusal.ts';

/** Does something to the disk, and turns what the system refuses into a refusal in our words, whose text takes `{reason}`. */
export async function withReason<T>(shown: string, key: StringKey, action: () => Promise<T>): Promise<T> {
  try {
    return await action();
  } catch (error) {
    throw errorCode(error) === null ? error : new Refused(shown, key, { reason: systemReason(error) });
  }
}
