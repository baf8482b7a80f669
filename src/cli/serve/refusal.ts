/** What a request says of itself. */
export interface Asked {
  readonly method: string;
  readonly path: string;
  readonly host: string | undefined;
  readonly origin: string | undefined;
  /** `Sec-Fetch-Site`: who made the browser ask. */
  readonly site: string | undefined;
}

/** What is said to one that is not answered. */
export interface Refusal {
  readonly status: number;
  readonly words: string;
}

/**
 * Why a request is not answered; null where it is.
 *
 * A page of somebody else must neither read nor change anything here. A name that somebody else's
 * server gives to this machine is told by `Host`; a page that sends a form or links to this one, by
 * `Origin` and `Sec-Fetch-Site`; and whoever has not been given the address, by its token.
 *
 * @param same  compares two texts in a time that tells nothing of where they differ
 */
export function refusal(
  asked: Asked,
  port: number,
  token: string,
  same: (a: string, b: string) => boolean,
): Refusal | null {
  const { method, host, origin, site } = asked;
  const hosts = [`127.0.0.1:${port}`, `localhost:${port}`];
  if (host === undefined || !hosts.includes(host)) return no(403, `only asked as ${hosts[0]}`);
  if (method !== 'GET' && method !== 'POST') return no(405, 'GET and POST only');
  const own = origin === `http://${host}`;
  // A browser that is to tell no referrer says "null" when it sends a form of its own page.
  const unsaid = origin === undefined || (origin === 'null' && method === 'POST');
  if (!own && !unsaid) return no(403, 'not for pages of another address');
  const sites = method === 'GET' ? ['same-origin', 'none', undefined] : ['same-origin'];
  const sure = method === 'POST' && own && site === undefined;
  if (!sites.includes(site) && !sure) return no(403, 'not for pages of another address');
  const [, given = ''] = /^\/([^/?]*)\//.exec(asked.path) ?? [];
  if (!same(given, token)) return no(404, 'open the whole address that roombalance serve printed');
  return null;
}

const no = (status: number, why: string): Refusal => ({ status, words: `Not answered: ${why}.\n` });
