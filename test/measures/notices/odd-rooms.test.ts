import { expect, test } from 'vitest';
import { measure, setup } from '../hand-made.ts';

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

test('a room too hot to be meant is told with its temperature', () => {
  expect(noticesOf({ air: 71, humidity: 20 })[0]).toMatch(
    /^den reached 71 °C: look at its heaters/,
  );
});
