import { mimeType } from './mime.ts';

/** What the page may load and run: its own files, and pictures that it made itself. Nothing written in a page or a string is run. */
const policy = (scripts: string): string => [
  "default-src 'none'",
  `script-src ${scripts}`,
  "worker-src 'self'",
  "style-src 'self'",
  "img-src 'self' blob: data:",
  "font-src 'self'",
  "connect-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
].join('; ');

export const contentSecurity: string = policy("'self'");

/** The workers that plan cuts: a worker is held to the policy of its own answer, and the solver is WebAssembly. */
const SOLVES = /[/\\](cut|package)-worker-[\w-]+\.js$/;

/** The policy of one file: a worker that solves may compile WebAssembly, and nothing else may. */
const policyOf = (path: string): string => (SOLVES.test(path) ? policy("'self' 'wasm-unsafe-eval'") : contentSecurity);

/** The headers of every answer. */
export const guardHeaders: Readonly<Record<string, string>> = {
  'Content-Security-Policy': contentSecurity,
  'X-Content-Type-Options': 'nosniff',
  'Referrer-Policy': 'no-referrer',
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Cross-Origin-Resource-Policy': 'same-origin',
  // A page built anew is seen at once, and nothing of it stays in a browser.
  'Cache-Control': 'no-store',
};

/** The headers of one file of the page. */
export const pageHeaders = (path: string): Record<string, string> => ({ ...guardHeaders, 'Content-Security-Policy': policyOf(path), 'Content-Type': mimeType(path) });
