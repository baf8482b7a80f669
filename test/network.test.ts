import { spawn, spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import ts from 'typescript';
import { beforeAll, describe, expect, test } from 'vitest';
import { BIN, ending, imported, requireBuild } from './cli/built-program.ts';
import { temporaryFolder } from './cli/temporary-folder.ts';
import { filesUnder, importsOf, parse, walk } from './reference/imports.ts';

// Nobody's home is anybody else's business: the program uses the network in one place, when asked to,
// and answers browsers of this machine in another, with what that page listens by.

const cache = temporaryFolder();
const THE_ONE = 'src/cli/fetch/http-get.ts';
const SERVER = 'src/cli/serve/loopback-site.ts';
const LISTENER = 'src/report/browser/follow-script.ts';

describe('one file of the program has a way to the network, one answers this machine', () => {
  test('of all files', () => {
    const found = filesUnder('src')
      .filter((file) => SPOKEN.test(readFileSync(file, 'utf8'))) // the others need no parser
      .map((file) => [file, waysOut(parse(file))] as const)
      .filter(([, ways]) => ways.length > 0);
    expect(found).toEqual([
      [THE_ONE, ['fetch']],
      [SERVER, ['node:http']],
      [LISTENER, ['EventSource']],
    ]);
  });

  test('the one that answers has nothing to ask with', () => {
    const [, names = ''] =
      /import \{([^}]*)\} from 'node:http'/.exec(readFileSync(SERVER, 'utf8')) ?? [];
    const taken = names.split(',').map((name) => name.trim());
    expect(taken.filter((name) => !name.startsWith('type '))).toEqual(['createServer']);
  });

  test('the check sees what it is for', () => {
    const planted = ts.createSourceFile(
      'planted.ts',
      `import http from 'node:http';
       import { connect } from 'tls';
       const { request } = await import('https');
       export { lookup } from 'node:dns/promises';
       fetch('x'); globalThis.fetch('x'); const { fetch: f } = globalThis;
       new WebSocket('x'); new XMLHttpRequest(); navigator.sendBeacon('x'); new EventSource('x');
       import { fetchWeather } from './fetch-weather.ts'; o.prefetch();`,
      ts.ScriptTarget.ES2023,
      true,
    );
    expect(waysOut(planted)).toEqual([
      ...['node:http', 'tls', 'https', 'node:dns/promises', 'fetch', 'fetch', 'fetch'],
      ...['WebSocket', 'XMLHttpRequest', 'sendBeacon', 'EventSource'],
    ]);
  });
});

describe('what runs opens no connection', () => {
  beforeAll(requireBuild);

  // Everything that Node has for the network goes through one of these.
  const WATCH = `
    import net from 'node:net'; import dns from 'node:dns'; import dgram from 'node:dgram';
    const tell = (what) => process.stderr.write('NETWORK ' + what + '\\n');
    net.Socket.prototype.connect = () => { tell('connect'); throw new Error('no'); };
    const { lookup } = dns; // of an address, which listening asks for, it asks nobody
    dns.lookup = (name, ...more) => {
      if (net.isIP(name)) return lookup(name, ...more);
      tell('lookup'); throw new Error('no');
    };
    const { listen } = net.Server.prototype;
    net.Server.prototype.listen = function (...args) { tell('listen ' + args[0].host); return listen.apply(this, args); };
    dgram.createSocket = () => { tell('datagram'); throw new Error('no'); };`;
  const watch = imported(WATCH);
  const watched = (args: readonly string[]) =>
    spawnSync(process.execPath, [...watch, ...args], { encoding: 'utf8' });

  test('the watch sees a connection', () => {
    const { stderr } = watched(['-e', "fetch('http://127.0.0.1:47999/').catch(() => {})"]);
    expect(stderr).toMatch(/^NETWORK /);
  });

  test.each([
    [['check', 'scenarios/flat.yaml']],
    [['weather', 'describe', 'weather/saltmere-typical.csv']],
    [['run', 'scenarios/flat.yaml', '--set', '/period={ from: 01-10, to: 01-12 }']],
  ])('%j', (args) => {
    const { status, stderr } = watched([resolve(BIN), ...args]);
    expect(status, stderr).toBe(0);
    expect(stderr).not.toContain('NETWORK');
  });

  test('serve listens at the loopback address, and does nothing else', async () => {
    const args = [...watch, resolve(BIN), 'serve', 'scenarios/flat.yaml'];
    const env = { ...process.env, XDG_CACHE_HOME: cache };
    const server = spawn(process.execPath, args, { env });
    server.stdout.once('data', () => server.kill('SIGINT'));
    const { status, err } = await ending(server);
    expect(status, err).toBe(0);
    expect(err.match(/^NETWORK .*$/gm)).toEqual(['NETWORK listen 127.0.0.1']);
  });
});

/** Modules and globals by which a file could reach the network. */
function waysOut(ast: ts.SourceFile): string[] {
  const found = importsOf(ast)
    .map(({ target }) => target)
    .filter((target) => MODULES.test(target));
  walk(ast, (node) => {
    if (ts.isIdentifier(node) && GLOBALS.has(node.text)) found.push(node.text);
  });
  return found;
}

const MODULES = /^(?:node:)?(?:https?|http2|net|tls|dgram|dns|inspector|cluster)(?:\/|$)|^undici/;
/** Whatever `waysOut` could find, be it in a comment. */
const SPOKEN =
  /https?|http2|net|tls|dgram|dns|inspector|cluster|undici|fetch|WebSocket|XMLHttp|EventSource|Beacon|WebTransport|RTCPeer/;
const GLOBALS = new Set([
  ...['fetch', 'WebSocket', 'XMLHttpRequest', 'EventSource', 'sendBeacon', 'WebTransport'],
  'RTCPeerConnection',
]);
