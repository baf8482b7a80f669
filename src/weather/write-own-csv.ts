import { vapourPressureFromHumidityRatio } from '../physics/moist-air/humidity-ratio.ts';
import { relativeHumidity } from '../physics/moist-air/relative-humidity.ts';
import { saturationPressureOverWater } from '../physics/moist-air/saturation-pressure.ts';
import { isoTime } from '../units/iso-time.ts';
import { OUTDOOR_SPECIES, QUANTITIES, type Quantity } from './quantity.ts';
import type { SunOrigin, Weather } from './weather.ts';

/**
 * The project's own layout of a series, rounded to what instruments can tell; `readWeather` reads it.
 *
 * The notes of the series go into its head, so that filled hours and derived columns stay known; so
 * does where its sun comes from, unless it was measured.
 *
 * @param said  further lines of the head, such as source and licence
 */
export function writeOwnCsv(
  weather: Weather,
  said: readonly (readonly [key: string, words: string])[] = [],
): string {
  const columns = columnsOf(weather);
  const units = columns.map(([name]) => `${name} ${QUANTITIES[name].unit}`).join(', ');
  const lines = [
    `# title: ${weather.title.replaceAll(/\s+/g, ' ')}`,
    `# latitude: ${weather.latitude}`,
    `# longitude: ${weather.longitude}`,
    `# elevation: ${weather.elevation}`,
    `# typical: ${weather.periodic}`,
    ...(DERIVED.includes(weather.sun) ? [`# sun: ${weather.sun}`] : []),
    ...said.map(([key, words]) => `# ${key}: ${words.replaceAll(/\s+/g, ' ')}`),
    ...weather.notes.map(({ text }) => `# note: ${text}`),
    `# units: ${units}; irradiance is the mean of the step that begins at the time`,
    ['time', ...columns.map(([name]) => name)].join(','),
  ];
  for (let k = 0; k < weather.count; k++) {
    const cells = columns.map(([, value, digits]) => rounded(value(k), digits));
    lines.push(`${isoTime(weather.start + k * weather.step)},${cells.join(',')}`);
  }
  return `${lines.join('\n')}\n`;
}

const DERIVED: readonly SunOrigin[] = ['split from global', 'made from cloud', 'invented'];

type Column = readonly [Quantity, (k: number) => number, number];

function columnsOf(weather: Weather): Column[] {
  const columns: Column[] = [
    ['temperature', (k) => weather.temperature[k]!, 2],
    ['relative humidity', (k) => relativeOverWater(weather, k), 1],
    ['pressure', (k) => weather.pressure[k]!, 0],
    ['wind speed', (k) => weather.windSpeed[k]!, 1],
  ];
  if (weather.windDirection.some((value) => !Number.isNaN(value))) {
    columns.push(['wind direction', (k) => weather.windDirection[k]!, 0]);
  }
  if (weather.sun !== 'none') {
    columns.push(['direct normal', (k) => weather.directNormal[k]!, 0]);
    columns.push(['diffuse horizontal', (k) => weather.diffuseHorizontal[k]!, 0]);
  }
  for (const name of OUTDOOR_SPECIES) {
    const values = weather.species[name];
    if (values !== undefined) columns.push([name, (k) => values[k]!, 1]);
  }
  return columns;
}

/** Relative humidity over liquid water, as stations report it. [%] */
function relativeOverWater(weather: Weather, k: number): number {
  const vapour = vapourPressureFromHumidityRatio(weather.humidityRatio[k]!, weather.pressure[k]!);
  return relativeHumidity(vapour, weather.temperature[k]!, saturationPressureOverWater);
}

/** A rounded number without the sign of a negative zero; empty where it is not known. */
function rounded(value: number, digits: number): string {
  if (Number.isNaN(value)) return '';
  const factor = 10 ** digits;
  return String(Math.round(value * factor) / factor + 0);
}
