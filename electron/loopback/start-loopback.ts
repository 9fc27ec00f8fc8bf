import { readFile } from 'node:fs/promises';
import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import { type AddressInfo } from 'node:net';
import { guardHeaders, listPage, pageHeaders, type PageFiles, pathInPage } from '../page/index.ts';
import { refusedStatus } from './refuse.ts';

const HOST = '127.0.0.1';

export interface Loopback {
  /** Where the page is: `http://127.0.0.1:PORT/`. */
  readonly address: string;
  /** Ends every connection and the server. */
  close(): Promise<void>;
}

/**
 * Serves the built page in a folder to this machine alone, on a port that the machine chooses. GET and HEAD only; nothing is written.
 * Throws where the folder can't be read or no port is to be had.
 */
export async function startLoopback(folder: string): Promise<Loopback> {
  const files = listPage(folder);
  const server = createServer((request, response) => {
    const { port } = server.address() as AddressInfo;
    void answer(files, `${HOST}:${String(port)}`, request, response);
  });
  await new Promise<void>((listening, failed) => {
    server.once('error', failed);
    server.listen(0, HOST, listening);
  });
  const { port } = server.address() as AddressInfo;
  return {
    address: `http://${HOST}:${String(port)}/`,
    close: () => new Promise((closed) => {
      server.close(() => { closed(); });
      server.closeAllConnections();
    }),
  };
}

async function answer(files: PageFiles, host: string, request: IncomingMessage, response: ServerResponse): Promise<void> {
  const refused = refusedStatus(request, host);
  if (refused !== null) {
    end(response, refused);
    return;
  }
  const path = pathInPage(files, (request.url ?? '').split('?')[0] ?? '');
  const bytes = path === null ? null : await readFile(path).catch(() => null);
  if (path === null || bytes === null) {
    end(response, 404);
    return;
  }
  response.writeHead(200, { ...pageHeaders(path), 'Content-Length': bytes.length });
  response.end(request.method === 'HEAD' ? undefined : bytes);
}

/** Refuses with a bare status: what is wrong with a request is nobody's business but a developer's. */
function end(response: ServerResponse, status: number): void {
  response.writeHead(status, { ...guardHeaders, 'Content-Length': 0, ...(status === 405 ? { Allow: 'GET, HEAD' } : {}), Connection: 'close' });
  response.end();
}
