import { expect, test } from 'vitest';
import type { HomeFit } from '../../src/fit/fit-home.ts';
import { fittedValues } from '../../src/fit/fitted-values.ts';

/** One parameter that moves some places. */
const moved = (
  name: string,
  unit: string,
  from: readonly number[],
  at: (of: number) => (x: number) => number,
) => ({
  // 1.2 lies at 0.2 of prior standard deviations of 1
  ...{ value: 1.2, low: 1.1, high: 1.3, told: 'yes', place: 0.2 },
  adjustable: {
    ...{ name, unit, before: unit === '' ? 1 : 0 },
    ...{ scale: 'plain', value: 1, low: 1 - 1.96, high: 1 + 1.96 },
    places: from.map((of, k) => ({ path: `/${name}/${k}`, at: at(of) })),
  },
});
const loss = moved('heat loss factor', '', [2, 3], (of) => (x) => of * x);
const cooling = moved('thermostat error of cooling', 'K', [25, 24], (of) => (x) => of - x);

const fitOf = (reliable: boolean, ...parameters: object[]) =>
  ({ reliable, stages: [{ fit: { parameters } }] }) as unknown as HomeFit;

test('a factor is named where it moved several, setpoints that moved together are each their own', () => {
  const found = fittedValues(fitOf(true, loss, cooling), 'log.csv');
  expect(found.get('/heat loss factor/1')).toEqual({
    ...{ low: 3.3, high: 3.9, from: 3, log: 'log.csv', by: 'heat loss factor' },
  });
  expect(found.get('/thermostat error of cooling/0')).toEqual({
    ...{ low: 23.7, high: 23.9, from: 25, log: 'log.csv' },
  });
});

test('a fit that is not reliable tells no value, and all are as uncertain as before', () => {
  const found = [...fittedValues(fitOf(false, loss, cooling), 'log.csv').values()];
  expect(found.map(({ told }) => told)).toEqual([false, false, false, false]);
  // 1.2 less and more 1.96, times 2
  expect(found[0]!.low).toBeCloseTo(-1.52, 6);
  expect(found[0]!.high).toBeCloseTo(6.32, 6);
});
