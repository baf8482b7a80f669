import { createHash, timingSafeEqual } from 'node:crypto';
import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import { UsageError } from '../usage-error.ts';
import { refusal } from './refusal.ts';
import type { Site, SiteAnswer, SiteRequest, SiteSetup } from './site.ts';

/**
 * Answer browsers of this machine, and nobody else: the loopback address alone is listened at, and
 * nothing is ever asked of anybody.
 *
 * @param port  0 for any that is free
 * @throws UsageError where the port cannot be had
 */
export async function openSite(port: number, setup: SiteSetup): Promise<Site> {
  const open = new Set<ServerResponse>();
  const server = createServer((request, response) => {
    answer(request, response).catch((fault: unknown) => {
      const gone = request.socket.destroyed; // whoever asked did not wait
      response.destroy();
      if (!gone) setup.failed(fault);
    });
  });
  await listening(server, port);
  const own = (server.address() as { readonly port: number }).port;

  async function answer(request: IncomingMessage, response: ServerResponse): Promise<void> {
    const { method = '', url = '', headers } = request;
    const { host, origin, 'sec-fetch-site': site } = headers;
    const asked = { method, path: url, host, origin, site: site?.toString() };
    const refused = refusal(asked, own, setup.token, sameText);
    if (refused !== null) return send(response, { status: refused.status, page: refused.words });
    const name = url.slice(setup.token.length + 2).replace(/\?.*/, '');
    if (method === 'GET' && name === 'events') return listen(response);
    const body = method === 'POST' ? await textOf(request) : '';
    if (body === null) return send(response, TOO_MUCH);
    send(response, await setup.respond({ ...{ method, name, body } } as SiteRequest));
  }

  async function listen(response: ServerResponse): Promise<void> {
    const first = await setup.greeting();
    response.writeHead(200, { ...ALWAYS, 'content-type': 'text/event-stream' });
    response.write(event(first));
    open.add(response);
    response.on('close', () => open.delete(response));
  }

  return {
    address: `http://${HOST}:${own}/${setup.token}/`,
    tell: (line) => {
      for (const response of open) response.write(event(line));
    },
    close: () =>
      new Promise((done) => {
        server.close(() => done());
        server.closeAllConnections();
      }),
  };
}

function listening(server: ReturnType<typeof createServer>, port: number): Promise<void> {
  return new Promise((done, fail) => {
    server.on('error', (error: NodeJS.ErrnoException) => {
      const why = WHY[error.code ?? ''];
      const hint = 'Name another, or none for any that is free.';
      fail(why === undefined ? error : new UsageError(`error: --port ${port}: ${why}.\n${hint}`));
    });
    server.listen({ port, host: HOST, exclusive: true }, done);
  });
}

function send(response: ServerResponse, { status, page, location }: SiteAnswer): void {
  const words = typeof page === 'string';
  const policy = words ? "default-src 'none'" : page.policy;
  response.writeHead(status, {
    ...ALWAYS,
    'content-type': `text/${words ? 'plain' : 'html'}; charset=utf-8`,
    'content-security-policy': `${policy}; frame-ancestors 'none'`,
    ...(location !== undefined && { location }),
    ...(status === 405 && { allow: 'GET, POST' }),
    ...(status === 413 && { connection: 'close' }),
  });
  response.end(words ? page : page.page);
}

/** What was sent, as text; null for more than any form of ours holds. */
async function textOf(request: IncomingMessage): Promise<string | null> {
  const pieces: Buffer[] = [];
  let size = 0;
  // The rest is not read, but the connection stays until the answer is sent.
  for await (const piece of request.iterator({ destroyOnReturn: false })) {
    size += (piece as Buffer).length;
    if (size > MOST) return null;
    pieces.push(piece as Buffer);
  }
  return Buffer.concat(pieces).toString('utf8');
}

function sameText(a: string, b: string): boolean {
  const hash = (text: string): Buffer => createHash('sha256').update(text).digest();
  return timingSafeEqual(hash(a), hash(b));
}

const event = (line: string): string => `data: ${line}\n\n`;

const HOST = '127.0.0.1';
const MOST = 64 * 1024; // [byte]
const TOO_MUCH: SiteAnswer = { status: 413, page: `Not answered: more than ${MOST} bytes.\n` };
const WHY: Readonly<Record<string, string>> = {
  EADDRINUSE: 'something listens there already, perhaps another roombalance serve',
  EACCES: 'the system does not let you listen there',
};
const ALWAYS = {
  'cache-control': 'no-store',
  'x-content-type-options': 'nosniff',
  'referrer-policy': 'no-referrer',
  'cross-origin-resource-policy': 'same-origin',
  'cross-origin-opener-policy': 'same-origin',
};
