import { spawnSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, expect, test } from 'vitest';
import { BIN, called, requireBuild } from '../built-program.ts';
import { temporaryFolder } from '../temporary-folder.ts';

const root = temporaryFolder();
const HOME = `title: Test cottage
weather: w.csv
site: { timezone: Europe/London }
period: { from: "01-05", to: "01-05" }
step: 60
home: { rooms: { den: { floor area: 14 } } }
heating: { setpoint: 20 }
`;
const VARY = ['--vary', '/heating/setpoint=18 to 20 by 0.5'];

const version = spawnSync('parallel', ['--version'], { encoding: 'utf8' });
const there = version.error === undefined && /^GNU parallel/.test(version.stdout);

beforeAll(async () => {
  requireBuild();
  writeFileSync(join(root, 'cottage.yaml'), HOME);
  writeFileSync(join(root, 'w.csv'), readFileSync('weather/saltmere-typical.csv', 'utf8'));
});

test('GNU parallel makes the shards of a sweep, which merge into the whole', async (context) => {
  if (!there) context.skip('GNU parallel is not on the path of this machine');
  const words = ['--will-cite', '-j', '2', process.execPath, BIN, 'sweep', 'cottage.yaml'];
  const shard = ['-o', 'part-{}.csv', '--shard', '{}/3', '--resume', ':::', '1', '2', '3'];
  const quoted = VARY.map((word) => `'${word}'`);
  const { status, stderr } = spawnSync('parallel', [...words, ...quoted, ...shard], {
    ...{ cwd: root, encoding: 'utf8' },
  });
  expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
  const parts = ['part-1.csv', 'part-2.csv', 'part-3.csv'];
  const merged = await called(['sweep', '--merge', ...parts, '-o', 'merged.csv'], root);
  expect(merged).toMatchObject({ status: 0, err: '' });
  await called(['sweep', 'cottage.yaml', ...VARY, '-o', 'whole.csv'], root);
  const text = (name: string) => readFileSync(join(root, name), 'utf8');
  expect(text('merged.csv') === text('whole.csv')).toBe(true);
});
