import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { readColumnMap } from '../../../src/cli/load/read-column-map.ts';

const MAP = `time: { column: [Day, Hour], format: DD.MM.YYYY hh:mm, utc offset: 1, air is mean: true }
quantities:
  temperature: { column: T out, unit: °F }
  wind speed: { column: wind }
decimal comma: true
skip lines: 2
missing: [x, -99]
`;

function said(yaml: string): string[] {
  try {
    readColumnMap(yaml, 'm.yaml');
    return [];
  } catch (error) {
    return (error as Error).message.split('\n');
  }
}

test('a right map is read, and what is not said stays unsaid', () => {
  expect(readColumnMap(MAP, 'm.yaml')).toEqual({
    time: { column: ['Day', 'Hour'], format: 'DD.MM.YYYY hh:mm', utcOffset: 1, airIsMean: true },
    quantities: { temperature: { column: 'T out', unit: '°F' }, 'wind speed': { column: 'wind' } },
    decimalComma: true,
    skipLines: 2,
    missing: ['x', -99],
  });
});

test('everything wrong with its shape is told at once', () => {
  const wrong = MAP.replace('utc offset: 1', 'utc offset: 25').replace('skip lines', 'skip line');
  expect(said(wrong)).toEqual([
    expect.stringMatching(
      /^m\.yaml:1:\d+: time\.utc offset: expected a number from -13 to 14, got 25$/,
    ),
    expect.stringMatching(/^m\.yaml:6:1: skip line: .*\(did you mean "skip lines"\?\)$/),
  ]);
});

test('quantities and units that nobody knows have their place', () => {
  const wrong = MAP.replace('wind speed', 'windspeed').replace('°F', 'K2');
  expect(said(wrong)).toEqual([
    expect.stringMatching(/^m\.yaml:3:\d+: quantities\.temperature\.unit: expected .*, got "K2"/),
    expect.stringMatching(
      /^m\.yaml:4:\d+: quantities\.windspeed: did you mean "wind speed"\? Expected .*, got "windspeed"$/,
    ),
  ]);
});

test('the map of docs/quantities.md is right', () => {
  const page = readFileSync('docs/quantities.md', 'utf8');
  const yaml = /```yaml\n([\s\S]*?)```/.exec(page)?.[1] ?? '';
  expect(readColumnMap(yaml, 'm.yaml')).toMatchObject({ decimalComma: true, missing: ['--', -99] });
});
