import { describe, expect, test } from 'vitest';
import { type LoggedSeries, type ReadingKind, seriesOf } from '../../src/log/log.ts';
import { meansOverSteps, valuesAtInstants } from '../../src/log/onto-steps.ts';

// All expected values follow from the definitions, by hand.
describe('means over even steps', () => {
  test('a straight line between two readings has the mean of its ends', () => {
    const line = made('instant', [0, 20], [600, 26]);
    expect([...meansOverSteps(line, { start: 0, step: 300, count: 2 }, 600)]).toEqual([21.5, 24.5]);
  });

  test('a step between unlike pieces weighs them by their time', () => {
    // 0 to 60 s at 10, then 60 to 300 s at 20: (600 + 4800) / 300
    const states = made('state', [0, 10], [60, 20], [300, 99]);
    expect([...meansOverSteps(states, { start: 0, step: 300, count: 1 }, 1e9)]).toEqual([18]);
  });

  test('a mean counts for the time before its stamp', () => {
    const meter = made('mean', [0, Number.NaN], [3600, 500], [7200, 300]);
    expect([...meansOverSteps(meter, { start: 0, step: 3600, count: 2 }, 3600)]).toEqual([
      500, 300,
    ]);
  });

  test('a gap longer than the limit stays unknown, one of just the limit is bridged', () => {
    const gap = made('instant', [0, 20], [600, 20], [4200, 20], [4800, 20]);
    const steps = { start: 0, step: 600, count: 8 };
    const bridged = [...meansOverSteps(gap, steps, 3600)];
    expect(bridged).toEqual([20, 20, 20, 20, 20, 20, 20, 20]);
    const left = [...meansOverSteps(gap, steps, 3599)];
    expect(left).toEqual([20, ...Array(6).fill(Number.NaN), 20]);
  });

  test('a step that is known for half of its time counts, for less it does not', () => {
    const short = made('instant', [0, 20], [300, 20]);
    expect([...meansOverSteps(short, { start: 0, step: 600, count: 1 }, 600)]).toEqual([20]);
    expect([...meansOverSteps(short, { start: 0, step: 601, count: 1 }, 600)]).toEqual([
      Number.NaN,
    ]);
  });

  test('nothing is known before the first reading and after the last', () => {
    const few = made('instant', [1200, 20], [1800, 20]);
    const means = [...meansOverSteps(few, { start: 0, step: 600, count: 4 }, 600)];
    expect(means).toEqual([Number.NaN, Number.NaN, 20, Number.NaN]);
  });

  test('a state that ends unknown is unknown until the next', () => {
    const silent = made('state', [0, 1], [600, Number.NaN], [1200, 0], [1800, 0]);
    const means = [...meansOverSteps(silent, { start: 0, step: 600, count: 3 }, 1e9)];
    expect(means).toEqual([1, Number.NaN, 0]);
  });

  test('the last state holds as long as it says, unless it is unknown', () => {
    // Open from 500 to 700 s: for 100 s of either of the first two steps.
    const shut = { ...made('state', [0, 0], [500, 1], [700, 0]), holdsUntil: 2100 };
    const steps = { start: 0, step: 600, count: 4 };
    const [first, second, ...after] = meansOverSteps(shut, steps, 1e9);
    expect(first).toBeCloseTo(100 / 600, 12);
    expect(second).toBeCloseTo(100 / 600, 12);
    expect(after).toEqual([0, 0]); // of the last step half is known
    expect([...valuesAtInstants(shut, steps, 1e9)]).toEqual([0, 1, 0, 0]);
    const silent = { ...made('state', [0, 0], [600, Number.NaN]), holdsUntil: 2400 };
    expect([...meansOverSteps(silent, steps, 1e9)]).toEqual([0, ...Array(3).fill(Number.NaN)]);
  });
});

describe('values at even instants', () => {
  test('lie on the line between two readings', () => {
    const line = made('instant', [0, 20], [600, 26]);
    const found = [...valuesAtInstants(line, { start: 0, step: 200, count: 5 }, 600)];
    expect(found).toEqual([20, 22, 24, 26, Number.NaN]);
  });

  test('a reading that stands alone counts at its own instant only', () => {
    const lone = made('instant', [0, 20], [7200, 21], [14_400, 22]);
    const found = [...valuesAtInstants(lone, { start: 3600, step: 3600, count: 3 }, 3600)];
    expect(found).toEqual([Number.NaN, 21, Number.NaN]);
  });

  test('a state counts from its time on', () => {
    const window = made('state', [0, 0], [500, 1], [1000, 0]);
    const found = [...valuesAtInstants(window, { start: 0, step: 250, count: 5 }, 1e9)];
    expect(found).toEqual([0, 0, 1, 1, 0]);
  });
});

test('a series is found by quantity, room and place', () => {
  const living = made('instant', [0, 20]);
  const outdoors = { ...living, room: null, place: 'outdoors' as const };
  const log = { series: [living, outdoors], start: 0, end: 0 };
  expect(seriesOf(log, 'temperature', 'living')).toBe(living);
  expect(seriesOf(log, 'temperature', null, 'outdoors')).toBe(outdoors);
  expect(seriesOf(log, 'temperature', null)).toBeUndefined();
});

function made(reading: ReadingKind, ...readings: [number, number][]): LoggedSeries {
  return {
    quantity: 'temperature',
    place: 'room',
    room: 'living',
    device: null,
    reading,
    times: Float64Array.from(readings, ([time]) => time),
    values: Float64Array.from(readings, ([, value]) => value),
    from: 'test',
  };
}
