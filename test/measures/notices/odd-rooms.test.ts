import { expect, test } from 'vitest';
import { measure, START, setup } from '../hand-made.ts';

const noticesOf = (moment: { air?: number; humidity?: number }): string[] =>
  measure(setup(), () => moment)
    .notices.filter(({ id }) => id === 'fog' || id === 'beyond-belief')
    .map(({ text }) => text);

test('a room as people live in draws no remark', () => {
  expect(noticesOf({ air: 20, humidity: 99.9 })).toEqual([]);
});

test('saturated air is told with its hours', () => {
  expect(noticesOf({ air: 20, humidity: 100 })[0]).toMatch(
    /^The air of den was saturated for \d+ hours: fog, and water on walls and furniture\./,
  );
});

test.each([
  ['a day', 24],
  ['a year', 8760],
])('an hour of saturated air is told in a run of %s', (_, hours) => {
  const over = { period: { start: START, hours } };
  const soaked = (steps: readonly number[], humidity: number, dt: number) =>
    measure(setup(over), (step) => ({ humidity: steps.includes(step) ? humidity : 50 }), { dt })
      .notices.filter(({ id }) => id === 'fog')
      .map(({ text }) => text.split(':')[0]);
  const told = ['The air of den was saturated for 1 hour'];
  expect(soaked([hours - 1], 100, 3600)).toEqual(told);
  expect(soaked([7], 99.99, 3600)).toEqual([]);
  expect(soaked([1, 40, 41], 100, 1200)).toEqual(told); // 20 minutes each
  expect(soaked([1, 40], 100, 1200)).toEqual([]);
});

test('a room too hot to be meant is told with its temperature', () => {
  expect(noticesOf({ air: 71, humidity: 20 })[0]).toMatch(
    /^den reached 71 °C: look at its heaters/,
  );
});
