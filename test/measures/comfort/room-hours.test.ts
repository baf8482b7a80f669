import { expect, test } from 'vitest';
import {
  coldArrivalHours,
  coldSpotHours,
  dampEmptyHours,
  hoursOutsideBands,
  roomHours,
} from '../../../src/measures/comfort/room-hours.ts';
import { somePlan } from '../../studies/some-plan.ts';

const plan = somePlan('as-lived', {
  den: {
    outside: { temperature_low: 900, humidity_low: 3, humidity_high: 500, co2_high: 70 },
    occupied: { temperature_low: 40, temperature_high: 5, humidity_high: 120 },
    over: { cold_arrival_hours: 12, cold_spot_hours_above_80_pct: 300 },
  },
  bath: {
    outside: { humidity_low: 1, humidity_high: 200 },
    occupied: { temperature_low: 10, humidity_high: 30 },
    over: { cold_arrival_hours: 2, cold_spot_hours_above_80_pct: 50 },
  },
});

test('hours of all rooms add up, by kind', () => {
  expect(roomHours(plan, 'outside_band_hours', 'humidity_high')).toBe(700);
  expect(roomHours(plan, 'outside_band_occupied_hours', 'temperature_low')).toBe(50);
  expect(coldArrivalHours(plan)).toBe(14);
  expect(coldSpotHours(plan)).toBe(350);
});

test('damp with nobody there is damp less damp with somebody there', () => {
  expect(dampEmptyHours(plan)).toBe(700 - 150);
});

test('outside the bands: too cold or warm with somebody there, too damp or dry at any time', () => {
  expect(hoursOutsideBands(plan)).toBe(50 + 5 + 700 + 4);
});
