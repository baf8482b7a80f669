import { expect, test } from 'vitest';
import { saturationPressure } from '../../../src/physics/moist-air/saturation-pressure.ts';
import { saturationTable } from '../../../src/physics/moist-air/saturation-table.ts';
import { compare } from '../../reference/compare.ts';

const psat = saturationTable();

test('strays less than 1e-8 from the formula anywhere', () => {
  let worst = 0;
  for (let i = 0; i <= 240_000; i++) {
    const t = -40 + i * 0.0005;
    worst = Math.max(worst, Math.abs(psat(t) / saturationPressure(t) - 1));
  }
  compare({
    topic: 'Moist air',
    what: 'saturation table beside its formula, largest relative difference, -40 to 80 °C',
    unit: '-',
    source: 'cubic Hermite interpolation',
    mark: 'closed form',
    expected: 0,
    got: Number(worst.toPrecision(2)),
    tolerance: { absolute: 1e-8 },
    because: 'h^4/384 of the fourth derivative, and 6e-9 where ice meets water',
  });
});

test('strays less than 1e-8 around the triple point, to the last bit', () => {
  for (const far of [0, 1e-16, 1e-14, 1e-12, 1e-9, 1e-6, 1e-4, 0.009, 0.01, 0.02, 0.24, 0.25]) {
    for (const t of [0.01 - far, 0.01 + far, -far, far]) {
      expect(Math.abs(psat(t) / saturationPressure(t) - 1), `at ${t} °C`).toBeLessThan(1e-8);
    }
  }
});

test('is the formula itself outside', () => {
  for (const t of [-100, -60, -40.000001, 80.000001, 120, 200]) {
    expect(psat(t)).toBe(saturationPressure(t));
  }
});

test('rises from quarter to quarter and through every quarter', () => {
  let before = 0;
  for (let t = -40; t <= 80; t += 0.01) {
    const now = psat(t);
    expect(now).toBeGreaterThan(before);
    before = now;
  }
});

test('refuses what the formula refuses, in the same words', () => {
  for (const t of [Number.NaN, -101, 201, Number.NEGATIVE_INFINITY]) {
    expect(() => psat(t)).toThrow('saturationPressure: temperature must be between -100 and 200');
  }
});
