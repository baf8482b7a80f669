import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { PlanMeasures } from '../../src/measures/plan-measures.ts';
import { preparePlan } from '../../src/scenario/prepare-plan.ts';
import { runPlan } from '../../src/studies/run-plan.ts';
import { readWeather } from '../../src/weather/read/read-weather.ts';
import { compareBand } from '../reference/compare.ts';
import { readOnce } from '../scenario/read-once.ts';

const YEAR = 'weather/saltmere-typical.csv';
const weather = readWeather(readFileSync(YEAR, 'utf8'), YEAR);

/**
 * A detached house of 60 m2 a storey, 10 air changes at 50 Pa, nobody in, no window ever open, 20 °C: its
 * figures from November to March.
 */
function winterOf(storeys: number, shelter: string): { ach: number; measures: PlanMeasures } {
  const levels = Array.from({ length: storeys }, (_, s) => s);
  const rooms = levels.map(
    (s) => `    level${s}: { use: living, floor area: 60, storey: ${s}, outer sides: 4 }`,
  );
  const stairs = levels
    .slice(1)
    .map(
      (s) => `    - { between: [level${s - 1}, level${s}], width: 0.9, height: 2.2, open: always }`,
    );
  const text = `title: House
weather: none.csv
site: { latitude: 54.2, longitude: -1.9, elevation: 180 m, timezone: Europe/London, shelter: ${shelter} }
step: 60 min
money: { currency: GBP, electricity: 0.2 }
home:
  build: { age: 1980, shape: detached }
  leakage: { ach50: 10 }
  background vents: 0
  rooms:
${rooms.join('\n')}
${storeys > 1 ? `  doorways:\n${stairs.join('\n')}` : ''}
heating: { source: direct electric, setpoint: 20, season: all year }
household: { people: [] }
`;
  const scenario = readOnce(text, 'house.yaml');
  const plan = preparePlan(scenario, { plan: 'as-lived', set: [], files: new Map() });
  // The year's end meets its start, so November to March is one stretch.
  const start = weather.start + 304 * 86_400;
  const { measures } = runPlan({ plan, weather, period: { start, hours: 151 * 24 } }, [], 5);
  return { ach: measures.handbook_cross_check.infiltration_ach_mean, measures };
}

describe('air change at 50 Pa over a number', () => {
  /** What the number is multiplied by for each storey, and for wind that is let in or kept off. */
  const HEIGHT = [1, 0.8, 0.7] as const;
  const SHELTER = { rural: 0.9, suburban: 1, urban: 1.2 } as const;

  for (const storeys of [1, 2, 3]) {
    for (const [shelter, factor] of Object.entries(SHELTER)) {
      test(`${storeys} storeys, ${shelter}`, () => {
        const { ach } = winterOf(storeys, shelter);
        compareBand({
          topic: 'Air by pressures',
          what: `climate factor that the winter leakage of a house of ${storeys} storeys, ${shelter}, comes to`,
          unit: '-',
          source:
            'Sherman 1987, Energy and Buildings 10: ach = ach50/(C H S L), C of 14 to 26 by climate, H 1, 0.8 ' +
            'and 0.7, S 0.9 exposed, 1 normal and 1.2 sheltered, L 1',
          mark: 'from memory',
          got: 10 / ach / (HEIGHT[storeys - 1]! * factor),
          low: 14,
          high: 26,
          because: 'the band of all climates; shelter classes 2, 3 and 4 are taken for his three',
        });
      });
    }
  }
});

test('in winter with windows shut, less air from outdoors enters upstairs than downstairs', () => {
  const { outdoor_air_share_by_storey: share, outdoor_air } = winterOf(2, 'suburban').measures;
  expect(outdoor_air.windows_l_per_s).toBe(0);
  expect(share['1']).toBeGreaterThan(0);
  expect(share['1']).toBeLessThan(share['0']!);
  expect(share['0']! + share['1']!).toBeCloseTo(1, 12);
});
