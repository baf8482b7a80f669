import { describe, expect, test } from 'vitest';
import { home, measure, room, START, setup } from '../hand-made.ts';

/** Steps of ten minutes: who is in and how warm it is, from midnight. */
const den = (here: (s: number) => number | boolean, warm: (s: number) => number, dt = 600) =>
  measure(setup(), (s) => ({ occupants: Number(here(s)), operative: warm(s) }), { dt }).rooms[
    'den'
  ]!;

describe('coming into a room that stood empty', () => {
  test('home at 17:00, warm again after 70 minutes', () => {
    const found = den(
      (s) => s >= 102,
      (s) => (s < 109 ? 16 : 19),
    );
    expect(found).toMatchObject({
      arrivals: 1,
      cold_arrivals: 1,
      recovery_minutes_mean: 70,
      recovery_minutes_most: 70,
      occupied_hours: 7,
    });
    expect(found.cold_arrival_hours).toBeCloseTo(7 / 6, 12);
  });

  test('only the first two hours count as coming in, however long it stays cold', () => {
    const found = den(
      (s) => s >= 60,
      () => 15,
    );
    expect(found.cold_arrival_hours).toBe(2);
    expect(found.recovery_minutes_most).toBe((144 - 60) * 10);
    expect(found.outside_band_occupied_hours.temperature_low).toBe(14);
  });

  test('a room that is warm when they come has no cold arrival, though it cools later', () => {
    const found = den(
      (s) => s >= 60,
      (s) => (s < 66 ? 18 : 17),
    );
    expect(found).toMatchObject({
      arrivals: 1,
      cold_arrivals: 0,
      cold_arrival_hours: 1,
      recovery_minutes_mean: 0,
      recovery_minutes_most: 0,
    });
  });

  test.each([
    [2, 0],
    [3, 1],
  ])('an absence of %s steps of ten minutes makes %s arrivals', (away, arrivals) => {
    const found = den(
      (s) => s < 30 || s >= 30 + away,
      () => 20,
    );
    expect(found.arrivals).toBe(arrivals);
  });

  test('whoever is in as the trace begins has not arrived', () => {
    const found = den(
      () => 1,
      () => 10,
    );
    expect(found).toMatchObject({ arrivals: 0, cold_arrival_hours: 0, occupied_hours: 24 });
  });

  test('who leaves before it is warm waited as long as they stayed', () => {
    // In from 08:00 to 09:00 in the cold, warm only at noon; back at 18:00, warm after 20 minutes.
    const found = den(
      (s) => (s >= 48 && s < 54) || s >= 108,
      (s) => ((s >= 72 && s < 90) || s >= 110 ? 20 : 15),
    );
    expect(found).toMatchObject({
      arrivals: 2,
      cold_arrivals: 2,
      recovery_minutes_mean: 40,
      recovery_minutes_most: 60,
    });
    expect(found.cold_arrival_hours).toBeCloseTo(1 + 1 / 3, 12);
  });

  test('who comes back after just half an hour has arrived again, and waits anew', () => {
    // In from 08:00, away from 08:30 to 09:00, warm at 09:20.
    const found = den(
      (s) => (s >= 48 && s < 51) || s >= 54,
      (s) => (s < 56 ? 15 : 20),
    );
    expect(found).toMatchObject({ arrivals: 2, cold_arrivals: 2 });
    expect(found.recovery_minutes_mean).toBe((30 + 20) / 2);
    expect(found.recovery_minutes_most).toBe(30);
  });

  test('a wait that the trace ends counts as long as it lasted', () => {
    // Warm after 20 minutes at noon; in again from 22:00, still cold at midnight.
    const found = den(
      (s) => (s >= 72 && s < 76) || s >= 132,
      (s) => (s >= 74 && s < 90 ? 20 : 15),
    );
    expect(found.recovery_minutes_mean).toBe((20 + 120) / 2);
    expect(found.recovery_minutes_most).toBe(120);
  });

  test('midnight adds nothing to an absence', () => {
    const own = setup({ period: { start: START, hours: 48 } });
    const away = (first: number, last: number) =>
      measure(own, (s) => ({ occupants: s >= first && s < last ? 0 : 1 })).rooms['den']!.arrivals;
    expect(away(143, 145)).toBe(0); // 23:50 to 0:10
    expect(away(143, 146)).toBe(1); // half an hour
  });

  test('a part of a step counts by its part, a crowd once', () => {
    const found = den(
      (s) => (s === 60 ? 0.25 : s > 60 ? 3 : 0),
      (s) => (s < 62 ? 15 : 20),
    );
    expect(found.cold_arrival_hours).toBeCloseTo(1.25 / 6, 12);
    expect(found.occupied_hours).toBeCloseTo((0.25 + 83) / 6, 12);
  });

  test('rooms are kept apart', () => {
    const own = setup({ home: home({ rooms: [room('den'), room('bath')] }) });
    const at = (s: number, i: number) => ({ occupants: i === 1 && s >= 60 ? 1 : 0, operative: 15 });
    const { rooms } = measure(own, at);
    expect(rooms['den']).toMatchObject({ arrivals: 0, cold_arrival_hours: 0 });
    expect(rooms['bath']).toMatchObject({ arrivals: 1, cold_arrival_hours: 2 });
  });

  test('cold arrivals are never more than the cold hours with somebody in', () => {
    const found = den(
      (s) => s % 7 > 3,
      (s) => 18 + 3 * Math.sin(s / 5),
    );
    expect(found.cold_arrival_hours).toBeGreaterThan(0);
    expect(found.cold_arrival_hours).toBeLessThanOrEqual(
      found.outside_band_occupied_hours.temperature_low,
    );
    expect(found.recovery_minutes_mean).toBeLessThanOrEqual(found.recovery_minutes_most);
  });
});
