import { expect, test } from 'vitest';
import { fillSchedules } from '../../../src/control/schedules/fill-schedule.ts';
import { DAY, EVERY_DAY, MONDAY } from '../rehearse.ts';

const OFF = Number.NEGATIVE_INFINITY;
const UTC = { from: [0], offset: [0] };

/** Minutes of a day in which a line that is off but for one span, or on but for it, is on. */
function minutesOn(from: number, to: number, dt: number, inverse = false): number {
  const values = new Float64Array(DAY / dt);
  const [base, value] = inverse ? [20, OFF] : [OFF, 20];
  const line = { base, spells: [{ days: EVERY_DAY, from, to, value }] };
  fillSchedules(values, [line], { clock: UTC, start: MONDAY, dt, steps: DAY / dt });
  return (values.filter((setting) => setting === 20).length * dt) / 60;
}

test('a setting that is off outside its span holds where it does in the middle of the step', () => {
  for (const dt of [60, 300, 600, 1200, 1800]) {
    for (let from = 400; from < 430; from++) {
      // As long as the step divides the span, it is as long wherever it begins.
      expect(minutesOn(from, from + 120, dt)).toBe(120);
      expect(minutesOn(from, from + 120, dt, true)).toBe(1440 - 120);
      const odd = minutesOn(from, from + 75, dt);
      expect(Math.abs(odd - 75), `${from} min`).toBeLessThanOrEqual(dt / 60);
    }
    // By the quarter-hour, in the mean over where it falls.
    const spans = Array.from({ length: 60 }, (_, k) => minutesOn(360 + k, 435 + k, dt));
    expect(spans.reduce((a, b) => a + b, 0) / 60).toBeCloseTo(75, 9);
  }
});

test('a span within a single step holds for all of it where it takes in the middle', () => {
  expect(minutesOn(421, 426, 600)).toBe(10);
  expect(minutesOn(421, 425, 600)).toBe(0);
  expect(minutesOn(425, 429, 600)).toBe(10);
  expect(minutesOn(426, 430, 600)).toBe(0);
});
