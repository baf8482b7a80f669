import { visibleText } from '../units/visible-text.ts';
import type { Guard } from './files/write-whole.ts';
import type { OwnProcess } from './files/written-by.ts';
import type { Io } from './io.ts';

/**
 * The real world: the disk, and the streams of a process. Whatever is not asked for is not loaded.
 *
 * @param typed  how a terminal has text written that shows no more than ASCII; null for as it is
 */
export function nodeIo(
  version: string,
  own: OwnProcess,
  guard: Guard,
  untilEnded: () => Promise<void> = () => new Promise(() => {}),
  typed: ((text: string) => string) | null = null,
): Io {
  const { stdout, stderr } = own;
  // Files and pipes get all signs, so that they are the same everywhere.
  const printed = (text: string, isTTY: boolean | undefined): string =>
    isTTY === true && typed !== null ? typed(text) : text;
  // It cannot move its cursor, and shows what would move it.
  const isDumb = (): boolean => own.env?.['TERM'] === 'dumb';
  const sharedName = async (path: string) =>
    (await import('./files/where-it-leads.ts')).sharedName(path);
  const outName = async () => (await import('./files/written-by.ts')).nameOfOut();
  const writing = async () => ({
    guard,
    writer: (await import('./files/written-by.ts')).writtenBy(own),
  });
  return {
    version,
    readText: async (path, limit) => (await import('./files/read-text.ts')).readText(path, limit),
    writeWhole: async (path, text) => {
      if ((await sharedName(path)) === (await outName())) {
        // A rename would leave standard output without a name.
        for await (const piece of typeof text === 'string' ? [text] : text) {
          stdout.write(stdout.isTTY === true ? printed(visibleText(piece), true) : piece);
        }
      } else {
        await (await import('./files/write-whole.ts')).writeWhole(path, text, await writing());
      }
    },
    openLines: async (path, how) => (await import('./files/line-file.ts')).openLineFile(path, how),
    sharedName,
    outName,
    makeFolder: async (path) => (await import('./files/make-folder.ts')).makeFolder(path),
    requireWritable: async (path) =>
      (await import('./files/write-whole.ts')).requireWritable(path, await writing()),
    exists: async (path) => (await import('./files/where-it-leads.ts')).exists(path),
    listFolder: async (path) => (await import('node:fs/promises')).readdir(path),
    remove: async (path) => (await import('node:fs/promises')).rm(path, { force: true }),
    packageFolder: async () =>
      (await import('node:url')).fileURLToPath(new URL('../..', import.meta.url)),
    readAsset: async (name) => {
      const { readFile } = await import('node:fs/promises');
      return readFile(new URL(`../${name}`, import.meta.url), 'utf8');
    },
    show: async (path) => {
      const { default: open } = await import('open');
      await open(path);
    },
    openSite: async (port, setup) =>
      (await import('./serve/loopback-site.ts')).openSite(port, setup),
    randomToken: async () => (await import('node:crypto')).randomBytes(24).toString('base64url'),
    fileMark: async (path) => (await import('./serve/file-mark.ts')).fileMark(path),
    pause: async (duration) => (await import('node:timers/promises')).setTimeout(duration),
    untilEnded,
    self: async () => (await import('./files/written-by.ts')).writtenBy(own),
    startWorkers: async (runs) => (await import('./runs/start-workers.ts')).startWorkers(runs),
    get: async (address) =>
      (await import('./fetch/http-get.ts')).httpGet(address, `roombalance/${version}`),
    cacheFolder: async () => {
      const { homedir } = await import('node:os');
      const { cacheFolder } = await import('./fetch/cache-folder.ts');
      return cacheFolder(own.platform, own.env, homedir());
    },
    asking: async () => {
      if (own.stdin.isTTY !== true || stderr.isTTY !== true) return null;
      if (isDumb() || typed !== null) {
        return (await import('./ask-line-by-line.ts')).askLineByLine(own.stdin, {
          write: (text) => stderr.write(printed(text, true)),
        });
      }
      return (await import('./ask-at-terminal.ts')).askAtTerminal(own.stdin, stderr);
    },
    today: () => new Date().toISOString().slice(0, 10),
    loadSha256: async () => {
      const { createHash } = await import('node:crypto');
      return (text) => createHash('sha256').update(text, 'utf8').digest('base64');
    },
    out: (text) => void stdout.write(printed(text, stdout.isTTY)),
    err: (text) => void stderr.write(printed(text, stderr.isTTY)),
    width: Math.max(LEAST_WIDTH, stdout.columns ?? LEAST_WIDTH),
    terminal: stderr.isTTY === true && !isDumb() ? stderr : null,
  };
}

/** Tables need this much, and files and pipes get no more, so that they are the same everywhere. */
const LEAST_WIDTH = 80;
