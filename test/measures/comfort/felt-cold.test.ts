import { expect, test } from 'vitest';
import { measure, START, setup } from '../hand-made.ts';

test('hours a day too cold with somebody in, of the winter days alone', () => {
  // 31 March: cold with somebody in for 3 h, half of it for one half of a step; 1 April: all day.
  const start = Date.UTC(2023, 2, 31) / 1000;
  const own = setup({ period: { start, hours: 48 } });
  const { rooms } = measure(own, (s) => {
    const hour = s / 6;
    const cold = hour < 3 || hour >= 24;
    return { operative: cold ? 17 : 20, occupants: hour < 2 || hour >= 24 ? 2 : 0.5 };
  });
  expect(rooms['den']!.winter_cold_hours_per_day).toBeCloseTo(2.5, 9);
  expect(rooms['den']!.felt_cold_hours).toBeCloseTo(26.5, 9);
  expect(rooms['den']!.outside_band_occupied_hours.temperature_low).toBeCloseTo(26.5, 9);
});

test('nobody in, half a kelvin under the edge of the band, and no winter at all', () => {
  const cold = (occupants: number, operative: number) =>
    measure(setup(), () => ({ operative, occupants })).rooms['den']!.winter_cold_hours_per_day;
  expect([cold(0, 10), cold(1, 18), cold(1, 17.5), cold(1, 17.49)]).toEqual([0, 0, 0, 24]);
  const july = setup({ period: { start: START + 180 * 86_400, hours: 24 } });
  const found = measure(july, () => ({ operative: 10, occupants: 1 }));
  expect(found.rooms['den']!.winter_cold_hours_per_day).toBeNull();
  expect(found.rooms['den']!.felt_cold_hours).toBe(24);
});
