import { request } from 'node:http';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openSite } from '../../../src/cli/serve/loopback-site.ts';
import type { Site, SiteRequest } from '../../../src/cli/serve/site.ts';

const heard: SiteRequest[] = [];
const faults: unknown[] = [];
let site: Site;

beforeAll(async () => {
  site = await openSite(0, {
    token: 'word',
    respond: async (asked) => {
      heard.push(asked);
      if (asked.name === 'fault') throw new Error('of our own');
      if (asked.name !== '') return { status: 404, page: 'nothing\n' };
      if (asked.method === 'POST') return { status: 303, page: '', location: './' };
      return { status: 200, page: { page: '<p>é</p>', policy: "default-src 'none'" } };
    },
    greeting: async () => '{"first":true}',
    failed: (fault) => faults.push(fault),
  });
});
afterAll(() => site.close());

/** What comes of a request with these headers. */
function ask(path: string, method = 'GET', headers: Record<string, string> = {}, body = '') {
  return new Promise<{ status: number; headers: Record<string, unknown>; text: string }>(
    (done, fail) => {
      const asked = request(new URL(path, site.address), { method, headers }, (answer) => {
        let text = '';
        answer.setEncoding('utf8').on('data', (piece) => {
          text += piece;
        });
        answer.on('end', () =>
          done({ status: answer.statusCode ?? 0, headers: answer.headers, text }),
        );
      });
      asked.on('error', fail);
      asked.end(body);
    },
  );
}

const OWN = { 'sec-fetch-site': 'same-origin' };

describe('a site of this machine', () => {
  test('is at the loopback address, with its word', () => {
    expect(site.address).toMatch(/^http:\/\/127\.0\.0\.1:\d+\/word\/$/);
  });

  test('sends a page under its policy, for no other page to frame, keep or read', async () => {
    const { status, headers, text } = await ask('');
    expect([status, text]).toEqual([200, '<p>é</p>']);
    expect(headers).toMatchObject({
      'content-type': 'text/html; charset=utf-8',
      'content-security-policy': "default-src 'none'; frame-ancestors 'none'",
      'cache-control': 'no-store',
      'x-content-type-options': 'nosniff',
      'referrer-policy': 'no-referrer',
      'cross-origin-resource-policy': 'same-origin',
    });
    expect(Object.keys(headers).filter((name) => name.startsWith('access-control'))).toEqual([]);
  });

  test('sends words as words', async () => {
    const { status, headers, text } = await ask('gone?x=1');
    expect([status, text]).toEqual([404, 'nothing\n']);
    expect(headers['content-type']).toBe('text/plain; charset=utf-8');
    expect(heard.at(-1)).toEqual({ method: 'GET', name: 'gone', body: '' });
  });

  test('hands on what a form sends, and where to go then', async () => {
    const { status, headers } = await ask('', 'POST', OWN, 'kind=flat');
    expect([status, headers['location']]).toEqual([303, './']);
    expect(heard.at(-1)).toEqual({ method: 'POST', name: '', body: 'kind=flat' });
  });

  test('takes no more than a form can hold', async () => {
    const before = heard.length;
    const { status, text } = await ask('', 'POST', OWN, 'x'.repeat(64 * 1024 + 1));
    expect([status, text]).toEqual([413, 'Not answered: more than 65536 bytes.\n']);
    expect((await ask('', 'POST', OWN, 'x'.repeat(64 * 1024))).status).toBe(303);
    expect(heard.length).toBe(before + 1);
  });

  test.each([
    ['/', 'GET', {}, 404],
    ['/wore/', 'GET', {}, 404],
    ['', 'DELETE', {}, 405],
    ['', 'OPTIONS', { origin: 'http://x.example' }, 405],
    ['', 'GET', { host: 'x.example' }, 403],
    ['', 'GET', { 'sec-fetch-site': 'cross-site' }, 403],
    ['', 'POST', { origin: 'http://x.example' }, 403],
  ])('%s by %s with %j: %i, and nobody hears of it', async (path, method, headers, expected) => {
    const before = heard.length;
    const { status, headers: told, text } = await ask(path, method, headers);
    expect(status).toBe(expected);
    expect(text).toMatch(/^Not answered: .*\.\n$/);
    expect(text).not.toContain('word');
    expect(told['allow']).toBe(expected === 405 ? 'GET, POST' : undefined);
    expect(heard.length).toBe(before);
  });

  test('tells pages that listen, first how things stand', async () => {
    const lines: string[] = [];
    const asked = request(new URL('events', site.address));
    await new Promise<void>((done) => {
      asked.on('response', (answer) => {
        expect(answer.headers['content-type']).toBe('text/event-stream');
        answer.setEncoding('utf8').on('data', (piece) => {
          lines.push(piece);
          if (lines.length === 1) site.tell('{"second":true}');
          else done();
        });
      });
      asked.end();
    });
    asked.destroy();
    expect(lines).toEqual(['data: {"first":true}\n\n', 'data: {"second":true}\n\n']);
  });

  test('says when a page could not be made', async () => {
    await expect(ask('fault')).rejects.toThrow('socket hang up');
    expect(faults).toEqual([new Error('of our own')]);
  });

  test('says when a port is taken', async () => {
    const port = Number(new URL(site.address).port);
    const setup = { token: 'a', respond: async () => ({ status: 200, page: '' }) };
    await expect(
      openSite(port, { ...setup, greeting: async () => '', failed: () => {} }),
    ).rejects.toThrow(
      `error: --port ${port}: something listens there already, perhaps another roombalance serve.\n` +
        'Name another, or none for any that is free.',
    );
  });
});
