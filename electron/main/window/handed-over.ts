import { isAbsolute, resolve } from 'node:path';
import { z } from 'zod';

/** What a second start of the program tells the first: the file that it was given. */
const handedSchema = z.strictObject({ file: z.string().max(32_768).nullable() });
export type Handed = z.infer<typeof handedSchema>;

/** What a second start told, or nothing where it is not ours to read. */
export function readHanded(told: unknown): Handed {
  const read = handedSchema.safeParse(told, { jitless: true });
  return read.success && (read.data.file === null || isAbsolute(read.data.file)) ? read.data : { file: null };
}

/**
 * The file among the words that the program was started with, in full, or null. Words before `first` are the program itself; those that begin
 * with a hyphen are for the browser inside it.
 */
export function fileInWords(words: readonly string[], first: number, cwd: string): string | null {
  const word = words.slice(first).find((one) => !one.startsWith('-'));
  return word === undefined || word === '' ? null : resolve(cwd, word);
}
