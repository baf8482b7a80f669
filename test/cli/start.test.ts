import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { BIN, requireBuild } from './built-program.ts';
import { temporaryFolder } from './temporary-folder.ts';

// What answers without a simulation must be there at once, so it may load next to nothing.

const root = temporaryFolder();

beforeAll(requireBuild);

/** The packages and own modules that a process of the program loads, and its exit status. */
function loadedBy(args: readonly string[]) {
  const folder = mkdtempSync(join(root, 'x'));
  const env = { ...process.env, NODE_V8_COVERAGE: folder };
  const { status } = spawnSync(process.execPath, [BIN, ...args], { env });
  const urls = readdirSync(folder)
    .map((file): Coverage => JSON.parse(readFileSync(join(folder, file), 'utf8')))
    .flatMap(({ result }) => result.map(({ url }) => url));
  const packages = urls.flatMap((url) => PACKAGE.exec(url)?.[1] ?? []);
  const own = urls.flatMap((url) =>
    PACKAGE.test(url) ? [] : (/\/dist\/(.*)$/.exec(url)?.[1] ?? []),
  );
  return { status, packages: [...new Set(packages)], own };
}

interface Coverage {
  readonly result: readonly { readonly url: string }[];
}

const PACKAGE = /.*\/node_modules\/((?:@[^/]+\/)?[^/]+)/;

describe('help, version and usage errors load nothing but the words of the commands', () => {
  test.each([
    [['--help'], 0],
    [['run', '--help'], 0],
    [['weather', 'make', '--help'], 0],
    [['--version'], 0],
    [['chek', 'a.yaml'], 1],
    [['compare'], 1],
    [['report', 'a.yaml', '--opne'], 1],
  ])('%j', (args, expected) => {
    const { status, packages, own } = loadedBy(args);
    expect(status).toBe(expected);
    expect(packages).toEqual(['commander']);
    expect(own).toContain('cli/bin.js');
    // whatever is printed goes through this one
    expect(own.filter((file) => !file.startsWith('cli/'))).toEqual(['units/visible-text.js']);
    // bin, main, io, two of options, usage error, speak-visibly, the one above, and a file a command
    expect(own.length, own.join(', ')).toBeLessThanOrEqual(MOST_MODULES);
  });
});

test.each([
  [['run', 'a.yaml', '--from', '01-09'], 1],
  [['check', 'gone.yaml'], 2],
  [['compare', 'gone.yaml'], 2],
  [['report', 'gone.yaml'], 2],
])('%j ends before anything heavy is loaded', (args, expected) => {
  const { status, packages } = loadedBy(args);
  expect(status).toBe(expected);
  expect(packages).toEqual(['commander']);
});

test('a call that works is seen to load what it needs', () => {
  const { status, packages, own } = loadedBy(['check', 'scenarios/flat.yaml']);
  expect(status).toBe(0);
  expect(packages).toEqual(
    expect.arrayContaining(['commander', 'temporal-polyfill', 'yaml', 'zod']),
  );
  expect(own.length).toBeGreaterThan(MOST_MODULES);
});

/** Each costs about half a millisecond: one a command, and eight that are common to them. */
const MOST_MODULES = 8 + readdirSync('src/cli/commands').length;
