import type { Log } from '../log/log.ts';
import { isoDay } from '../units/iso-time.ts';
import { InputProblems } from '../units/problem.ts';
import type { Weather } from '../weather/weather.ts';
import type { Readings } from './readings/readings.ts';
import type { Division } from './readings/span.ts';

/** @throws InputProblems where log and weather have too few hours in common */
export function requireHours(log: Log, weather: Weather, { hours }: Division): void {
  if (hours >= FEWEST_HOURS) return;
  const weatherEnd = weather.start + weather.count * weather.step;
  throw new InputProblems([
    {
      ...placeOf(log),
      expected: 'a log and weather that have at least a week in common',
      got: `${Math.round(hours / 24)} days: the log from ${isoDay(log.start)} to ${isoDay(log.end)}, the weather from ${isoDay(weather.start)} to ${isoDay(weatherEnd)}`,
      hint:
        log.end - log.start < FEWEST_HOURS * 3600
          ? 'three weeks of readings are the least from which habits show'
          : 'measured weather of the same days is needed; --weather names another file',
    },
  ]);
}

/** @throws InputProblems where nothing was logged of any room */
export function requireReadings(log: Log, { rooms }: Readings): void {
  if (rooms.some(({ temperature, humidity }) => temperature !== null || humidity !== null)) return;
  const found = log.series
    .map(({ quantity, room, place }) => `${quantity} of ${room ?? `the ${place}`}`)
    .join(', ');
  const names = rooms.map(({ name }) => name).join(', ');
  throw new InputProblems([
    {
      ...placeOf(log),
      expected: `temperature or humidity of a room: ${names}`,
      got: found,
      hint: 'say under "log: readings:" of the scenario which room and quantity a column is',
    },
  ]);
}

/** The first file of a log. */
const placeOf = (log: Log) => ({
  ...{ file: log.series[0]?.from.split(', ')[0] ?? 'the log', line: 0, column: 0, where: '' },
});

const FEWEST_HOURS = 7 * 24;
