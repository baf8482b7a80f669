import { expect, test } from 'vitest';
import { windRatio } from '../../src/home/wind-ratio.ts';
import { shieldingRatio } from '../../src/physics/airflow/shielding-ratio.ts';
import { compare } from '../reference/compare.ts';

const STATION = { terrain: 'open', height: 10 } as const;

test.each([
  ['city', 5, 1.7837],
  ['suburban', 5, 3.077],
  ['suburban', 8, 3.4122],
  ['open', 2.5, 4.118],
] as const)(
  '5 m/s at the station is in the %s at %d m with nothing around',
  (terrain, height, expected) => {
    compare({
      topic: 'Air by pressures',
      what: `wind at an unsheltered home, ${terrain}, ${height} m, of 5 m/s at the station`,
      unit: 'm/s',
      source: 'ASHRAE Fundamentals ch. 24, table 1 and its power law, worked out',
      mark: 'published arithmetic',
      expected,
      got: 5 * windRatio({ terrain, height }, STATION, 1),
      tolerance: { absolute: 0.0001 },
      because: 'print rounding',
    });
  },
);

test('what stands around takes its share of that, wherever the home is', () => {
  for (const shelter of [2, 3, 4, 5]) {
    const home = { terrain: 'suburban', height: 5 } as const;
    const share = windRatio(home, STATION, shelter) / windRatio(home, STATION, 1);
    expect(share).toBeCloseTo(shieldingRatio(shelter), 12);
  }
});
