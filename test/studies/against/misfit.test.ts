import { expect, test } from 'vitest';
import { misfitOf } from '../../../src/studies/against/misfit.ts';

// By hand: a log of 0, 2, 0, 2 ... by the hour, whose mean is 1 and whose day before is itself.
const logged = Float64Array.from({ length: 336 }, (_, h) => 2 * (h % 2));

test('bias, RMSE and skill of a run that is one too high', () => {
  const found = misfitOf(
    logged,
    logged.map((value) => value + 1),
  )!;
  expect(found).toMatchObject({ hours: 336, mean_logged: 1, mean_simulated: 2, bias: 1, rmse: 1 });
  // The mean is off by 1 in every hour, as the run is; the other guesses are perfect.
  expect(found.skill).toEqual({ mean: 0, same_hour_of_week: null, last_day_repeated: null });
});

test('skill against guesses that are wrong', () => {
  // The second week is 3 higher: the day before is off by 3 on one day in thirteen, other weeks by 3.
  const stepped = logged.map((value, h) => value + (h >= 168 ? 3 : 0));
  const { skill } = misfitOf(
    stepped,
    stepped.map((value) => value + 1),
  )!;
  expect(skill.same_hour_of_week).toBeCloseTo(1 - 1 / 9, 12);
  expect(skill.last_day_repeated).toBeCloseTo(1 - 1 / (9 / 13), 12);
  // About the mean, 2.5: 1.5 squared of the step and 1 of the hours.
  expect(skill.mean).toBeCloseTo(1 - 1 / 3.25, 12);
});

test('hours that are unknown count nowhere', () => {
  const gap = logged.map((value, h) => (h < 300 ? Number.NaN : value));
  expect(misfitOf(gap, logged)).toMatchObject({ hours: 36, bias: 0, rmse: 0 });
  expect(
    misfitOf(
      gap.map((value, h) => (h < 320 ? Number.NaN : value)),
      logged,
    ),
  ).toBeNull();
});
