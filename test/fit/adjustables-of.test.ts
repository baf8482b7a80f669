import { expect, test } from 'vitest';
import { adjustablesOf } from '../../src/fit/adjustables-of.ts';
import { madeWeather } from '../engine/homes.ts';

const RAW = {
  ...{ title: 'A', weather: 'w.csv', site: { latitude: 54, longitude: -2 } },
  home: { rooms: { den: { 'floor area': 14 }, bed: { 'floor area': 14 } } },
  cooling: { source: 'ideal', setpoint: 24, rooms: ['bed'] },
};

/** Whether an error of cooling is looked for in a home of two rooms, of which one is cooled. */
function isCoolingSought(logged: readonly ('den' | 'bed')[], outdoors: (hour: number) => number) {
  const rooms = (['den', 'bed'] as const).map((name) => ({
    ...{ name, humidity: null, heat: null, species: {} },
    temperature: logged.includes(name) ? {} : null,
  }));
  const from = {
    ...{ scenario: { doubts: [] }, raw: RAW },
    plan: { assumed: [], home: { elements: [], openings: [], cooling: [{ room: 1 }] } },
    weather: madeWeather({ temperature: outdoors }, { start: 0 }),
    readings: { rooms },
    division: { start: 0, hours: 48, release: 0, withheld: 40 },
  };
  const found = adjustablesOf('heat', from as unknown as Parameters<typeof adjustablesOf>[1]);
  return found.some(({ name }) => name === 'thermostat error of cooling');
}

test('an error of cooling is looked for where a cooled room was logged on warm days', () => {
  expect(isCoolingSought(['den', 'bed'], () => 21)).toBe(true);
  expect(isCoolingSought(['bed'], (hour) => (hour === 45 ? 21 : 5))).toBe(true);
  expect(isCoolingSought(['bed'], () => 20)).toBe(false);
  expect(isCoolingSought(['den'], () => 30)).toBe(false);
});

test('usual airing is told by readings that are near each other, and not looked for where contacts were logged', () => {
  const seen = (apart: number, windows: readonly ('den' | 'bed')[], unknown = 0) => {
    const told = Float64Array.from({ length: 96 }, (_, k) => (k < unknown ? Number.NaN : 0));
    const rooms = (['den', 'bed'] as const).map((name) => ({
      ...{ name, humidity: {}, heat: null, temperature: {}, species: {} },
      windows: windows.includes(name) ? told : null,
    }));
    const usual = { path: '/household/usual airing', value: 1, low: 0.3, high: 2, source: 'x' };
    const from = {
      ...{ scenario: { doubts: [] }, raw: RAW },
      plan: { assumed: [usual], home: { elements: [], openings: [{ room: 0 }, { room: 1 }] } },
      weather: madeWeather({ temperature: () => 10 }, { start: 0 }),
      readings: { rooms, apart },
      division: { start: 0, hours: 48, release: 0, withheld: 40 },
    };
    const found = adjustablesOf('water', from as unknown as Parameters<typeof adjustablesOf>[1]);
    return found.find(({ name }) => name === 'usual airing')?.least;
  };
  expect(seen(900, ['den'])).toBeLessThan(0.1);
  // Twins read every half-hour were off by a factor of 1.7 either way.
  expect(Math.exp(1.96 * seen(1800, ['den'])!)).toBeGreaterThan(1.73);
  expect(seen(900, ['den', 'bed'])).toBeUndefined();
  // 9 of 96 half-hours without a word are few; a contact that was silent for half of the log left windows to the household.
  expect(seen(900, ['den', 'bed'], 9)).toBeUndefined();
  expect(seen(900, ['den', 'bed'], 48)).toBeLessThan(0.1);
});
