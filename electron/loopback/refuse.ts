/** What a request says of itself, header names in lower case. */
export interface Asking {
  readonly method?: string | undefined;
  readonly headers: Readonly<Record<string, string | readonly string[] | undefined>>;
}

/** Why a request is refused: the HTTP status. */
export type RefusedStatus = 400 | 403 | 405 | 421;

/**
 * The status with which a request is refused, or null. `host`: the one host that it may name, port included, so that no name
 * which somebody points at this machine leads here; another site's page may neither read nor show what is here
 * (Fetch Metadata, W3C: `Sec-Fetch-Site`).
 */
export function refusedStatus(asking: Asking, host: string): RefusedStatus | null {
  const { headers } = asking;
  if (headers['host'] !== host) return 421;
  if (asking.method !== 'GET' && asking.method !== 'HEAD') return 405;
  const { origin } = headers;
  if (origin !== undefined && origin !== `http://${host}`) return 403;
  const site = headers['sec-fetch-site'];
  if (site !== undefined && site !== 'same-origin' && site !== 'none') return 403;
  return Number(headers['content-length'] ?? 0) > 0 || headers['transfer-encoding'] !== undefined ? 400 : null;
}
