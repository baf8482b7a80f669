import { expect, test } from 'vitest';
import type { PresenceSensor } from '../../../src/control/automation.ts';
import type { Household, Person } from '../../../src/control/household.ts';
import { createPresence } from '../../../src/control/sensors/presence.ts';
import { quietHousehold } from '../../engine/homes.ts';
import { noAutomation } from '../no-automation.ts';
import {
  BEDROOM,
  DAY,
  EVERY_DAY,
  HOME,
  LIVING,
  laidOut,
  MONDAY,
  series,
  total,
  worker,
} from '../people.ts';

const PERFECT: PresenceSensor = { holdOn: 0, delay: 0, missesAwake: 0, missesAsleep: 0 };
const DT = 600;

/** Step by step: what the sensor of the living room (or another) says. */
function says(
  sensor: PresenceSensor,
  household: Household,
  { days = 1, room = LIVING, seed = 1, dt = DT } = {},
): number[] {
  const presenceSensors = HOME.rooms.map((_, i) => (i === room ? sensor : null));
  const presence = createPresence(HOME, { ...noAutomation(2), seed, presenceSensors }, dt);
  const anyone: number[] = [];
  const said = laidOut(household, days, { dt }).flatMap((day, k) => {
    presence.beginDay(MONDAY + k * DAY);
    return Array.from({ length: day.steps }, (_, s) => {
      presence.step(day, s);
      anyone.push(presence.anyone ? 1 : 0);
      return presence.present[room]!;
    });
  });
  expect(anyone).toEqual(said);
  return said;
}

function visitor(from: number, to: number, asleep = false): Household {
  const stays = [{ days: EVERY_DAY, from, to, room: LIVING, asleep }];
  return quietHousehold(HOME, { people: [worker({ schedule: stays })] });
}

const stepsOn = (said: readonly number[]): number[] =>
  said.flatMap((there, s) => (there === 1 ? [s] : []));
const range = (from: number, to: number): number[] =>
  Array.from({ length: to - from }, (_, k) => from + k);

test('a perfect sensor says what is so in most of the step', () => {
  const people: readonly Person[] = [
    worker(),
    worker({ irregular: { minutes: 40, asSunday: 0.2, out: 0.1 } }),
  ];
  const household = quietHousehold(HOME, { people });
  const days = 30;
  const truth = series(laidOut(household, days), 'occupants', LIVING).map((n) =>
    n >= 0.5 ? 1 : 0,
  );
  expect(says(PERFECT, household, { days })).toEqual(truth);
});

test('hold-on lasts to the nearest step', () => {
  const visit = visitor(600, 660); // steps 60 to 65
  expect(stepsOn(says(PERFECT, visit))).toEqual(range(60, 66));
  expect(stepsOn(says({ ...PERFECT, holdOn: 3 * DT }, visit))).toEqual(range(60, 69));
  expect(stepsOn(says({ ...PERFECT, holdOn: 3.5 * DT - 1 }, visit))).toEqual(range(60, 69));
  expect(stepsOn(says({ ...PERFECT, holdOn: 3.5 * DT + 1 }, visit))).toEqual(range(60, 70));
});

test('delay lasts to the nearest step, and a visit shorter than it goes unseen', () => {
  const visit = visitor(600, 660);
  expect(stepsOn(says({ ...PERFECT, delay: 2 * DT }, visit))).toEqual(range(62, 66));
  expect(stepsOn(says({ ...PERFECT, delay: 2.5 * DT - 1 }, visit))).toEqual(range(62, 66));
  expect(stepsOn(says({ ...PERFECT, delay: 2.5 * DT + 1 }, visit))).toEqual(range(63, 66));
  expect(stepsOn(says({ ...PERFECT, delay: 3600 }, visit))).toEqual([]);
  expect(stepsOn(says({ ...PERFECT, delay: 2 * DT, holdOn: DT }, visit))).toEqual(range(62, 67));
});

test('who comes or leaves inside a step counts from that minute, to the nearest step', () => {
  // The visit begins and ends inside a step, a minute later every time.
  const said = range(0, 10).map((minute) => {
    const visit = visitor(600 + minute, 720 + minute);
    return stepsOn(says({ ...PERFECT, holdOn: 15 * 60 }, visit));
  });
  const late = said.map((steps, minute) => steps[0]! * 10 - 600 - minute);
  const held = said.map((steps, minute) => (steps.at(-1)! + 1) * 10 - 720 - minute);
  expect(late).toEqual([0, -1, -2, -3, -4, -5, 4, 3, 2, 1]);
  expect(held).toEqual([10, 19, 18, 17, 16, 15, 14, 13, 12, 11]);
  // Fifteen minutes in the mean, but for the half minute by which whole minutes are off.
  expect(Math.abs(total(held) / held.length - 15)).toBeLessThanOrEqual(0.5);
});

test('hold-on bridges a gap, and runs over midnight', () => {
  const stays = [
    { days: EVERY_DAY, from: 600, to: 620, room: LIVING, asleep: false },
    { days: EVERY_DAY, from: 640, to: 660, room: LIVING, asleep: false },
    { days: EVERY_DAY, from: 1420, to: 1430, room: LIVING, asleep: false },
  ];
  const household = quietHousehold(HOME, { people: [worker({ schedule: stays })] });
  const said = stepsOn(says({ ...PERFECT, holdOn: 3 * DT, delay: 2 * DT }, household, { days: 2 }));
  expect(said.slice(0, 7)).toEqual(range(62, 69));
  expect(said.slice(7, 9)).toEqual([144, 145]);
});

test('what is always overlooked is never seen, awake and asleep apart', () => {
  const blind = { ...PERFECT, missesAsleep: 1 };
  const household = quietHousehold(HOME, { people: [worker()] });
  expect(total(says(blind, household, { room: BEDROOM }))).toBe(0);
  expect(total(says(blind, household))).toBe(total(says(PERFECT, household)));
  expect(total(says({ ...PERFECT, missesAwake: 1 }, household))).toBe(0);
});

test('a sensor that sees sleepers alone sees the one who comes to lie beside somebody awake', () => {
  const awake = { days: EVERY_DAY, from: 600, to: 660, room: LIVING, asleep: false };
  const napping = { ...awake, from: 620, to: 640, asleep: true };
  const people = [worker({ schedule: [awake] }), worker({ schedule: [napping] })];
  const said = says({ ...PERFECT, missesAwake: 1 }, quietHousehold(HOME, { people }));
  expect(stepsOn(said)).toEqual([62, 63]);
});

test('misses come as often as said, repeat with the seed, and are rarer where two are there', () => {
  const sensor = { ...PERFECT, missesAwake: 0.4 };
  const days = 100;
  const one = visitor(0, 1440);
  const two = { ...one, people: [...one.people, ...one.people] };
  const seenShare = (household: Household): number =>
    total(says(sensor, household, { days })) / (days * 144);
  const four = (p: number): number => 4 * Math.sqrt((p * (1 - p)) / (days * 144));
  expect(Math.abs(seenShare(one) - 0.6)).toBeLessThan(four(0.6));
  expect(Math.abs(seenShare(two) - 0.84)).toBeLessThan(four(0.84));
  expect(says(sensor, one, { seed: 3 })).toEqual(says(sensor, one, { seed: 3 }));
  expect(says(sensor, one, { seed: 3 })).not.toEqual(says(sensor, one, { seed: 4 }));
});

test('hold-on makes up for misses', () => {
  const sensor = { ...PERFECT, missesAsleep: 0.8 };
  const household = visitor(60, 420, true);
  const without = total(says(sensor, household, { days: 20 }));
  const held = total(says({ ...sensor, holdOn: 3600 }, household, { days: 20 }));
  expect(held).toBeGreaterThan(without);
});

test('who is home and awake is the truth, whatever sensors say', () => {
  const household = quietHousehold(HOME, { people: [worker()] });
  const presence = createPresence(HOME, noAutomation(2), DT);
  const [day] = laidOut(household, 1);
  presence.beginDay(MONDAY);
  const at = (hour: number): [boolean, boolean, boolean] => {
    presence.step(day!, hour * 6);
    return [presence.anyone, presence.someoneHome, presence.awakeHome];
  };
  expect(at(3)).toEqual([false, true, false]);
  expect(at(8)).toEqual([false, true, true]);
  expect(at(12)).toEqual([false, false, false]);
});

test('people are overlooked by a chance per ten minutes, whatever the step', () => {
  const missed = { ...PERFECT, missesAsleep: 0.4 };
  const visit = visitor(0, 1440, true);
  const days = 60;
  // Chance that somebody asleep goes unnoticed through a whole half-hour: 0.4 to the third power.
  for (const dt of [300, 600, 900, 1800]) {
    const said = says(missed, visit, { days, dt });
    const perHalfHour = 1800 / dt;
    const halfHours = said.length / perHalfHour;
    let unseen = 0;
    for (let k = 0; k < halfHours; k++) {
      const noticed = said.slice(k * perHalfHour, (k + 1) * perHalfHour).includes(1);
      if (!noticed) unseen++;
    }
    const chance = 0.4 ** 3;
    // Four standard deviations of the binomial.
    const margin = 4 * Math.sqrt((chance * (1 - chance)) / halfHours);
    expect(Math.abs(unseen / halfHours - chance)).toBeLessThan(margin);
  }
});
