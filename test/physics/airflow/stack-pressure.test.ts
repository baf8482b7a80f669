import { expect, test } from 'vitest';
import { dryAirDensity } from '../../../src/physics/moist-air/moist-air-volume.ts';
import { compare } from '../../reference/compare.ts';
import { stackPressure } from '../../reference/physics/airflow/stack-pressure.ts';

const density = (temperature: number): number => dryAirDensity(temperature, 0, 101_325);

test('five metres of warm air in winter', () => {
  const shared = {
    topic: 'Air by pressures',
    source: 'ideal gas of 287.055 J/(kg K) and 9.81 m/s2',
    mark: 'closed form',
    because: 'constants of six digits here',
  } as const;
  for (const [temperature, expected] of [
    [0, 1.29226],
    [10, 1.24662],
    [20, 1.2041],
  ] as const) {
    compare({
      ...{ ...shared, what: `density of dry air at ${temperature} °C`, unit: 'kg/m3', expected },
      ...{ got: density(temperature), tolerance: { relative: 6e-5 } },
    });
  }
  compare({
    ...{ ...shared, what: '5 m of air of 20 beside 0 °C', unit: 'Pa', expected: 4.32444 },
    ...{ got: stackPressure(density(0), density(20), 5), tolerance: { relative: 4e-4 } },
  });
});

test('turns round with the warmth and with the way', () => {
  expect(stackPressure(1.2, 1.3, 5)).toBe(-stackPressure(1.3, 1.2, 5));
  expect(stackPressure(1.3, 1.2, -5)).toBe(-stackPressure(1.3, 1.2, 5));
  expect(stackPressure(1.2, 1.2, 5)).toBe(0);
  expect(stackPressure(1.3, 1.2, 6)).toBeGreaterThan(stackPressure(1.3, 1.2, 5));
});
