import { expect, test } from 'vitest';
import { home, measure, room, START, setup } from '../hand-made.ts';

const carried = home({
  rooms: [room('den'), room('bath')].map((each) => ({ ...each, deposition: [0] })),
  species: [{ name: 'co2', unit: 'ppm', outdoor: 420, penetration: 1 }],
});
const levels = (of: (hour: number) => number, hours = 24, clock = { from: [0], offset: [0] }) =>
  measure(setup({ home: carried, period: { start: START, hours }, clock }), (s, i) => ({
    species: [i === 0 ? of(Math.floor(s / 6)) : 500],
  })).rooms;

test('mean, evening, night and the highest hour, by the wall clock', () => {
  // 1000 from 18 to 23 h, 800 from 23 to 7 h, 400 between, but 1600 from 12 to 13 h.
  const day = (hour: number) =>
    hour === 12 ? 1600 : hour >= 18 && hour < 23 ? 1000 : hour >= 23 || hour < 7 ? 800 : 400;
  const { den, bath } = levels(day);
  expect(den!.species['co2']).toEqual({
    mean: (1600 + 5 * 1000 + 8 * 800 + 10 * 400) / 24,
    ...{ evening: 1000, night: 800, p95: 1000, peak: 1600 },
  });
  expect(bath!.species['co2']).toEqual({
    mean: 500,
    evening: 500,
    night: 500,
    p95: 500,
    peak: 500,
  });
  const later = levels(day, 24, { from: [0], offset: [3600] })['den']!.species['co2']!;
  expect(later.evening).toBe((400 + 4 * 1000) / 5); // 18 h there is 17 h by UTC
});

test('what the air outdoors had is a mean over the period', () => {
  const { species } = measure(setup({ home: carried }), () => ({ species: [700] }));
  expect(species).toEqual({ co2: { label: 'CO2', unit: 'ppm', mean_outdoors: 420 } });
});

test('95 of 100 hours are at the percentile or under it', () => {
  const { den } = levels((hour) => 1000 - hour, 100);
  expect(den!.species['co2']).toMatchObject({ p95: 995, peak: 1000 });
});

test('peaks are means of hours, not of steps', () => {
  const own = setup({ home: carried });
  const { rooms } = measure(own, (s) => ({ species: [s === 30 ? 1200 : 600] }));
  expect(rooms['den']!.species['co2']!.peak).toBeCloseTo(700, 9);
});

test('a period without an evening or a night has its mean for them', () => {
  const { den } = levels((hour) => 400 + hour, 2, { from: [0], offset: [9 * 3600] });
  expect(den!.species['co2']).toMatchObject({ mean: 400.5, evening: 400.5, night: 400.5 });
});
