import { expect, test } from 'vitest';
import { measure, START, setup } from '../hand-made.ts';

const noticesOf = (moment: { air?: number; humidity?: number }): string[] =>
  measure(setup(), () => moment)
    .notices.filter(({ id }) => id === 'above-saturation' || id === 'beyond-belief')
    .map(({ text }) => text);

test('a room as people live in draws no remark', () => {
  expect(noticesOf({ air: 20, humidity: 100 })).toEqual([]);
});

test('air above saturation is told with its hours', () => {
  expect(noticesOf({ air: 20, humidity: 112 })[0]).toMatch(
    /^The air of den stood above saturation for \d+ hours: more water than it can hold/,
  );
});

test.each([
  ['a day', 24],
  ['a year', 8760],
])('an hour above saturation is told in a run of %s', (_, hours) => {
  const over = { period: { start: START, hours } };
  const soaked = (steps: readonly number[], humidity: number, dt: number) =>
    measure(setup(over), (step) => ({ humidity: steps.includes(step) ? humidity : 50 }), { dt })
      .notices.filter(({ id }) => id === 'above-saturation')
      .map(({ text }) => text.split(':')[0]);
  const told = ['The air of den stood above saturation for 1 hour'];
  expect(soaked([hours - 1], 100.1, 3600)).toEqual(told);
  expect(soaked([7], 100, 3600)).toEqual([]);
  expect(soaked([1, 40, 41], 130, 1200)).toEqual(told); // 20 minutes each
  expect(soaked([1, 40], 130, 1200)).toEqual([]);
});

test('a room too hot to be meant is told with its temperature', () => {
  expect(noticesOf({ air: 71, humidity: 20 })[0]).toMatch(
    /^den reached 71 °C: look at its heaters/,
  );
});
