import { readFileSync } from 'node:fs';
import type { Log, LoggedSeries } from '../../src/log/log.ts';
import { zoneClock } from '../../src/scenario/zone-clock.ts';
import { offsetAt, toLocal } from '../../src/units/local-clock.ts';
import { readWeather } from '../../src/weather/read/read-weather.ts';
import { readOnce } from '../scenario/read-once.ts';
import { madeLog } from './made-log.ts';

/*
 * How scenarios/logged-flat.csv is made: the flat with hidden values is simulated, sensors read it every
 * half-hour with errors that hang together, a week-end of the bedroom's is lost, some readings fail, and
 * times are those of the wall clock, which goes forward on 26 March.
 */

/** What the fit shall find again, by the name of the parameter. */
export const HIDDEN = {
  'air leakage at 50 Pa': 7,
  'moisture factor': 1.3,
  'moisture buffer': 0.7,
  'steady moisture (bedroom)': 25,
  'heat loss factor': 1.15,
  'heat capacity factor': 0.8,
  'window shading': 0.4,
  'thermostat error (living)': -0.8,
  'thermostat error (bedroom)': 1.2,
  'steady heat (living)': 60,
} as const;

const TRUTH = [
  '/home/leakage/ach50=7',
  '/household/moisture factor=1.3',
  '/home/moisture buffer=0.7',
  '/home/rooms/bedroom/steady moisture=25',
  '/home/build/wall u-value=1.84', // 1.15 of the 1.6 and 2.9 that are assumed
  '/home/build/window u-value=3.335',
  '/home/build/wall heat capacity=208', // 0.8 of 260 and 60
  '/home/build/internal mass=48',
  '/home/build/window shading=0.4',
  '/heating/rooms/living/sensor/bias=-0.8',
  '/heating/rooms/bedroom/sensor/bias=1.2',
  '/home/rooms/living/steady heat=60',
];

const START = Date.UTC(2023, 1, 13) / 1000;
const DAYS = 56;
const CLOCK = zoneClock('Europe/London')!;

/** The log itself, before it becomes a file. */
function loggedFlat(): Log {
  const file = 'scenarios/logged-flat.yaml';
  const scenario = readOnce(readFileSync(file, 'utf8'), file);
  const text = readFileSync('weather/saltmere-typical.csv', 'utf8');
  return madeLog({
    ...{ scenario, files: new Map([[scenario.weather, text]]), truth: TRUTH, seed: 7 },
    ...{ weather: readWeather(text, scenario.weather), start: START, days: DAYS, every: 1800 },
    ...{ rooms: ['living', 'bedroom'], species: ['co2'] },
    noise: { temperature: 0.1, humidity: 0.8, rho: 0.8 },
  });
}

/** The file: one row a half-hour, times of the wall clock without a zone. */
export function loggedFlatCsv(): string {
  const columns = loggedFlat().series.filter(
    ({ quantity, room }) => quantity !== 'co2' || room === 'bedroom',
  );
  const head = columns.map(({ quantity, room }) => `${room} ${HEADS[quantity]}`);
  const rows = Array.from({ length: columns[0]!.times.length }, (_, n) => {
    const utc = START + n * 1800;
    // The logger's clock does not know the hour that comes twice; there is none in this stretch.
    const local = new Date((utc + offsetAt(CLOCK, utc)) * 1000).toISOString();
    const cells = columns.map((series) => cell(series, n));
    return [local.slice(0, 16).replace('T', ' '), ...cells].join(',');
  });
  const kept = rows.filter((_, n) => !(n >= LOST.from && n < LOST.to));
  return `${['time', ...head].join(',')}\n${kept.join('\n')}\n`;
}

/** One reading; the bedroom's logger was away over a week-end, and every 200th reading failed. */
function cell({ quantity, room, values }: LoggedSeries, n: number): string {
  const weekday = new Date(toLocal(CLOCK, START + n * 1800) * 1000).getUTCDay();
  const away = room === 'bedroom' && n > 1000 && n < 1300 && (weekday === 0 || weekday === 6);
  if (away || n % 200 === 57) return '';
  return values[n]!.toFixed(quantity === 'co2' ? 0 : 1);
}

/** Rows that were never written: half a day without power. */
const LOST = { from: 1900, to: 1925 };
const HEADS: Readonly<Record<string, string>> = {
  temperature: 'temperature [°C]',
  'relative humidity': 'humidity [%]',
  co2: 'co2 [ppm]',
};
