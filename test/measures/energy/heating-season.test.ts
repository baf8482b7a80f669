import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { heatingSeason } from '../../../src/measures/energy/heating-season.ts';
import { monthEnds } from '../../../src/measures/month-ends.ts';
import {
  type Climate,
  createMonthlyClimate,
} from '../../../src/measures/series/monthly-climate.ts';
import { preparePlan } from '../../../src/scenario/prepare-plan.ts';
import { runPlan } from '../../../src/studies/run-plan.ts';
import { type LocalClock, UTC_CLOCK } from '../../../src/units/local-clock.ts';
import { readWeather } from '../../../src/weather/read/read-weather.ts';
import { readOnce } from '../../scenario/read-once.ts';
import { home } from '../hand-made.ts';

const YEAR = 'weather/saltmere-typical.csv';
const weather = readWeather(readFileSync(YEAR, 'utf8'), YEAR);

/** Climate of months of these means outdoors, null where a month has no time. */
function monthly(...outdoors: readonly (number | null)[]) {
  const over = ([row = 0]: readonly number[]): Climate => ({
    ...{ seconds: outdoors[row] === null ? 0 : 3600, outdoor: outdoors[row] ?? 0 },
    ...{ indoor: 20, infiltration: 0, vapourExcess: 0 },
  });
  return { ...createMonthlyClimate(home(), { start: 0, hours: 1 }, [3600]), over };
}

test('months that are colder outdoors than the heating limit, to a tenth of a kelvin', () => {
  expect(heatingSeason(monthly(4, 12.94, 12.96, 15, null, 9), 6)).toEqual({
    rows: [0, 1, 5],
    cold: true,
  });
});

test('every month where none is', () => {
  expect(heatingSeason(monthly(13, 20, null), 3)).toEqual({ rows: [0, 1, 2], cold: false });
});

/** Two rooms from March to August, tilted windows in warm months. */
function halfYear(heating: string) {
  const text = `title: Home
weather: none.csv
site: { latitude: 54.2, longitude: -1.9, elevation: 35 m, timezone: Europe/London }
period: { from: 03-01, to: 08-31 }
step: 30 min
money: { currency: GBP, electricity: 0.2, gas: 0.07 }
home:
  build: { shape: flat, age: 1970 }
  rooms:
    living: { use: living, floor area: 20, outer sides: 1 }
    bed: { use: bedroom, floor area: 12, outer sides: 1 }
household:
  people: [{ who: adult }]
  airing: [{ rooms: all, at: "08:00", lasts: 12 h, open share: 10 %, months: Jun-Aug }]
${heating}
`;
  const scenario = readOnce(text, 'home.yaml');
  const plan = preparePlan(scenario, {
    plan: scenario.plans[0]!.name,
    ...{ set: [], files: new Map() },
  });
  const whole = { start: weather.start, hours: weather.count };
  const from = (Date.UTC(2023, 2, 1) - whole.start * 1000) / 1000;
  const period = { start: whole.start + from, hours: 184 * 24 };
  return runPlan({ plan, weather, period }, []).measures;
}

test('means over it compare for a home that is heated by plug-in heaters alone', () => {
  const boiler = halfYear('heating: { source: boiler }');
  const plugged = halfYear(`heating: { source: none }
devices:
  one: { kind: heater, room: living, power: 1500 W, target: 20 }
  two: { kind: heater, room: bed, power: 1000 W, target: 18 }`);
  const [was, is] = [boiler.outdoor_air, plugged.outdoor_air];
  // Windows are tilted in June and later only, which no month of the season is.
  expect([was.windows_l_per_s, is.windows_l_per_s]).toEqual([0, 0]);
  expect(is.leaks_l_per_s).toBeGreaterThan(0);
  expect(boiler.heating.useful_kwh).toBeGreaterThan(100);
  expect(plugged.heating.useful_kwh).toBe(0);
});

test('in the demonstration weather it is September to May, when its homes are heated', () => {
  const period = { start: weather.start, hours: weather.count };
  const climate = createMonthlyClimate(home(), period, monthEnds(period, UTC_CLOCK));
  for (let hour = 0; hour < weather.count; hour++) {
    climate.observe({
      ...{ start: weather.start + hour * 3600, outdoorVapourPressure: 800, infiltration: 0 },
      ...{ outdoorTemperature: weather.temperature[hour]!, outdoorSpecies: [] },
      ...{ airTemperature: Float64Array.of(20), vapourPressure: Float64Array.of(1000) },
    } as never);
  }
  expect(heatingSeason(climate, 12).rows).toEqual([0, 1, 2, 3, 4, 8, 9, 10, 11]);
});

test('a night hour before a summer of the wall clock makes no season of its own', () => {
  const start = Date.UTC(2023, 4, 31, 23) / 1000; // 1 June, midnight
  const period = { start, hours: 92 * 24 };
  const climate = createMonthlyClimate(home(), period, monthEnds(period, SUMMER));
  for (let hour = 0; hour < 92 * 24; hour++) {
    climate.observe({
      ...{ start: start + hour * 3600, outdoorVapourPressure: 800, infiltration: 0 },
      ...{ outdoorTemperature: hour === 0 ? 5 : 18, outdoorSpecies: [] },
      ...{ airTemperature: Float64Array.of(20), vapourPressure: Float64Array.of(1000) },
    } as never);
  }
  expect(heatingSeason(climate, 3)).toEqual({ rows: [0, 1, 2], cold: false });
});

const SUMMER: LocalClock = { from: [0], offset: [3600] };
