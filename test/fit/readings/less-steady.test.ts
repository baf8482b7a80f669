import { expect, test } from 'vitest';
import { lessSteady } from '../../../src/fit/readings/less-steady.ts';
import type { LoggedSeries } from '../../../src/log/log.ts';

/** A meter read every hour of what runs from noon to midnight. */
function halfDays(hours: number, from: number, firstKnown = false): LoggedSeries {
  const power = (hour: number) => ((from + hour - 1) % 24 >= 12 ? 1000 : 0);
  const values = Array.from({ length: hours + 1 }, (_, k) =>
    k === 0 && !firstKnown ? Number.NaN : power(k),
  );
  return {
    ...{ quantity: 'gas', place: 'home', room: null, device: null, from: 'm.csv, gas' },
    reading: 'mean',
    times: Float64Array.from(values, (_, k) => k * 3600),
    values: Float64Array.from(values),
  };
}

const sum = (values: Float64Array): number =>
  values.reduce((all, power) => all + (Number.isNaN(power) ? 0 : power), 0);

test.each([48, 49, 53, 60, 66, 71, 72])(
  'the share is taken off the whole, also of %i h that are no whole days',
  (hours) => {
    for (const from of [0, 6, 12, 18]) {
      for (const firstKnown of [false, true]) {
        const meter = halfDays(hours, from, firstKnown);
        const { values } = lessSteady(meter, 0.2);
        expect(sum(values)).toBeCloseTo(0.8 * sum(meter.values), 6);
      }
    }
  },
);

test('days with less than the steady part give nothing, and what is unknown stays so', () => {
  const meter = halfDays(72, 0);
  const holed = { ...meter, values: meter.values.map((power, k) => (k > 48 ? 0 : power)) };
  holed.values[5] = Number.NaN;
  const { values } = lessSteady(holed, 0.2);
  expect(values[0]).toBeNaN();
  expect(values[5]).toBeNaN();
  expect(values.slice(49).every((power) => power === 0)).toBe(true);
  expect(values[13]).toBeGreaterThan(0);
});

test('less than a day is one day, and readings days apart are days by themselves', () => {
  const short = halfDays(10, 8);
  expect(sum(lessSteady(short, 0.2).values)).toBeCloseTo(0.8 * sum(short.values), 6);
  const seldom = {
    ...short,
    times: Float64Array.of(0, 3 * 86_400, 5.5 * 86_400, 9 * 86_400),
    values: Float64Array.of(Number.NaN, 900, 0, 300),
  };
  // A fifth of (3 · 900 + 3.5 · 300) W over 9 days are 83.3 W; nothing was drawn in the second.
  expect([...lessSteady(seldom, 0.2).values].map(Math.round)).toEqual([Number.NaN, 817, 0, 217]);
});

test('one reading, or none that is known, is left as it is', () => {
  const one = { ...halfDays(0, 0, true) };
  expect(lessSteady(one, 0.2)).toBe(one);
  const none = halfDays(3, 0);
  none.values.fill(Number.NaN);
  expect(lessSteady(none, 0.2).values.every(Number.isNaN)).toBe(true);
});
