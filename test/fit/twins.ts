import { readFileSync } from 'node:fs';
import { fitHome, type HomeFit } from '../../src/fit/fit-home.ts';
import { settingsAt, valueAt } from '../../src/fit/parameters/scaled-parameter.ts';
import type { Adjustable } from '../../src/scenario/edits/adjustables.ts';
import { heatAdjustables, waterAdjustables } from '../../src/scenario/edits/adjustables.ts';
import { preparePlan } from '../../src/scenario/prepare-plan.ts';
import { seededRandom, standardNormal } from '../../src/units/seeded-random.ts';
import { readWeather } from '../../src/weather/read/read-weather.ts';
import { readOnce } from '../scenario/read-once.ts';
import { runHere } from './here.ts';
import { madeLog } from './made-log.ts';
import { seenBy, UNLIKE, type Unlike } from './unlike.ts';

/*
 * Twins: homes whose every fitted value is drawn from what is assumed of such homes, logged by sensors
 * with errors that hang together, and fitted without knowing. Simulator and model are one, so twins
 * judge the search, its ranges and its forecasts; those of another kind depart from the model besides.
 */

/** One twin, fitted. */
export interface Twin {
  readonly seed: number;
  /** How it departs from the model: a key of `UNLIKE`. */
  readonly kind: string;
  readonly fit: HomeFit;
  /** Hidden value by name of the parameter. */
  readonly hidden: ReadonlyMap<string, number>;
}

/** @param days  of its log; all that docs/accuracy.md is made of unless told */
export async function fittedTwin(seed: number, kind = 'alike', days = DAYS): Promise<Twin> {
  const unlike = UNLIKE[kind]!;
  const random = seededRandom(1000 + seed);
  const plan = preparePlan(SCENARIO, { plan: 'as-lived', set: [], files: FILES });
  const logged = { humid: ROOMS, warm: ROOMS, metered: [], mild: true, species: [] };
  const ask = [SCENARIO.yaml.value, plan.assumed, SCENARIO.doubts, logged] as const;
  const adjustables: Adjustable[] = [...waterAdjustables(...ask), ...heatAdjustables(...ask)];
  const places = adjustables.map(() => Math.max(-2, Math.min(2, standardNormal(random))));
  const start = Date.UTC(2023, 0, 8 + (seed % 8) * 7) / 1000;
  const made = madeLog({
    ...{
      scenario: readOnce(textOf(unlike), 'truth.yaml'),
      files: FILES,
      weather: WEATHER,
      truth: settingsAt(adjustables, places),
    },
    ...{ start, days, every: 1800, rooms: ROOMS, seed },
    noise: unlike.noise ?? { temperature: 0.1, humidity: 0.8, rho: 0.8 },
  });
  const log = seenBy(made, unlike);
  const fit = await fitHome({
    ...{ scenario: SCENARIO, files: FILES, plan: 'as-lived', set: [] },
    ...{ log, weather: WEATHER, startRuns: runHere },
  });
  const hidden = adjustables.map((each, k) => [each.name, valueAt(each, places[k]!)] as const);
  return { seed, kind, fit, hidden: new Map(hidden) };
}

const ROOMS = ['living', 'bedroom'];
const DAYS = 35;
const HOME = `title: Twin
weather: w.csv
site: { latitude: 54.2, longitude: -1.9, timezone: Europe/London, storeys: 1 }
step: 30
home:
  build: { age: 1967-1975, shape: flat, walls: cavity, glazing: double, front: south }
  rooms:
    living: { use: living, floor area: 22 }
    bedroom: { use: bedroom, floor area: 12, faces: east }
  doorways: [{ between: [living, bedroom], open: ["07:00-08:00", "20:00-22:30"] }]
`;
const HEATING = `heating: { source: direct electric, setpoint: 20, hours: ["06:30-08:30", "17:00-22:30"], setback: 16 }
`;
const HOUSEHOLD = `household:
  people: [{ who: adult, pattern: works away on weekdays }, { who: adult, pattern: works at home }]
  airing: [] # windows stay shut
`;
const textOf = ({ heating = HEATING, household = HOUSEHOLD }: Unlike): string =>
  HOME + heating + household;
const SCENARIO = readOnce(textOf(UNLIKE['alike']!), 'twin.yaml');
const WEATHER_TEXT = readFileSync('weather/saltmere-typical.csv', 'utf8');
const FILES = new Map([['w.csv', WEATHER_TEXT]]);
const WEATHER = readWeather(WEATHER_TEXT, 'w.csv');
