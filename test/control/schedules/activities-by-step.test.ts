import { expect, test } from 'vitest';
import { createDayInputs } from '../../../src/control/day-inputs.ts';
import { fillDayInputs } from '../../../src/control/fill-day-inputs.ts';
import type { Activity, Household } from '../../../src/control/household.ts';
import { quietHousehold } from '../../engine/homes.ts';
import { control, DAY, EVERY_DAY, HOME, MONDAY, rehearse, someone } from '../rehearse.ts';

/** What activities come to does not depend on the control step. */

const STEPS = [1, 5, 10, 15, 20, 30, 60].map((minutes) => minutes * 60);
const DAYS = 28;

const activity = (
  spans: readonly (readonly [from: number, to: number])[],
  more: Partial<Activity> = {},
): Activity => ({
  ...{ name: 'activity', room: 0, heat: 0, electricity: 0, vapour: 0, drying: 0, species: [0, 0] },
  when: spans.map(([from, to]) => ({ days: EVERY_DAY, from, to })),
  ...more,
});

/** Electricity of activities in four weeks. [kWh] */
function kwh(parts: Partial<Household>, dt: number): number {
  const household = quietHousehold(HOME, parts);
  const day = createDayInputs(household, 2, 2, DAY / dt);
  let sum = 0;
  for (let d = 0; d < DAYS; d++) {
    fillDayInputs(day, household, MONDAY + d * DAY, dt, DAY / dt);
    for (const watts of day.electricity) sum += (watts * dt) / 3.6e6;
  }
  return sum;
}

test('who cooks from coming home on, or until leaving, cooks all the time', () => {
  const cooking = (from: number, to: number) =>
    activity([[from, to]], { stopsFor: 'an empty home', electricity: 2000 });
  for (const dt of STEPS) {
    const home = { people: [someone([1065, 1380])], activities: [cooking(1065, 1095)] };
    expect(kwh(home, dt)).toBeCloseTo(28, 9);
    const leaves = { people: [someone([0, 495])], activities: [cooking(465, 495)] };
    expect(kwh(leaves, dt)).toBeCloseTo(28, 9);
  }
});

/** How long a fan runs with an activity in four weeks. [h] */
function fanHours(household: Partial<Household>, runOn: number, dt: number): number {
  const by = { kind: 'activity', activities: [0], runOn } as const;
  const { devices } = rehearse({
    ...{ household, dt, days: DAYS },
    automation: { deviceControls: [control({ device: 1, by })] },
  });
  return devices.reduce((sum, [, fan]) => sum + (fan! * dt) / 3600, 0);
}

test('a fan runs with the shower of who has just come home, and runs on in full', () => {
  const shower = activity([[1065, 1075]], { stopsFor: 'an empty home', room: 1 });
  const household = { people: [someone([1065, 1380])], activities: [shower] };
  for (const dt of STEPS) expect(fanHours(household, 900, dt)).toBeCloseTo((DAYS * 25) / 60, 9);
});

test('run-ons that overlap count once', () => {
  const showers = activity(
    [
      [420, 430],
      [435, 445],
    ],
    { room: 1 },
  );
  const household = { people: [someone([0, 1440])], activities: [showers] };
  for (const dt of STEPS) expect(fanHours(household, 1200, dt)).toBeCloseTo((DAYS * 45) / 60, 9);
});

/** How long the den's window is open in four weeks by airing after showers [h], and how often. */
function airing(
  spans: readonly (readonly [from: number, to: number])[],
  later: number,
  dt: number,
) {
  const after = { by: 'activity', activity: 0, later: later * 60 } as const;
  const habit = {
    ...{ name: 'air', openings: [0], openShare: 1, after, lasts: 600, until: [], probability: 1 },
    ...{ delay: 0, drierBy: null, notBelow: -50 },
  };
  const { openTimes, report } = rehearse({
    ...{ household: { people: [someone([0, 1440])], activities: [activity(spans)] } },
    ...{ dt, days: DAYS, automation: { airings: [habit] } },
  });
  const hours = openTimes.reduce((sum, [open]) => sum + (open! * dt) / 3600, 0);
  return { hours, occasions: report.airings[0]!.occasions };
}

test('two showers a few minutes apart are aired after twice, unless both are due in one step', () => {
  for (const dt of STEPS) {
    const { hours, occasions } = airing(
      [
        [420, 430],
        [435, 445],
      ],
      0,
      dt,
    );
    const each = dt <= 1800 ? 2 : 1;
    expect(occasions).toBe(each * DAYS);
    expect(hours).toBeCloseTo((each * DAYS * 10) / 60, 9);
  }
});

test('a shower that begins before the wait is over puts the airing off', () => {
  for (const dt of STEPS) {
    expect(
      airing(
        [
          [420, 430],
          [435, 445],
        ],
        8,
        dt,
      ).occasions,
    ).toBe(DAYS);
    expect(
      airing(
        [
          [420, 430],
          [430, 445],
        ],
        0,
        dt,
      ).occasions,
    ).toBe(DAYS);
    expect(
      airing(
        [
          [420, 440],
          [430, 450],
        ],
        0,
        dt,
      ).occasions,
    ).toBe(DAYS);
  }
});

test('what runs into the next day, or goes on there, ends once', () => {
  for (const dt of STEPS) {
    expect(airing([[1425, 1450]], 0, dt).occasions).toBe(DAYS); // that of the day before, too
    // From midnight on it goes on: it ends at a quarter past, on the first day as well.
    expect(
      airing(
        [
          [1425, 1440],
          [0, 15],
        ],
        0,
        dt,
      ).occasions,
    ).toBe(DAYS);
  }
});
