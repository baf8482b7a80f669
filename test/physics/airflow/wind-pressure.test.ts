import { describe, expect, test } from 'vitest';
import { localWindRatio, type Terrain } from '../../../src/physics/airflow/local-wind.ts';
import { roofPressureCoefficient } from '../../../src/physics/airflow/roof-pressure-coefficient.ts';
import { shieldingRatio } from '../../../src/physics/airflow/shielding-ratio.ts';
import { wallPressureCoefficient } from '../../../src/physics/airflow/wall-pressure-coefficient.ts';
import { compare, compareBand } from '../../reference/compare.ts';
import { leakageCoefficients } from '../../reference/physics/airflow/leakage-coefficients.ts';

const TOPIC = 'Wind on walls';

describe('localWindRatio', () => {
  test('slows wind by terrain and height as the handbook does', () => {
    const heights = [2.5, 5, 8, 10];
    const rows: Readonly<Record<Terrain, readonly number[]>> = {
      city: [1.419, 1.7837, 2.0829, 2.2421],
      suburban: [2.6418, 3.077, 3.4122, 3.5839],
      open: [4.118, 4.5376, 4.8462, 5],
      flat: [5.0925, 5.458, 5.7207, 5.8498],
    };
    for (const [terrain, row] of Object.entries(rows) as [Terrain, number[]][]) {
      row.forEach((expected, k) => {
        compare({
          topic: TOPIC,
          what: `5 m/s at an open station, ${heights[k]} m up, ${terrain}`,
          unit: 'm/s',
          source: 'profile of ASHRAE Fundamentals ch. 24, its table 1',
          mark: 'closed form',
          expected,
          got: 5 * localWindRatio(terrain, heights[k]!, 'open', 10),
          tolerance: { absolute: 5.1e-5 },
          because: 'rounding of the figure',
        });
      });
    }
  });

  test('leaves wind alone where station and home are alike', () => {
    for (const terrain of ['city', 'suburban', 'open', 'flat'] as const) {
      expect(localWindRatio(terrain, 7, terrain, 7)).toBeCloseTo(1, 12);
    }
  });
});

describe('wallPressureCoefficient', () => {
  test('agrees with a printed profile of a square house', () => {
    const printed = [0.603, 0.469, 0.119, -0.443, -0.681, -0.39, -0.364];
    printed.forEach((expected, k) => {
      compare({
        topic: TOPIC,
        what: `pressure coefficient of a wall, wind at ${30 * k} degrees`,
        unit: '-',
        source: 'profile table of Swami and Chandra 1987 for a square house',
        mark: 'published arithmetic',
        expected,
        got: wallPressureCoefficient(30 * k),
        tolerance: { absolute: 6e-4 },
        because: 'rounding of the print',
      });
    });
  });

  test('is alike for wind from either side, however the angle is written', () => {
    for (const angle of [10, 75, 130]) {
      expect(wallPressureCoefficient(-angle)).toBeCloseTo(wallPressureCoefficient(angle), 12);
      expect(wallPressureCoefficient(360 - angle)).toBeCloseTo(wallPressureCoefficient(angle), 12);
      expect(wallPressureCoefficient(angle + 360)).toBeCloseTo(wallPressureCoefficient(angle), 12);
    }
  });

  // Worked out apart from the formula with plus before its term 0.131; four decimals.
  const OBLONG: Readonly<Record<number, readonly number[]>> = {
    2: [0.6035, 0.4798, 0.1826, -0.3398, -0.6323, -0.3695, -0.4519],
    0.5: [0.6035, 0.4587, 0.0567, -0.5171, -0.6382, -0.3403, -0.2258],
  };

  test('knows walls longer or shorter than their neighbours', () => {
    for (const [ratio, row] of Object.entries(OBLONG)) {
      row.forEach((expected, k) => {
        compare({
          topic: TOPIC,
          what: `pressure coefficient, wall ${ratio} times its neighbour, wind at ${30 * k} degrees`,
          unit: '-',
          source: 'formula of Swami and Chandra 1987, worked out apart',
          mark: 'closed form',
          expected,
          got: wallPressureCoefficient(30 * k, Number(ratio)),
          tolerance: { absolute: 5.1e-5 },
          because: 'rounding of the figure',
        });
      });
    }
    expect(wallPressureCoefficient(90, 2)).toBeGreaterThan(wallPressureCoefficient(90));
  });
});

test('roofs are sucked less the steeper they are', () => {
  // Rows of the European standard for roofs in the open: below 10, to 30, above 30 degrees.
  expect([0, 9.9, 10, 30, 30.1, 90].map(roofPressureCoefficient)).toEqual([
    ...[-0.7, -0.7, -0.6, -0.6, -0.2, -0.2],
  ]);
});

describe('shieldingRatio', () => {
  test('agrees with the wind coefficients of the basic model, class by class', () => {
    // Its wind coefficient of one storey goes with the square of the shielding coefficient.
    const exposed = leakageCoefficients(1, 1).wind;
    for (const shelter of [2, 3, 4, 5]) {
      compareBand({
        topic: TOPIC,
        what: `wind coefficient over the square of the wind that gets through, class ${shelter}`,
        unit: '-',
        source: 'ASHRAE basic model beside the shielding coefficients of 1980',
        mark: 'from memory',
        low: 0.99,
        high: 1.02,
        got: leakageCoefficients(1, shelter).wind / exposed / shieldingRatio(shelter) ** 2,
        because: 'both tables have three digits',
      });
    }
  });

  test('knows five classes', () => {
    expect(() => shieldingRatio(6)).toThrow(
      'shieldingRatio: shelter class must be 1, 2, 3, 4 or 5, got 6',
    );
  });
});
