import type { Weather } from '../../src/weather/weather.ts';

/** A made-up series for tests: hourly from 2023-01-01T00:00Z at 54.2, 0, one temperature a step. */
export function someWeather(
  temperature: readonly number[],
  changes: Partial<Omit<Weather, 'temperature' | 'count'>> = {},
): Weather {
  const count = temperature.length;
  const of = (value: number) => new Float64Array(count).fill(value);
  return {
    title: 'a test',
    latitude: 54.2,
    longitude: 0,
    elevation: 0,
    start: Date.UTC(2023, 0) / 1000,
    step: 3600,
    count,
    periodic: false,
    temperature: Float64Array.from(temperature),
    humidityRatio: of(0.005),
    pressure: of(101_325),
    windSpeed: of(3),
    windDirection: of(Number.NaN),
    directNormal: of(0),
    diffuseHorizontal: of(0),
    sun: 'none',
    species: {},
    notes: [],
    ...changes,
  };
}
