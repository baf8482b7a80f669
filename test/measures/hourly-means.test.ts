import fc from 'fast-check';
import { expect, test } from 'vitest';
import { createHourlyMeans, type Hour } from '../../src/measures/hourly-means.ts';
import { home, type Moment, measure, room, START, setup, stretches } from './hand-made.ts';

const two = home({ rooms: [room('den'), room('bath')] });
const at = (s: number, i: number): Moment => ({
  air: 15 + i + (s % 7),
  outdoor: s % 5,
  outdoorVapour: 500 + (s % 11),
  infiltration: 0.01 * (s % 3),
});

/** Every hour of a trace, copied. */
function hoursOf(steps: number, cuts: readonly number[], moment = at, dt = 600): Hour[] {
  const seen: Hour[] = [];
  const keep = (hour: Hour): void => {
    seen.push({
      ...hour,
      airTemperature: hour.airTemperature.slice(),
      vapourPressure: hour.vapourPressure.slice(),
    });
  };
  const means = createHourlyMeans(2, [keep]);
  for (const part of stretches(two, START, dt, steps, cuts, moment)) means.observe(part);
  return seen;
}

test('means over the hour, room by room, with its beginning', () => {
  const [first, second, ...more] = hoursOf(12, [12]);
  expect(more).toEqual([]);
  expect([first!.start, second!.start]).toEqual([START, START + 3600]);
  expect(Array.from(first!.airTemperature)).toEqual([17.5, 18.5]); // 15 and 16 + mean of 0 to 5
  expect(first!.outdoorTemperature).toBeCloseTo((0 + 1 + 2 + 3 + 4 + 0) / 6, 12);
  expect(first!.outdoorVapourPressure).toBeCloseTo(502.5, 12);
  expect(first!.infiltration).toBeCloseTo(0.01, 12);
});

test('hours that stretches cut in two are put together again', () => {
  const whole = hoursOf(36, [36]);
  const cuts = fc.array(fc.integer({ min: 1, max: 20 }), { minLength: 1 });
  fc.assert(
    fc.property(cuts, (list) => {
      expect(hoursOf(36, list)).toEqual(whole);
    }),
  );
});

test('an hour that is not full is not shown', () => {
  expect(hoursOf(17, [17])).toHaveLength(2);
});

test('a value that is no number spoils its own hour and no other', () => {
  const hours = hoursOf(18, [18], (s, i) => ({ ...at(s, i), outdoor: s === 7 ? Number.NaN : 5 }));
  expect(hours.map(({ outdoorTemperature }) => outdoorTemperature)).toEqual([5, Number.NaN, 5]);
});

test('a trace whose steps do not fill the hour is refused in words', () => {
  expect(() => measure(setup(), () => ({}), { dt: 420 })).toThrow(
    'createMeasures: a whole number of steps must make an hour, got steps of 420 s',
  );
});
