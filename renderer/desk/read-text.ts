import { say } from '../../core/text/index.ts';
import { type Refused } from '../../electron/bridge/desk.ts';

/** As on the desktop: far over any project a person writes. */
const GREATEST_BYTES = 16 * 1024 * 1024;

export interface TextFile {
  readonly ok: true;
  readonly text: string;
  readonly bytes: Uint8Array<ArrayBuffer>;
  readonly byteOrderMark: boolean;
}

/** A file's text as UTF-8, with or without a byte order mark, or why it is none. */
export async function readTextFile(file: File): Promise<TextFile | Refused> {
  const refused = (message: string): Refused => ({ ok: false, message: `${file.name}: ${message}` });
  if (file.size > GREATEST_BYTES) return refused(say('command.project-too-large', { mb: GREATEST_BYTES / 1024 / 1024 }));
  const bytes = new Uint8Array(await file.arrayBuffer());
  const [first, second, third] = bytes;
  if ((first === 0xff && second === 0xfe) || (first === 0xfe && second === 0xff)) return refused(say('command.project-utf16'));
  try {
    const text = new TextDecoder('utf-8', { fatal: true }).decode(bytes);
    return { ok: true, text, bytes, byteOrderMark: first === 0xef && second === 0xbb && third === 0xbf };
  } catch {
    return refused(say('browser-desk.not-utf8'));
  }
}

/** A text as the bytes of a file that had a byte order mark or none. */
export const fileBytes = (text: string, byteOrderMark: boolean): Uint8Array<ArrayBuffer> =>
  new TextEncoder().encode(byteOrderMark ? `\ufeff${text}` : text) as Uint8Array<ArrayBuffer>;

export const sameBytes = (a: Uint8Array, b: Uint8Array): boolean => a.length === b.length && a.every((byte, index) => byte === b[index]);
