import { extname } from 'node:path';

/** Media types of what a built page is made of; registered names (IANA media types), `text/javascript` as in RFC 9239. */
const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.svg': 'image/svg+xml; charset=utf-8',
  '.png': 'image/png',
  '.ico': 'image/vnd.microsoft.icon',
  '.ttf': 'font/ttf',
  '.woff2': 'font/woff2',
  '.wasm': 'application/wasm',
  '.txt': 'text/plain; charset=utf-8',
};

/** The media type of a file by its ending; what is not known is bytes, which a browser never runs. */
export const mimeType = (path: string): string => TYPES[extname(path).toLowerCase()] ?? 'application/octet-stream';
