import { type Params, type StringKey, say } from '../../core/text/index.ts';
import { errorCode } from './disk.ts';

/** What a person must put right before something can be read or written: the path it is about, and the words. */
export interface Refusal {
  readonly path: string;
  readonly key: StringKey;
  readonly params: Params;
}

/** Carries a refusal out of the middle of the disk's work. */
export class Refused extends Error {
  readonly refusal: Refusal;

  constructor(path: string, key: StringKey, params: Params = {}) {
    super(`${path}: ${key}`);
    this.refusal = { path, key, params };
  }
}

const SYSTEM_WORDS: Readonly<Record<string, StringKey>> = {
  EACCES: 'command.system-permission',
  EPERM: 'command.system-permission',
  EROFS: 'command.system-read-only',
  ENOSPC: 'command.system-full',
  EDQUOT: 'command.system-full',
  ENAMETOOLONG: 'command.system-name-too-long',
  EBUSY: 'command.system-busy',
  EXDEV: 'command.system-busy',
  ENOENT: 'command.system-gone',
  ENOTDIR: 'command.system-not-folder',
  EEXIST: 'command.system-exists',
  ENOTEMPTY: 'command.system-exists',
  ELOOP: 'command.system-loop',
  EMFILE: 'command.system-busy',
  EIO: 'command.system-broken',
};

/** Our words for what the operating system refused; its code stands beside them. */
export function systemReason(error: unknown): string {
  const code = errorCode(error);
  if (code === null) throw error;
  return say(SYSTEM_WORDS[code] ?? 'command.system-other', { code });
}

/** A refusal as it is printed: `PATH: what is wrong, what is allowed`. Control characters are spelled out. */
export function printRefusal(refusal: Refusal): string {
  return `${plain(refusal.path)}: ${plain(say(refusal.key, refusal.params))}`;
}

/** A text with its control characters spelled out, so that a name can't move a terminal's cursor or start a line of its own. */
export function plain(text: string): string {
  return text.replace(/[\u0000-\u001f\u007f-\u009f\u2028\u2029\u202a-\u202e\u2066-\u2069]/g, (char) => `\\u${char.charCodeAt(0).toString(16).padStart(4, '0')}`);
}
