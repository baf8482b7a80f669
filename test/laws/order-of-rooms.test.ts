import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Household } from '../../src/control/household.ts';
import type { Element, Home } from '../../src/home/home.ts';
import { randomHome, randomHousehold, swingingWeather } from '../engine/random-home.ts';
import { recordRun, runInput } from '../engine/record-run.ts';

/** A home with room k moved to `to[k]`, and everything else listed backwards. */
function reorder(home: Home, household: Household, to: readonly number[]) {
  const put = <T>(list: readonly T[]): T[] => {
    const out: T[] = [];
    list.forEach((item, k) => {
      out[to[k]!] = item;
    });
    return out;
  };
  const move = <T extends { readonly room: number }>(list: readonly T[]): T[] =>
    list.map((item) => ({ ...item, room: to[item.room]! })).reverse();
  const far = (e: Element): Element =>
    e.far.to === 'room' ? { ...e, far: { to: 'room', room: to[e.far.room]! } } : e;
  return {
    home: {
      ...home,
      rooms: put(home.rooms),
      elements: move(home.elements).map(far),
      panes: move(home.panes),
      openings: move(home.openings),
      doorways: home.doorways
        .map((d) => ({ ...d, rooms: [to[d.rooms[1]]!, to[d.rooms[0]]!] as const }))
        .reverse(),
      leakage: {
        ...home.leakage,
        how:
          home.leakage.how.by === 'pressure'
            ? { by: 'pressure' as const, cracks: move(home.leakage.how.cracks) }
            : home.leakage.how,
        share: put(home.leakage.share),
      },
      emitters: move(home.emitters),
    },
    household: {
      ...household,
      people: household.people.map((p) => ({
        ...p,
        schedule: p.schedule.map((stay) => ({ ...stay, room: to[stay.room]! })),
      })),
      activities: move(household.activities),
      setpoints: put(household.setpoints),
      openings: [...household.openings].reverse(),
      doorways: [...household.doorways].reverse(),
    },
  };
}

test('the order in which rooms and their parts are listed does not matter', () => {
  const weather = swingingWeather();
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 1e6 }),
      fc
        .integer({ min: 2, max: 7 })
        .chain((n) => fc.shuffledSubarray([...Array(n).keys()], { minLength: n, maxLength: n })),
      (seed, to) => {
        const home = randomHome(to.length, seed);
        const household = randomHousehold(home, seed);
        const more = { hours: 48, spinUpDays: 2, dt: 900 };
        const other = reorder(home, household, to);
        const one = recordRun(runInput({ home, weather }, { household, ...more }));
        const two = recordRun(
          runInput({ home: other.home, weather }, { household: other.household, ...more }),
        );
        for (const column of ['airTemperature', 'vapourPressure', 'heating'] as const) {
          one.room[column].forEach((series, i) => {
            const same = two.room[column][to[i]!]!;
            const scale = Math.max(1, ...series.map(Math.abs));
            series.forEach((value, s) => {
              const off = Math.abs(value - same[s]!) / scale;
              if (!(off < 1e-9)) {
                throw new Error(`${column} of room ${i}, step ${s}: ${value} and ${same[s]}`);
              }
            });
          });
        }
      },
    ),
    { numRuns: 25, seed: 3 },
  );
  expect.assertions(0);
});
