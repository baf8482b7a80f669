import { expect, test } from 'vitest';
import { writeFitted } from '../../../src/scenario/edits/write-fitted.ts';
import { readingProblems } from '../problems-of.ts';
import { readOnce } from '../read-once.ts';

const TEXT = `# what is known
title: Small home
weather: w.csv # of the harbour
home:
  rooms:
    living: { floor area: 18 } # with the stove
    bedroom: { floor area: 12 }
heating: { source: boiler, rooms: { bedroom: 17 } }
plans:
  now: { description: as it is, change: {} }
  tighter: { description: draughts stopped, change: { home: { leakage: { ach50: 5 } } } }
`;
const LOG = 'log.csv, 2024-01-01 to 2024-02-01';
const range = (low: number, high: number) => ({ low, high, from: 10, log: LOG });

test('values and their ranges are written in their places, comments and plans kept', () => {
  const fitted = new Map([['/home/leakage/ach50', range(6, 8)]]);
  const written = writeFitted(TEXT, 'now', ['/home/leakage/ach50=7'], fitted);
  for (const comment of ['# what is known', '# of the harbour', '# with the stove']) {
    expect(written).toContain(comment);
  }
  const scenario = readOnce(written, 'f.yaml');
  expect(scenario.fitted).toEqual([
    {
      ...{ path: '/home/leakage/ach50', value: 7, low: 6, high: 8, from: 10, unit: '1/h' },
      ...{ by: null, told: true, log: LOG },
    },
  ]);
  expect(scenario.plans.map(({ name }) => name)).toEqual(['now', 'tighter']);
});

test('a mapping takes the place of a plain value that stands in its way', () => {
  const words = [
    '/heating/rooms/bedroom={"setpoint":17}',
    '/heating/rooms/bedroom/sensor/bias=0.5',
  ];
  const written = writeFitted(TEXT, 'now', words, new Map());
  expect(readOnce(written, 'f.yaml').yaml.value).toMatchObject({
    heating: { rooms: { bedroom: { setpoint: 17, sensor: { bias: 0.5 } } } },
  });
});

test('what the fitted plan says itself is written there, and not listed as of the home', () => {
  const fitted = new Map([['/home/leakage/ach50', range(3, 9)]]);
  const written = writeFitted(TEXT, 'tighter', ['/home/leakage/ach50=4'], fitted);
  const scenario = readOnce(written, 'f.yaml');
  expect(scenario.yaml.value).toMatchObject({
    plans: { tighter: { change: { home: { leakage: { ach50: 4 } } } } },
  });
  expect(scenario.fitted).toEqual([]);
});

test('fitted values that the file does not have, or has outside their range, are refused in words', () => {
  const fitted = `fitted:
  /home/leakage/ach50: { low: 6, high: 8, log: a }
  /home/height: { low: 2, high: 2.2, log: a }
`;
  const text = TEXT.replace('home:\n', 'home:\n  height: 2.5\n') + fitted;
  expect(readingProblems(text)).toEqual([
    expect.stringMatching(
      /fitted\.\/home\/leakage\/ach50: expected a pointer to a number that this file gives, got "\/home\/leakage\/ach50"/,
    ),
    expect.stringMatching(
      /fitted\.\/home\/height: expected a range that holds the value 2\.5, got 2 to 2\.2/,
    ),
  ]);
});
