import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { preparePlan } from '../../src/scenario/prepare-plan.ts';
import { runPlan } from '../../src/studies/run-plan.ts';
import { periodOf } from '../../src/weather/period-of.ts';
import { readWeather } from '../../src/weather/read/read-weather.ts';
import { compare, compareBand } from '../reference/compare.ts';
import { readOnce } from '../scenario/read-once.ts';

const WEATHER = readWeather(readFileSync('weather/saltmere-typical.csv', 'utf8'), 'saltmere.csv');

/** Mean levels of vapours in the rooms of a scenario. [µg/m3] */
function levels(text: string, set: readonly string[] = []) {
  const plan = preparePlan(readOnce(text, 'h.yaml'), { plan: null, set, files: new Map() });
  const { from, to } = plan.period;
  const period = periodOf(WEATHER, from, to, plan.household.clock);
  const { measures } = runPlan({ plan, weather: WEATHER, period });
  return { rooms: measures.rooms, assumed: plan.assumed };
}

/** Nobody in a room that breathes half its air an hour. */
const EMPTY = (air: string) => `title: One room
weather: w.csv
site: { latitude: 54, longitude: -2, elevation: 30, timezone: Europe/London }
period: { from: "01-10", to: "01-11" }
home: { height: 2.4, leakage: { air changes: 0.5 }, rooms: { den: { floor area: 20 } } }
heating: { source: none }
household: { people: [], activities: [] }
air: ${air}
`;

describe('vapours of materials', () => {
  test.each([
    ['{ outdoors: { tvoc: 0 }, materials: { tvoc: 50 } }', 41.7, '50 µg/(m2 h)'],
    ['{ outdoors: { tvoc: 20 } }', 20 + 100 / 1.2, 'the preset, above 20 outdoors'],
  ])('at rest: %s', (air, expected, what) => {
    const { den } = levels(EMPTY(air)).rooms;
    compare({
      topic: 'Air quality',
      what: `TVOC of materials under 2.4 m at 0.5 1/h: ${what}`,
      ...{ unit: 'µg/m3', source: 'mixed room by hand: E/(n h)', mark: 'closed form', expected },
      ...{ got: den!.species['tvoc']!.mean, tolerance: { absolute: 0.05 } },
      because: 'printed to a tenth',
    });
  });

  test('a room of its own, and what is assumed in the others', () => {
    const text = EMPTY('{}').replace('area: 20 }', 'area: 20, materials: { tvoc: 0 } }');
    const { rooms, assumed } = levels(text);
    expect(rooms['den']!.species['tvoc']!.mean).toBeCloseTo(20, 6);
    expect(assumed.map(({ path }) => path)).not.toContain('/air/materials/tvoc');
    expect(levels(EMPTY('{}')).assumed).toContainEqual(
      expect.objectContaining({ path: '/air/materials/tvoc', value: 100, low: 20, high: 500 }),
    );
  });

  test('a lived-in flat in winter has what homes were found to have', () => {
    const text = readFileSync('scenarios/flat.yaml', 'utf8');
    const week = text.replace('\nmoney:', '\nperiod: { from: "01-10", to: "01-16" }\nmoney:');
    for (const [name, { species }] of Object.entries(levels(week).rooms)) {
      compareBand({
        topic: 'Air quality',
        what: `TVOC in the flat's ${name}, mean of a week in January`,
        unit: 'µg/m3',
        source: '60 UK homes, three days each in winter: 16.6 to 8150 (York 2021)',
        mark: 'published',
        ...{ low: 16.6, high: 8150, got: species['tvoc']!.mean },
        because: 'the least and the most that were found, of C2 to C10',
      });
    }
  });
});
