import { execFileSync, spawn } from 'node:child_process';
import {
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { beforeAll, expect, test } from 'vitest';
import { ending, requireBuild } from './built-program.ts';
import { temporaryFolder } from './temporary-folder.ts';

const root = temporaryFolder();
const home = join(root, 'empty');
const modules = join(home, 'node_modules');
let packed: Packed;

interface Packed {
  readonly filename: string;
  /** [bytes] */
  readonly size: number;
  readonly files: readonly { readonly path: string }[];
}

/*
 * What npm would put into an empty folder: the packed package, and of its dependencies those it
 * declares, here as links to the project's, so that no registry is asked.
 */
beforeAll(async () => {
  requireBuild();
  const args = ['pack', '--json', '--ignore-scripts', '--pack-destination', root];
  const said = execFileSync('npm', args, { encoding: 'utf8', stdio: ['ignore', 'pipe', 'ignore'] });
  [packed] = JSON.parse(said) as [Packed];
  const own = join(modules, 'roombalance');
  mkdirSync(own, { recursive: true });
  execFileSync('tar', ['-xzf', join(root, packed.filename), '--strip-components=1', '-C', own]);
  const { dependencies, bin } = JSON.parse(readFileSync(join(own, 'package.json'), 'utf8')) as {
    dependencies: Record<string, string>;
    bin: Record<string, string>;
  };
  for (const name of Object.keys(dependencies)) {
    mkdirSync(dirname(join(modules, name)), { recursive: true });
    symlinkSync(resolve('node_modules', name), join(modules, name));
  }
  mkdirSync(join(modules, '.bin'));
  for (const [name, file] of Object.entries(bin)) {
    execFileSync('chmod', ['+x', join(own, file)]);
    symlinkSync(join('..', 'roombalance', file), join(modules, '.bin', name));
  }
});

/** A call through npx in that folder, which may ask nothing of the network. */
const npx = (...args: string[]) => {
  const env = { ...process.env, npm_config_offline: 'true', npm_config_update_notifier: 'false' };
  return ending(spawn('npx', ['--no-install', 'roombalance', ...args], { cwd: home, env }));
};

test('the package answers a first question in an empty folder, without a network', async () => {
  // A small home and few plans, so that it takes half the time of the usual answers.
  writeFileSync(
    join(root, 'small.yaml'),
    'kind: flat\nsize: "1"\npeople: 1 adult\nheat: nothing\nbothers: [cost]\n',
  );
  const { status, out, err } = await npx('start', '--yes', '--answers', join(root, 'small.yaml'));
  expect([status, err]).toEqual([0, expect.stringContaining('Written: home.yaml')]);
  expect(out).toMatch(/^My home\n/);
  // Nothing heats this home, so that no assumption moves what its coldest months cost.
  expect(out).toMatch(/^Nothing that was assumed moves this: money in the two coldest months/m);
  expect(readdirSync(home).sort()).toEqual(['home-weather.csv', 'home.yaml', 'node_modules']);
  const [, schema = ''] = /\$schema=(.*)\n/.exec(readFileSync(join(home, 'home.yaml'), 'utf8'))!;
  expect(existsSync(resolve(home, schema)), schema).toBe(true);
}, 120_000);

test('the package holds the program, its pages and demonstrations, and nothing else', () => {
  const paths = packed.files.map(({ path }) => path);
  for (const path of [
    ...['dist/cli/bin.js', 'dist/index.js', 'dist/index.d.ts', 'dist/charts.js', 'LICENSE'],
    ...['README.md', 'docs/library.md', 'docs/commands.md', 'docs/scenario.schema.json'],
    ...['scenarios/terrace.yaml', 'scenarios/gallery/hay-fever.yaml', 'docs/gallery/hay-fever.svg'],
    ...['weather/saltmere-typical.csv', 'man/roombalance.1'],
  ]) {
    expect(paths).toContain(path);
  }
  const roots = new Set(paths.map((path) => path.split('/')[0]));
  const pages = ['LICENSE', 'README.md', 'docs', 'man', 'scenarios', 'weather'];
  expect([...roots].sort()).toEqual([...pages, 'dist', 'package.json'].sort());
  expect(paths.filter((path) => /\.map$|\.test\.|tsbuildinfo/.test(path))).toEqual([]);
  expect(packed.size).toBeLessThan(2.5e6); // 2.0 MB when this was written
});
