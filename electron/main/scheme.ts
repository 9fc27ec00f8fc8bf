import { readFile } from 'node:fs/promises';
import { PAGE_HOST, PAGE_SCHEME } from '../bridge/names.ts';
import { guardHeaders, pageHeaders, type PageFiles, pathInPage } from '../page/index.ts';

/** What the window's protocol may do: an origin of its own, as safe as https, from which the page can fetch its font. */
export const SCHEME_PRIVILEGES = [{ scheme: PAGE_SCHEME, privileges: { standard: true, secure: true, supportFetchAPI: true } }];

/** Whether an address is of the window's own page. */
export function isPageAddress(address: string): boolean {
  const url = URL.canParse(address) ? new URL(address) : null;
  return url?.protocol === `${PAGE_SCHEME}:` && url.host === PAGE_HOST;
}

/** The answer to a request of the window's protocol: a file of the built page, or nothing. */
export function answerFrom(files: PageFiles): (request: Pick<Request, 'url' | 'method'>) => Promise<Response> {
  return async ({ url, method }) => {
    if (!isPageAddress(url) || method !== 'GET') return nothing(403);
    const path = pathInPage(files, new URL(url).pathname);
    const bytes = path === null ? null : await readFile(path).catch(() => null);
    return path === null || bytes === null ? nothing(404) : new Response(new Uint8Array(bytes), { headers: pageHeaders(path) });
  };
}

const nothing = (status: number): Response => new Response(null, { status, headers: guardHeaders });
