import { spawn } from 'node:child_process';
import { readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { main } from '../../../src/cli/main.ts';
import { SMALL_HOME, writeSmallHome } from '../../browser/small-home.ts';
import { BIN, ending, requireBuild } from '../built-program.ts';
import { calledHere } from '../call-built.ts';
import { fakeIo } from '../fake-io.ts';
import { temporaryFolder } from '../temporary-folder.ts';

const folder = temporaryFolder();
const SMALL = join(folder, 'small.yaml');

beforeAll(async () => {
  requireBuild();
  const file = writeSmallHome(folder);
  writeFileSync(file, SMALL_HOME.replace('to: "04-08"', 'to: "03-14"')); // soon shown
});

/** A server of the small home, once it has said its address. */
async function serving(...more: readonly string[]) {
  const env = { ...process.env, XDG_CACHE_HOME: folder };
  const child = spawn(process.execPath, [BIN, 'serve', ...more], { cwd: folder, env });
  const ended = ending(child);
  const address = await Promise.race([
    new Promise<string>((done) => child.stdout.once('data', (piece) => done(String(piece).trim()))),
    ended.then(({ err }) => err),
  ]);
  return { address, ended, pid: child.pid, end: (signal: NodeJS.Signals) => child.kill(signal) };
}

/** A server of it in this process. */
function servingHere(...more: readonly string[]) {
  const said = { out: '', err: '' };
  let end = () => {};
  let tell: (address: string) => void = () => {};
  const address = new Promise<string>((done) => {
    tell = done;
  });
  const ended = calledHere(['serve', SMALL, ...more], {
    cacheFolder: async () => join(folder, 'roombalance'),
    untilEnded: () =>
      new Promise((done) => {
        end = done;
      }),
    out: (text) => {
      said.out += text;
      tell(text.trim());
    },
    err: (text) => {
      said.err += text;
    },
  });
  return { said, address, ended, end: () => end() };
}

describe('roombalance serve', () => {
  test('says its address, shows the home, and ends well by Ctrl-C', async () => {
    const { address, ended, end } = await serving('small.yaml');
    const answer = await fetch(address);
    expect(answer.status).toBe(200);
    expect(/<b>Small home\.<\/b> 5 days/.test(await answer.text())).toBe(true);
    end('SIGINT');
    expect(await ended).toEqual({
      ...{ status: 0, signal: null, out: `${address}\n` },
      err: 'small.yaml is shown to this machine alone; Ctrl-C ends that.\nEnded.\n',
    });
  });

  test('a port that is taken is told; two on one scenario get along, and know it', async () => {
    const first = await serving('small.yaml');
    const { port } = new URL(first.address);
    const taken = servingHere('--port', port);
    expect(await taken.ended).toMatchObject({ status: 1, out: '' });
    expect(taken.said.err).toBe(
      `error: --port ${port}: something listens there already, perhaps another roombalance serve.\n` +
        'Name another, or none for any that is free.\n',
    );
    const second = servingHere();
    const addresses = [first.address, await second.address];
    const pages = await Promise.all(addresses.map((address) => fetch(address)));
    expect(pages.map(({ status }) => status)).toEqual([200, 200]);
    first.end('SIGTERM');
    second.end();
    expect((await first.ended).status).toBe(0);
    expect((await second.ended).status).toBe(0);
    expect(second.said.err).toBe(
      `${SMALL} is shown to this machine alone; Ctrl-C ends that.\n` +
        `note: process ${first.pid} shows ${SMALL} already, at port ${port}; both follow it.\nEnded.\n`,
    );
    expect(readdirSync(join(folder, 'roombalance', 'served'))).toEqual([]);
  });

  test('asks for a home where there is none', async () => {
    const { address, ended, end } = await serving();
    expect(/<title>A first scenario: home\.yaml</.test(await (await fetch(address)).text())).toBe(
      true,
    );
    end('SIGINT');
    expect(await ended).toMatchObject({
      status: 0,
      err: 'home.yaml is asked for and shown to this machine alone; Ctrl-C ends that.\nEnded.\n',
    });
  });

  test.each([
    [
      ['small.yaml', '--new', 'x.yaml'],
      1,
      /^error: option '--new <file\.yaml>' cannot be used with/,
    ],
    [['--new', 'small.yaml'], 2, /^small\.yaml: expected the name of a file that is not there yet/],
    [['gone.yaml'], 2, /^gone\.yaml: expected a file to read, got nothing of that name/],
    [['small.yaml', '--port', '0'], 1, /^error: option '--port <number>' argument '0' is invalid/],
    [['small.yaml', '--port', '70000'], 1, /Give a whole number from 1 to 65535\./],
  ])('%j', async (args, status, words) => {
    const io = fakeIo({ 'small.yaml': 'title: Small home\n' });
    expect(await main(['serve', ...args], io.io)).toBe(status);
    expect(io.said.err).toMatch(words);
  });
});
