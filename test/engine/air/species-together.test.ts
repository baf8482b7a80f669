import { expect, test } from 'vitest';
import { simulate } from '../../../src/engine/simulate.ts';
import type { Home, Species } from '../../../src/home/home.ts';
import { NEW_YEAR } from '../homes.ts';
import { randomHome, randomHousehold, swingingWeather } from '../random-home.ts';

const SPECIES: readonly (Species & { readonly deposition: number })[] = [
  { name: 'co2', unit: 'ppm', outdoor: 420, penetration: 1, deposition: 0 },
  { name: 'tvoc', unit: 'µg/m3', outdoor: 30, penetration: 1, deposition: 0 },
  { name: 'pm25', unit: 'µg/m3', outdoor: 8, penetration: 0.8, deposition: 5e-5 },
];

/** Levels of every species in a week, as the sums of its ledger terms and stores. */
function weekOf(chosen: readonly number[]) {
  const plain = randomHome(5, 21);
  const home: Home = {
    ...plain,
    rooms: plain.rooms.map((room) => ({
      ...room,
      deposition: chosen.map((s) => SPECIES[s]!.deposition),
    })),
    species: chosen.map((s) => SPECIES[s]!),
  };
  const household = randomHousehold({ ...plain, species: [] }, 21);
  const given = [5.5, 100, 30];
  const picked = chosen.map((s) => given[s]!);
  const people = household.people.map((person) => ({
    ...person,
    awake: { ...person.awake, species: picked },
    asleep: { ...person.asleep, species: picked },
  }));
  const activities = household.activities.map((a) => ({ ...a, species: picked }));
  const { ledger } = simulate(
    {
      home,
      household: { ...household, people, activities },
      weather: swingingWeather(),
      dt: 600,
      start: NEW_YEAR,
      hours: 168,
      spinUpDays: 1,
    },
    [],
  );
  return ledger;
}

test('species solved together come out as each does alone', () => {
  const together = weekOf([0, 1, 2]);
  for (const s of [0, 1, 2]) {
    const alone = weekOf([s]);
    for (const [term, values] of Object.entries(alone.species[0]!)) {
      const other = together.species[s]![term as keyof (typeof together.species)[0]];
      // The same sums in another order of operations: rounding only.
      const most = Math.max(...values.map(Math.abs));
      values.forEach((value, k) => {
        expect(Math.abs(other[k]! - value)).toBeLessThanOrEqual(1e-12 * most);
      });
    }
    alone.stored.species[0]!.forEach((value, i) => {
      expect(together.stored.species[s]![i]!).toBeCloseTo(value, 9);
    });
  }
});
