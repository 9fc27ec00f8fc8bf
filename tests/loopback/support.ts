import { request } from 'node:http';

export interface Answered {
  readonly status: number;
  readonly headers: Readonly<Record<string, string | string[] | undefined>>;
  readonly body: string;
}

/** Asks a server on this machine, with the path sent as it is written. */
export function ask(port: number, path: string, headers: Readonly<Record<string, string>> = {}, method = 'GET', body = ''): Promise<Answered> {
  return new Promise((done, failed) => {
    const asking = request({ host: '127.0.0.1', port, path, method, headers: { Host: `127.0.0.1:${String(port)}`, ...headers } }, (response) => {
      let text = '';
      response.setEncoding('utf8');
      response.on('data', (part: string) => { text += part; });
      response.on('end', () => { done({ status: response.statusCode ?? 0, headers: response.headers, body: text }); });
    });
    asking.on('error', failed);
    asking.end(body);
  });
}
