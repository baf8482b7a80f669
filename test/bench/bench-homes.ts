import type { Automation } from '../../src/control/automation.ts';
import type { RunInput } from '../../src/engine/run.ts';
import type { Home } from '../../src/home/home.ts';
import { NEW_YEAR } from '../engine/homes.ts';
import { randomHousehold, swingingWeather } from '../engine/random-home.ts';
import { busyHome } from './busy-home.ts';
import { withEarlierNames } from './earlier-names.ts';
import { typicalHome } from './typical-home.ts';

/** A home to measure with, and for how long: a year of ten-minute steps from its first hour on. */
export interface BenchHome {
  readonly name: string;
  readonly rooms: number;
  readonly input: RunInput;
}

/** Homes with thermostats, people and airing, but without devices: heat, water and CO2. */
export function bareHomes(): BenchHome[] {
  return [1, 6, 12, 50, 200].map((rooms) =>
    yearOf(rooms === 1 ? '1 room' : `${rooms} rooms`, typicalHome(rooms)),
  );
}

/** Six rooms with devices, gates and four species, without and with a dozen rules on noisy sensors. */
export function busyHomes(): { devices: BenchHome; rules: BenchHome } {
  const { home, automation, ruled } = busyHome(6);
  return {
    devices: yearOf('6, devices', home, automation),
    rules: yearOf('6, a dozen rules', home, ruled),
  };
}

function yearOf(name: string, home: Home, automation?: Automation): BenchHome {
  const household = randomHousehold(home, 1);
  const period = { dt: 600, start: NEW_YEAR, hours: 8760, spinUpDays: 0 };
  const controlled = automation === undefined ? {} : { automation };
  const input = withEarlierNames({ home, household, weather, ...period, ...controlled });
  return { name, rooms: home.rooms.length, input };
}

/** Steps of a bench home's year. */
export const STEPS = 52_560;

const weather = swingingWeather();
