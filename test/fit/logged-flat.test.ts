import { readFileSync, writeFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { main } from '../../src/cli/main.ts';
import { fakeIo } from '../cli/fake-io.ts';
import { HIDDEN, loggedFlatCsv } from './logged-flat.ts';

const LOG = 'scenarios/logged-flat.csv';
const SCENARIO = 'scenarios/logged-flat.yaml';

test('the log is what its recipe makes; UPDATE_LOG=1 writes it anew', () => {
  const made = loggedFlatCsv();
  if (process.env['UPDATE_LOG'] === '1') writeFileSync(LOG, made);
  expect(readFileSync(LOG, 'utf8')).toBe(made);
});

test('the fit finds the hidden values inside the ranges that it states, and says so in words', async () => {
  const paths = [LOG, SCENARIO, 'weather/saltmere-typical.csv'];
  const texts = Object.fromEntries(paths.map((path) => [path, readFileSync(path, 'utf8')]));
  const { io, said, files } = fakeIo(texts);
  const out = 'scenarios/fitted.yaml';
  const status = await main(['fit', SCENARIO, '--log', LOG, '--json', '--out', out], io);
  expect({ status, err: said.err }).toMatchObject({ status: 0 });
  const found = JSON.parse(said.out);
  const parameters = found.stages.flatMap((stage: { parameters: unknown[] }) => stage.parameters);
  const outside = Object.entries(HIDDEN).flatMap(([name, hidden]) => {
    const one = parameters.find((each: { name: string }) => each.name === name);
    return one !== undefined && one.low <= hidden && hidden <= one.high
      ? []
      : [{ name, hidden, one }];
  });
  expect(outside).toEqual([]);
  expect(found.skilled).toBe(true);
  expect(found.typical_weather).toBe(true);
  expect(files[out]).toContain('fitted:');
  // A flat has no roof, and when the two of them breathe out in their sleep nobody logged.
  const written = files[out]!.slice(files[out]!.indexOf('fitted:'));
  expect(written).not.toContain('roof');
  expect(written).toMatch(/wall u-value: \{.*by: heat loss factor/);
  expect(written).toMatch(/asleep\/co2: \{.*told: false/);

  said.out = '';
  expect(await main(['check', out], io), said.err).toBe(0);
  const [, measured = ''] = /Measured[^\n]*\n([\s\S]*?)\n\nAssumed/.exec(said.out) ?? [];
  for (const line of measured.split('\n')) expect(line.length).toBeLessThanOrEqual(80);
  const [names = '', along = ''] = measured.split('Not told by the log');
  expect(names).toMatch(/^draughts, by a blower door +[\d.]+ 1\/h /m);
  expect(names).not.toContain('asleep');
  expect(names).not.toMatch(/^U-value/m);
  expect(names).toMatch(/^heat loss factor 1\.1\d \(/m);
  expect(along.replace(/\s+/g, ' ')).toContain('CO2 from a person asleep');
}, 240_000);
