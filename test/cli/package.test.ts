import { execFileSync, spawn } from 'node:child_process';
import { existsSync, mkdirSync, readdirSync, readFileSync, symlinkSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { beforeAll, expect, test } from 'vitest';
import { ending, requireBuild } from './built-program.ts';
import { temporaryFolder } from './temporary-folder.ts';

const root = temporaryFolder();
const home = join(root, 'empty');
const modules = join(home, 'node_modules');

/*
 * What npm would put into an empty folder: the packed package, and of its dependencies those it
 * declares, here as links to the project's, so that no registry is asked.
 */
beforeAll(() => {
  requireBuild();
  const packed = execFileSync(
    'npm',
    ['pack', '--ignore-scripts', '--silent', '--pack-destination', root],
    { encoding: 'utf8' },
  );
  const own = join(modules, 'roombalance');
  mkdirSync(own, { recursive: true });
  execFileSync('tar', ['-xzf', join(root, packed.trim()), '--strip-components=1', '-C', own]);
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
}, 120_000);

/** A call through npx in that folder, which may ask nothing of the network. */
const npx = (...args: string[]) => {
  const env = { ...process.env, npm_config_offline: 'true', npm_config_update_notifier: 'false' };
  return ending(spawn('npx', ['--no-install', 'roombalance', ...args], { cwd: home, env }));
};

test('the package answers a first question in an empty folder, without a network', async () => {
  const { status, out, err } = await npx('start', '--yes');
  expect([status, err]).toEqual([0, expect.stringContaining('Written: home.yaml')]);
  expect(out).toMatch(/^My home\n/);
  expect(out).toMatch(/^Three answers would narrow this most/m);
  expect(readdirSync(home).sort()).toEqual(['home-weather.csv', 'home.yaml', 'node_modules']);
  const [, schema = ''] = /\$schema=(.*)\n/.exec(readFileSync(join(home, 'home.yaml'), 'utf8'))!;
  expect(existsSync(resolve(home, schema)), schema).toBe(true);
}, 120_000);

test('it brings its manual page and the homes of its gallery', async () => {
  const { man } = JSON.parse(readFileSync('package.json', 'utf8')) as { man: string };
  const own = join(modules, 'roombalance');
  for (const file of [man, 'docs/commands.md', 'docs/gallery.md', 'docs/gallery/hay-fever.svg'])
    expect(existsSync(join(own, file)), file).toBe(true);
  const checked = await npx('check', join(own, 'scenarios/gallery/hay-fever.yaml'));
  expect([checked.status, checked.err]).toEqual([0, '']);
}, 120_000);
