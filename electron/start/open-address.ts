import { spawn } from 'node:child_process';

/** The platform's own way to open an address: the program and its words. */
export function opener(platform: NodeJS.Platform, address: string): readonly [string, readonly string[]] {
  if (platform === 'darwin') return ['open', [address]];
  // Not `start`: it is a word of the command shell, which reads marks in an address as its own.
  if (platform === 'win32') return ['rundll32', ['url.dll,FileProtocolHandler', address]];
  return ['xdg-open', [address]];
}

/** Opens an address in a person's browser. Where none can be opened nothing happens: the address has been told. */
export function openAddress(address: string): void {
  const [program, words] = opener(process.platform, address);
  const child = spawn(program, words, { stdio: 'ignore', detached: true });
  child.on('error', () => undefined);
  child.unref();
}
