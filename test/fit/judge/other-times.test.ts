import { expect, test } from 'vitest';
import { otherTimes } from '../../../src/fit/judge/other-times.ts';
import type { PreparedPlan } from '../../../src/scenario/prepared.ts';
import { UTC_CLOCK } from '../../../src/units/local-clock.ts';
import { aStage } from './a-stage.ts';

const HOURS = 24 * 21;
const DIVISION = { start: 0, hours: HOURS, release: 24, withheld: HOURS };
const evening =
  (from: number, to = 22) =>
  (k: number) =>
    k % 24 >= from && k % 24 < to ? 20 : 17;

/** What is said of a room that is logged as warm over some hours, and fitted from 17 to 22 h. */
const said = (logged: (hour: number) => number, warms: boolean, cools: boolean) => {
  const home = { emitters: warms ? [{}] : [], cooling: cools ? [{}] : [] };
  const plan = { home, household: { clock: UTC_CLOCK } } as unknown as PreparedPlan;
  const den = { room: 'den', quantity: 'temperature' as const, logged, fitted: evening(17) };
  return otherTimes(plan, [aStage([den], HOURS)], DIVISION);
};

test('another clock is told alone, though it moves the hours of heating too', () => {
  expect(said(evening(16, 21), true, false)).toEqual([
    expect.stringMatching(
      /^All readings would fit clearly better if they were taken an hour later/,
    ),
  ]);
});

test('else hours, of heating and cooling where the home has both, and none where it has neither', () => {
  const longer = evening(16, 23);
  expect(said(longer, true, false)[0]).toMatch(/^Heating seems to come on or go off/);
  expect(said(longer, true, true)[0]).toMatch(/^Heating or cooling seems to/);
  expect(said(longer, false, true)[0]).toMatch(/^Cooling seems to/);
  expect(said(longer, false, false)).toEqual([]);
});
