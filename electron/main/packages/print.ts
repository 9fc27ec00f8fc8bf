import { join } from 'node:path';
import { type Disk, Refused, replaceFile, withReason } from '../../disk/index.ts';
import { type Answers } from '../answers.ts';
import { fileName } from '../projects/file-name.ts';
import { reply } from '../reply.ts';

export interface PrintNeed {
  readonly disk: Disk;
  /** A folder of the program's own. */
  readonly folder: string;
  /** Opens a file with the program that the machine has for it. Returns what went wrong, or an empty text. */
  readonly open: (path: string) => Promise<string>;
}

const START = new TextEncoder().encode('%PDF-');

/**
 * Hands a PDF to the machine's own program for PDF files, from which a person prints. The bytes stand in the program's folder under a
 * name that always ends in `.pdf`; those of the last time are taken away first.
 */
export function createPrint({ disk, folder, open }: PrintNeed): Pick<Answers, 'print'> {
  return {
    print: (pdf, name) => reply(async () => {
      const file = `${fileName(name).replace(/\.pdf$/i, '')}.pdf`;
      if (!START.every((byte, index) => pdf[index] === byte)) throw new Refused(file, 'shell.not-pdf');
      const path = join(folder, file);
      await withReason(path, 'shell.file-unwritten', async () => {
        if ((await disk.kindOf(folder)) === null) await disk.makeFolder(folder);
        // One that is still open in another program may refuse to go: it is left for the next time.
        for (const entry of await disk.list(folder)) if (entry.kind === 'file') await disk.removeFile(join(folder, entry.name)).catch(() => undefined);
        await replaceFile(disk, path, pdf, () => true);
      });
      const reason = await open(path);
      if (reason !== '') throw new Refused(file, 'shell.not-printed', { reason });
      return null;
    }),
  };
}
