import { isAbsolute, resolve } from 'node:path';
import { say } from '../../core/text/index.ts';
import { plain } from '../disk/index.ts';
import { type Ran } from './run-window.ts';

/** What starting the window has of the world, so that a test can give it another. */
export interface Starter {
  /** Where it was called: a file that is given to it begins here. */
  readonly cwd: string;
  out(line: string): void;
  err(line: string): void;
  build(): Promise<void>;
  /** The desktop runtime, or null where it has not been fetched. */
  foundRuntime(): string | null;
  /** Fetches it. Returns what went wrong, or null. */
  fetchRuntime(): Promise<string | null>;
  runWindow(runtime: string, file: string | null): Promise<Ran>;
  /** Serves the page in the browser; resolves with its address. */
  serve(): Promise<string>;
  openAddress(address: string): void;
  /** Resolves when a person stops it. */
  stopped(): Promise<void>;
}

export interface StartOptions {
  /** A project file to open on the desktop. */
  readonly file: string | null;
  /** Straight to the browser, without the desktop runtime. */
  readonly browser: boolean;
  /** Whether the browser is opened as well, or its address told alone. */
  readonly open: boolean;
}

/** Reads the words after `npm start --`. Returns the words that are wrong, for a person. */
export function readStartOptions(words: readonly string[]): StartOptions | { readonly wrong: string } {
  const files = words.filter((word) => !word.startsWith('-'));
  const flags = words.filter((word) => word.startsWith('-'));
  const unknown = flags.find((flag) => flag !== '--browser' && flag !== '--no-open');
  if (unknown !== undefined) return { wrong: `${plain(unknown)}: ${say('start.option-unknown')}` };
  if (files.length > 1) return { wrong: `${plain(files[1] ?? '')}: ${say('start.one-file')}` };
  return { file: files[0] ?? null, browser: flags.includes('--browser'), open: !flags.includes('--no-open') };
}

/** Builds the window and opens it: on the desktop, or where that can't be had in the browser. Returns the exit code. */
export async function startWindow(words: readonly string[], starter: Starter): Promise<number> {
  const options = readStartOptions(words);
  if ('wrong' in options) {
    starter.err(options.wrong);
    return 2;
  }
  starter.out(say('start.building'));
  await starter.build();
  if (!options.browser) {
    const failed = await onDesktop(options, starter);
    if (failed === null) return 0;
    starter.out(failed);
  }
  const address = await starter.serve();
  starter.out(say('start.address', { address }));
  if (options.file !== null) starter.out(say('start.file-by-hand', { file: plain(options.file) }));
  if (options.open) starter.openAddress(address);
  await starter.stopped();
  return 0;
}

/** Opens the desktop window and waits for its end. Returns the sentence that says why there is none, or null. */
async function onDesktop(options: StartOptions, starter: Starter): Promise<string | null> {
  let runtime = starter.foundRuntime();
  if (runtime === null) {
    starter.out(say('start.fetching'));
    const reason = await starter.fetchRuntime();
    runtime = starter.foundRuntime();
    if (runtime === null) return say('start.no-runtime', { reason: plain(reason ?? '') });
  }
  const { file } = options;
  const ran = await starter.runWindow(runtime, file === null || isAbsolute(file) ? file : resolve(starter.cwd, file));
  return ran.kind === 'closed' ? null : say('start.no-window', { reason: plain(ran.reason) });
}
