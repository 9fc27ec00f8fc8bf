import { mimeType } from './mime.ts';

/** What the page may load and run: its own files, and pictures that it made itself. Nothing written in a page or a string is run. */
export const contentSecurity: string = [
  "default-src 'none'",
  "script-src 'self'",
  "worker-src 'self'",
  "style-src 'self'",
  "img-src 'self' blob: data:",
  "font-src 'self'",
  "connect-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
].join('; ');

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
export const pageHeaders = (path: string): Record<string, string> => ({ ...guardHeaders, 'Content-Type': mimeType(path) });
