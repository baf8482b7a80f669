import { afterEach, describe, expect, test } from 'vitest';
import { httpGet } from '../../../src/cli/fetch/http-get.ts';
import { type Answer, loopback, says } from './loopback.ts';

const QUICK = { time: 2000, size: 10_000, waits: [1, 1], longestWait: 5 };
const open: { end: () => Promise<void> }[] = [];
afterEach(async () => {
  for (const one of open.splice(0)) await one.end();
});

/** What comes of asking a service; and what it was asked. */
async function ask(answer: Answer, limits = QUICK) {
  const service = await loopback(answer);
  open.push(service);
  const told = await httpGet(`${service.address}/x`, 'roombalance/1', limits).then(
    (text) => ({ text }),
    (error: Error) => ({ error: error.message.replace(/:\d{4,5}:/, ':PORT:') }),
  );
  return { ...told, asked: service.asked.length };
}

test('gives the text, and says who asks', async () => {
  const seen: (string | undefined)[] = [];
  const answer: Answer = (request, response) => {
    seen.push(request.headers['user-agent'], request.method);
    says('täglich', 'text/csv; charset=utf-8')(request, response);
  };
  expect(await ask(answer)).toEqual({ text: 'täglich', asked: 1 });
  expect(seen).toEqual(['roombalance/1', 'GET']);
});

describe('refusals are told in the words of the service, at once', () => {
  const sea = '{"message":"Location over the sea. Please, select another location","status":400}';
  const range = `{"error":true,"reason":"Parameter 'start_date' is out of allowed range"}`;
  test.each([
    [sea, '"Location over the sea. Please, select another location"'],
    [range, '"Parameter \'start_date\' is out of allowed range"'],
  ])('%s', async (body, words) => {
    expect(await ask(says(body, 'application/json', 400))).toEqual({
      error: `127.0.0.1:PORT: expected weather, got a refusal (400): ${words} (has it that place and that year?)`,
      asked: 1,
    });
  });

  test('a refusal without a reason, of any length', async () => {
    expect(await ask(says('<html>'.repeat(9000), 'text/html', 404))).toEqual({
      error:
        '127.0.0.1:PORT: expected weather, got a refusal (404) (has it that place and that year?)',
      asked: 1,
    });
  });

  test('being sent elsewhere', async () => {
    const answer: Answer = (_, response) => {
      response.writeHead(301, { location: 'https://elsewhere.invalid/' }).end();
    };
    expect(await ask(answer)).toEqual({
      error:
        '127.0.0.1:PORT: expected weather, got being sent on to https://elsewhere.invalid/ (301) (the service has moved; its address can be given)',
      asked: 1,
    });
  });
});

describe('what may pass is tried again', () => {
  test.each([429, 500, 503, 529])('%i, then an answer', async (status) => {
    let tries = 0;
    const answer: Answer = (request, response) => {
      tries++;
      says(tries < 3 ? 'busy' : 'fine', 'text/plain', tries < 3 ? status : 200)(request, response);
    };
    expect(await ask(answer)).toEqual({ text: 'fine', asked: 3 });
  });

  test('and given up in words', async () => {
    expect(await ask(says('', 'text/plain', 503))).toEqual({
      error:
        '127.0.0.1:PORT: expected weather, got a refusal (503) (the service is busy or broken; try later; tried 3 times)',
      asked: 3,
    });
  });

  test('a service may ask to wait, but not for ever', async () => {
    const answer: Answer = (_, response) => {
      response.writeHead(429, { 'retry-after': '3600' }).end();
    };
    const before = performance.now();
    expect((await ask(answer)).asked).toBe(3);
    expect(performance.now() - before).toBeLessThan(1000); // two waits of 5 ms, not of an hour
  });

  test('a body that breaks off', async () => {
    const answer: Answer = (_, response) => {
      response.writeHead(200, { 'content-type': 'text/csv', 'content-length': '5000' });
      response.write('time(UTC),T2m\n', () => response.destroy());
    };
    expect(await ask(answer)).toEqual({
      error: '127.0.0.1:PORT: expected weather, got an answer that breaks off (tried 3 times)',
      asked: 3,
    });
  });

  test('nobody there', async () => {
    const service = await loopback(says('', 'text/plain'));
    await service.end();
    await expect(httpGet(service.address, '', QUICK)).rejects.toThrow(
      'got no connection: it is refused (ECONNREFUSED) (tried 3 times)',
    );
  });
});

describe('limits', () => {
  test('an answer without end is left after so many bytes', async () => {
    const answer: Answer = (_, response) => {
      response.writeHead(200, { 'content-type': 'text/csv' });
      const more = () => {
        if (!response.destroyed) response.write('1,2,3\n'.repeat(500), more);
      };
      more();
    };
    expect(await ask(answer)).toEqual({
      error: '127.0.0.1:PORT: expected weather, got more than 0.01 MB (that is no year of weather)',
      asked: 1,
    });
  });

  test('a slow answer is left after so long, with its first bytes there', async () => {
    const answer: Answer = (_, response) => {
      response.writeHead(200, { 'content-type': 'text/csv' }).write('time');
    };
    expect(await ask(answer, { ...QUICK, time: 500, waits: [] })).toEqual({
      error: '127.0.0.1:PORT: expected weather, got no whole answer in 0.5 s',
      asked: 1,
    });
  });
});

describe('what is no weather', () => {
  test('a page for a browser', async () => {
    expect(await ask(says('<html>', 'text/html; charset=utf-8'))).toEqual({
      error:
        '127.0.0.1:PORT: expected weather, got a page for a browser (text/html; charset=utf-8) (perhaps a network wants you to sign in first)',
      asked: 1,
    });
  });

  test('bytes that are no text', async () => {
    const answer: Answer = (_, response) => {
      response.writeHead(200).end(Buffer.from([0xff, 0xfe, 0x41]));
    };
    expect((await ask(answer)).asked).toBe(1);
    expect(await ask(answer)).toMatchObject({
      error: expect.stringContaining('got bytes that are not UTF-8 text'),
    });
  });

  test.each(['http://example.org/', 'ftp://127.0.0.1/', 'file:///etc/hosts', 'no address'])(
    '%s is never asked',
    async (address) => {
      await expect(httpGet(address, '', QUICK)).rejects.toThrow(
        'expected an address that begins with https://, got another',
      );
    },
  );
});
