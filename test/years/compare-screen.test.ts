import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { main } from '../../src/cli/main.ts';
import { fakeIo } from '../cli/fake-io.ts';
import { readOnce } from '../scenario/read-once.ts';

// A few days do: the screen is laid out by plans and words, whatever the figures.
const DAYS = ['--set', '/period/from=01-05', '--set', '/period/to=01-07'];

test.each([
  ['terrace', 80],
  ['flat', 80],
  ['stove-cottage', 200],
])(
  'all plans of %s at %i columns are a screen of 60 lines, and two for each plan over a dozen',
  async (home, width) => {
    const { io, said } = fakeIo();
    const readText = async (path: string) => readFileSync(path, 'utf8');
    const file = `scenarios/${home}.yaml`;
    expect(await main(['compare', file, ...DAYS], { ...io, width, readText })).toBe(0);
    const lines = said.out.trimEnd().split('\n');
    const plans = readOnce(await readText(file), file).plans.length;
    expect(lines.length).toBeLessThanOrEqual(60 + 2 * Math.max(0, plans - 12));
    expect(Math.max(...lines.map((line) => [...line].length))).toBeLessThanOrEqual(width);
    expect(said.out).not.toContain('room-hours');
    expect(lines.filter((line) => line.includes('?')).length).toBeGreaterThanOrEqual(2);
  },
);
