import { expect, test } from 'vitest';
import { measure, setup } from './hand-made.ts';

test('heat, means, open windows and wet panes of one day', () => {
  const night = (s: number) => s < 48; // 8 h
  const den = measure(setup(), (s) => ({
    air: night(s) ? 16 : 19,
    humidity: night(s) ? 60 : 54,
    heating: night(s) ? 0 : 900,
    windowOpen: s === 48 ? 1 : s === 49 ? 0.2 : 0, // share of the step
    condensation: night(s) ? 1e-6 : -2e-6,
  })).rooms['den']!;
  expect(den.heating_kwh).toBeCloseTo(0.9 * 16, 9);
  expect(den.mean_temperature_c).toBeCloseTo(18, 9);
  expect(den.mean_relative_humidity_pct).toBeCloseTo(56, 9);
  expect(den.window_open_hours).toBeCloseTo(1.2 / 6, 12);
  expect(den.condensation_hours).toBe(8);
  expect(den.condensation_kg).toBeCloseTo(8 * 3600 * 1e-6, 12);
});
