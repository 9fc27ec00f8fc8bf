import { type z } from 'zod';
import { type Disk } from '../../disk/index.ts';

/** What a file of the program's own holds, or null where it is not there, can't be read, or is not what it should be. */
export async function readJson<T>(disk: Disk, path: string, schema: z.ZodType<T>): Promise<T | null> {
  try {
    const result = schema.safeParse(JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(await disk.read(path))), { jitless: true });
    return result.success ? result.data : null;
  } catch {
    return null;
  }
}
