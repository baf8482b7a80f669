import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { PlanMeasures } from '../../src/measures/plan-measures.ts';
import { preparePlan } from '../../src/scenario/prepare-plan.ts';
import { runPlan } from '../../src/studies/run-plan.ts';
import { periodOf } from '../../src/weather/period-of.ts';
import { readWeather } from '../../src/weather/read/read-weather.ts';
import { compareBand } from '../reference/compare.ts';
import { readOnce } from '../scenario/read-once.ts';

const OUTDOORS = 50; // grains/m3, June of the preset

const weather = readWeather(readFileSync('weather/saltmere-typical.csv', 'utf8'), 'saltmere.csv');
const done = new Map<string, PlanMeasures>();

type Plan = 'as-lived' | 'hay-fever-shut' | 'hay-fever-purifier';

/** A week of June in the demonstration flat under a plan; each is run once. */
function week(name: Plan): PlanMeasures {
  const before = done.get(name);
  if (before !== undefined) return before;
  const text = readFileSync('scenarios/flat.yaml', 'utf8').replace(
    '\nmoney:',
    '\nperiod: { from: "06-10", to: "06-16" }\nmoney:',
  );
  const scenario = readOnce(text, 'flat.yaml');
  const plan = preparePlan(scenario, { plan: name, set: [], files: new Map() });
  const { from, to } = plan.period;
  const period = periodOf(weather, from, to, plan.household.clock);
  const { measures } = runPlan({ plan, weather, period });
  done.set(name, measures);
  return measures;
}

const level = (plan: Plan, room: string) => week(plan).rooms[room]!.species['pollen']!.mean;

describe('grass pollen in the flat in June', () => {
  test.each(['living', 'bedroom'])('%s with its window tilted by day', (room) => {
    compareBand({
      topic: 'Air quality',
      what: `pollen indoors over outdoors, ${room} with its window tilted by day`,
      unit: '%',
      source: 'Jantunen and Saarinen 2009: 0.1 to 3.6 by one ventilation window, 3 to 35 by two',
      mark: 'published',
      ...{ low: 0.1, high: 35, got: (100 * level('as-lived', room)) / OUTDOORS },
      because: 'the least and the most that were found',
    });
  });

  test.each(['living', 'bedroom'])('%s with windows shut', (room) => {
    compareBand({
      topic: 'Air quality',
      what: `pollen of 50 grains/m3 outdoors in the ${room}, windows shut`,
      unit: 'grains/m3',
      source: 'flats with shut windows: under 10 against up to 855 outdoors',
      mark: 'published',
      ...{ low: 0, high: 10, got: level('hay-fever-shut', room) },
      because: 'as it was found',
    });
    expect(week('hay-fever-shut').rooms[room]!.window_open_hours).toBe(0);
    expect(week('as-lived').rooms[room]!.window_open_hours).toBeCloseTo(70, 6);
  });

  test('shut windows and purifiers keep it under the band, each at its own price', () => {
    const high = (plan: Plan) => week(plan).rooms['bedroom']!.outside_band_hours.pollen_high;
    expect(high('as-lived')).toBeGreaterThan(100);
    expect(high('hay-fever-shut')).toBe(0);
    expect(high('hay-fever-purifier')).toBe(0);
    const stale = (plan: Plan) => week(plan).rooms['living']!.species['co2']!.mean;
    expect(stale('hay-fever-shut')).toBeGreaterThan(stale('hay-fever-purifier'));
    expect(week('hay-fever-purifier').devices.electricity_kwh).toBeGreaterThan(
      week('as-lived').devices.electricity_kwh,
    );
  });

  test('word comes every morning of the season', () => {
    expect(week('hay-fever-shut').alerts.by_rule['grass pollen']).toMatchObject({ fired: 7 });
  });
});
