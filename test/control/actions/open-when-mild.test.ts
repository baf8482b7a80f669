import { expect, test } from 'vitest';
import { createMildOpening } from '../../../src/control/actions/open-when-mild.ts';
import { createMoment } from '../../../src/control/control-context.ts';
import type { Household } from '../../../src/control/household.ts';
import { createObservation } from '../../../src/control/observations.ts';
import { UTC_CLOCK } from '../../../src/units/local-clock.ts';

const HOUSEHOLD: Household = {
  ...{ clock: UTC_CLOCK, people: [], activities: [], setpoints: [], doorways: [] },
  openings: [
    { base: 0, spells: [] },
    { base: 0, spells: [] },
  ],
  openWhenMild: 0.06,
};

/** Shares and times of two windows, the second open a third of the step by the clock. */
function opened(outdoors: number, household: Household): [number[], number[]] {
  const moment = createMoment(household);
  const observed = createObservation(1, 0, 0);
  observed.outdoor[0] = outdoors;
  moment.observed = observed;
  const commands = { openings: Float64Array.of(0, 1 / 3), openTimes: Float64Array.of(0, 1 / 3) };
  createMildOpening(household, moment)(commands as never);
  return [[...commands.openings], [...commands.openTimes]];
}

test.each([
  [-3, 0],
  [5, 0],
  [12.5, 0.03],
  [20, 0.06],
  [31, 0.06],
])('at %d °C outdoors %d of each window stands open', (outdoors, share) => {
  const [shares, times] = opened(outdoors, HOUSEHOLD);
  expect(shares[0]).toBeCloseTo(share, 12);
  expect(times[0]).toBe(share > 0 ? 1 : 0);
  // what the clock opens wider stays as it is
  expect([shares[1], times[1]]).toEqual([1 / 3, 1 / 3]);
});

test('nothing where no such habit is given', () => {
  const { openWhenMild: _, ...none } = HOUSEHOLD;
  expect(opened(25, none)).toEqual([
    [0, 1 / 3],
    [0, 1 / 3],
  ]);
});
