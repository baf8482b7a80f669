import { expect, test } from 'vitest';
import { createHeatingRate } from '../../../src/control/actions/heating-rate.ts';
import type { Household } from '../../../src/control/household.ts';
import { always, quietHousehold } from '../../engine/homes.ts';
import { compare } from '../../reference/compare.ts';
import { AHEAD, SPRING } from '../../units/summer-time.ts';
import { type MadeRoom, underThermostat } from '../made-room.ts';
import { DAY, EVERY_DAY, HOME } from '../people.ts';

const HOUR = 3600;
const DT = 600;
const COLD = 16;
const WARM = 20;
const MOST = 6 * HOUR;
/** Quick to cool, so that it is at its night setting long before the morning. */
const room: MadeRoom = { outdoors: 0, heated: 30, timeConstant: 8 * HOUR, begin: COLD };

/** 20 from 7 to 22, 16 at night. */
const household = (more: Partial<Household> = {}): Household =>
  quietHousehold(HOME, {
    setpoints: [
      always(18),
      { base: COLD, spells: [{ days: EVERY_DAY, from: 420, to: 1320, value: WARM }] },
    ],
    ...more,
  });

const toWarm = (heated: number, timeConstant: number): number =>
  timeConstant * Math.log((heated - COLD) / (heated - WARM));

/** Lead of each day [s] and the temperature at 7:00. */
function mornings(made: MadeRoom, days: number, most = MOST, home = household(), start?: number) {
  const lead = { by: 'learned', most } as const;
  const { setpoints, temperatures } = underThermostat({ lead }, home, {
    days,
    room: made,
    ...(start === undefined ? {} : { start }),
  });
  return Array.from({ length: days }, (_, k) => {
    const at = k * 144 + 42;
    let first = at;
    while (setpoints[first - 1]! > COLD) first--;
    return { lead: (at - first) * DT, temperature: temperatures[at]! };
  });
}

test('the first warm-up comes without a lead, the next are in time', () => {
  const [first, ...others] = mornings(room, 10);
  expect(first).toEqual({ lead: 0, temperature: COLD });
  for (const { temperature } of others) expect(temperature).toBeGreaterThan(WARM - 0.2);
});

test('the lead comes to the time that the room takes', () => {
  for (const [heated, hours] of [
    [30, 8],
    [40, 20],
    [25, 5],
  ] as const) {
    const made = { ...room, heated, timeConstant: hours * HOUR };
    const { lead, temperature } = mornings(made, 30).at(-1)!;
    compare({
      topic: 'Control',
      what: `learned lead of a first-order room, time constant ${hours} h, ${heated} °C at full heat`,
      unit: 'h',
      source: 'time constant times ln((heated - cold)/(heated - warm))',
      mark: 'closed form',
      expected: toWarm(heated, hours * HOUR) / HOUR,
      got: lead / HOUR,
      tolerance: { absolute: (2 * DT) / HOUR },
      because: 'heating starts on a step, and the last step of a warm-up is a part one',
    });
    expect(temperature).toBeCloseTo(WARM, 1);
  }
});

test('the lead follows the season', () => {
  const mild = mornings({ ...room, heated: 40 }, 20).at(-1)!.lead;
  const bitter = mornings({ ...room, heated: 24 }, 20).at(-1)!.lead;
  expect(bitter).toBeGreaterThan(mild);
});

test('the lead never exceeds its most', () => {
  const weak = { ...room, heated: 21 };
  for (const { lead } of mornings(weak, 10, 2 * HOUR)) expect(lead).toBeLessThanOrEqual(2 * HOUR);
  expect(mornings(weak, 10, 2 * HOUR).at(-1)!.lead).toBe(2 * HOUR);
});

test('daylight saving moves the morning and the lead with it', () => {
  const start = SPRING - 1 * HOUR - 9 * DAY; // local midnight in winter
  const shifted = household({ clock: AHEAD });
  const lead = { by: 'learned', most: MOST } as const;
  const { setpoints } = underThermostat({ lead }, shifted, { days: 14, room, start });
  const firstWarm = (k: number): number => setpoints.slice(k * 144, (k + 1) * 144).indexOf(WARM);
  // From the clocks' jump on, 7:00 comes an hour earlier by the sun.
  expect(firstWarm(12)).toBe(firstWarm(8) - 6);
});

test('what is learned is kelvins over time from the call to the throttling, exponentially averaged', () => {
  const { rate, watch } = watchedRate();
  const warmUp = (start: number, gained: number, seconds: number): void => {
    watch(start, 16, 16, 0, false);
    watch(start + DT, 16, 21, 0, false); // the call
    watch(start + DT + seconds / 2, 16 + gained / 2, 21, 1, false);
    watch(start + DT + seconds, 16 + gained, 21, 0.5, false);
  };
  expect(rate[0]).toBeNaN();
  warmUp(0, 4, 2 * HOUR);
  expect(rate[0]! * HOUR).toBeCloseTo(2, 12);
  warmUp(DAY, 4, HOUR);
  expect(rate[0]! * HOUR).toBeCloseTo(2 + 0.3 * (4 - 2), 12);
});

test('emitters count as throttled below nine tenths of the most they gave', () => {
  const { rate, watch } = watchedRate();
  watch(0, 16, 16, 0, false);
  watch(600, 16, 21, 0, false); // the call
  watch(1200, 17, 21, 0.8, false);
  watch(1800, 18, 21, 0.73, false); // over 0.72: still warming up
  expect(rate[0]).toBeNaN();
  watch(2400, 19, 21, 0.71, false);
  expect(rate[0]! * 1800).toBeCloseTo(3, 12);
});

test('nothing is learned with a window open, nor from a crumb of warmth', () => {
  const { rate, watch } = watchedRate();
  watch(0, 16, 16, 0, false);
  watch(600, 16, 21, 0, false);
  watch(1200, 17, 21, 1, false);
  watch(1800, 17, 21, 1, true);
  watch(2400, 21, 21, 0.2, false);
  expect(rate[0]).toBeNaN();
  watch(3000, 20.8, 20.8, 0, false);
  watch(3600, 20.8, 21, 0, false);
  watch(4200, 21, 21, 0.4, false);
  expect(rate[0]).toBeNaN();
});

test('a goal that rises while a window is open begins no warm-up to learn from', () => {
  const { rate, watch } = watchedRate();
  watch(0, 16, 16, 0, false);
  watch(600, 16, 21, 0, true);
  watch(1200, 17, 21, 1, false);
  watch(2400, 21, 21, 0.2, false);
  expect(rate[0]).toBeNaN();
});

test('a warm-up with the window open teaches the thermostat nothing', () => {
  const lead = { by: 'learned', most: MOST } as const;
  const leads = (windowOpen: (step: number) => boolean): boolean => {
    const { setpoints } = underThermostat({ lead }, household(), { days: 2, room, windowOpen });
    return setpoints[144 + 41] === WARM; // ten minutes before seven on the second day
  };
  expect(leads(() => false)).toBe(true);
  expect(leads((step) => step === 44)).toBe(false);
});

/** What is learned of one room from its air, the goal and its emitters at one instant after another. */
function watchedRate() {
  const { rate, watch } = createHeatingRate(1, DT);
  const see = (now: number, t: number, goal: number, output: number, upset: boolean): void => {
    const seen = { felt: Float64Array.of(t), output: Float64Array.of(output) };
    watch(0, now / DT, seen, Float64Array.of(goal), upset);
  };
  return { rate, watch: see };
}
