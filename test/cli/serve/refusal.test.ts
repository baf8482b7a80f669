import { describe, expect, test } from 'vitest';
import { type Asked, refusal } from '../../../src/cli/serve/refusal.ts';

const PORT = 4100;
const OWN = 'http://127.0.0.1:4100';
const same = (a: string, b: string): boolean => a === b;

const asked = (more: Partial<Asked>): Asked => ({
  ...{ method: 'GET', path: '/word/', host: '127.0.0.1:4100' },
  ...{ origin: undefined, site: undefined },
  ...more,
});
const said = (more: Partial<Asked>) => refusal(asked(more), PORT, 'word', same);

describe('what is answered', () => {
  test.each<[string, Partial<Asked>]>([
    ['a program without a browser', {}],
    ['an address that was typed or opened', { site: 'none' }],
    ['the page itself, for its events', { path: '/word/events', site: 'same-origin' }],
    ['by the other name of this machine', { host: 'localhost:4100' }],
    ['a form of its own page, which names its origin', { method: 'POST', origin: OWN }],
    ['one that is to tell no referrer', { method: 'POST', origin: 'null', site: 'same-origin' }],
  ])('%s', (_, more) => expect(said(more)).toBeNull());
});

describe('what is refused', () => {
  const foreign = 'Not answered: not for pages of another address.\n';
  test.each<[string, Partial<Asked>, number, string]>([
    [
      'a name that somebody else gave to this machine',
      { host: 'home.example:4100' },
      ...([403, 'Not answered: only asked as 127.0.0.1:4100.\n'] as const),
    ],
    [
      'another port',
      { host: '127.0.0.1:80' },
      ...([403, 'Not answered: only asked as 127.0.0.1:4100.\n'] as const),
    ],
    [
      'no host at all',
      { host: undefined },
      ...([403, 'Not answered: only asked as 127.0.0.1:4100.\n'] as const),
    ],
    ['another method', { method: 'PUT' }, 405, 'Not answered: GET and POST only.\n'],
    ['a page that asks for what another holds', { origin: 'http://x.example' }, 403, foreign],
    ['a link on a page of somebody else', { site: 'cross-site' }, 403, foreign],
    ['a page of another port of this machine', { site: 'same-site' }, 403, foreign],
    ['a form of somebody else', { method: 'POST', origin: 'http://x.example' }, 403, foreign],
    [
      'a form of somebody else that is to tell no referrer',
      { method: 'POST', origin: 'null', site: 'cross-site' },
      ...([403, foreign] as const),
    ],
    ['a form that says nothing of where it is from', { method: 'POST' }, 403, foreign],
    ['a form of nobody', { method: 'POST', origin: 'null' }, 403, foreign],
    [
      'the address without its word',
      { path: '/' },
      ...([404, 'Not answered: open the whole address that roombalance serve printed.\n'] as const),
    ],
  ])('%s', (_, more, status, words) => expect(said(more)).toEqual({ status, words }));

  test.each(['/wor/', '/word', '/wordy/', '//word/', '/?/word/', '/word?/'])('%s', (path) => {
    expect(said({ path })?.status).toBe(404);
  });
});
