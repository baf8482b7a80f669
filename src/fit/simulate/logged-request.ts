import type { HeldSeries, ImposedSeries } from '../../engine/imposed/imposed.ts';
import { SECONDS_PER_HOUR } from '../../units/time-units.ts';
import type { Readings, RoomReadings } from '../readings/readings.ts';
import type { LoggedRun } from './logged-run.ts';

/** What of a run follows the log. */
export interface Follows {
  /** First hour of the run, the hour in which rooms are let go, and the hour behind the last, of the log. */
  readonly from: number;
  readonly release: number;
  readonly to: number;
  /** Whether rooms stay at the logged temperature after that, so that only their water runs free. */
  readonly temperature: boolean;
}

/** A run beside some hours of a log: rooms held until the release, and what was logged besides imposed. */
export function loggedRequest(
  { start, rooms, devices }: Readings,
  dt: number,
  { from, release, to, temperature }: Follows,
): LoggedRun {
  const perHour = SECONDS_PER_HOUR / dt;
  const cut = (series: Float64Array, last: number): Float64Array => {
    const values = series.slice(from * perHour, last * perHour);
    // Stores settle at the first value: that of one moment would be chance.
    const settled = values.subarray(0, Math.min(values.length, SETTLING * perHour));
    if (values.length > 0) values[0] = settled.reduce((sum, x) => sum + x, 0) / settled.length;
    return values;
  };
  const imposed = (room: RoomReadings): ImposedSeries => ({
    ...(temperature &&
      room.temperature !== null && { airTemperature: cut(room.temperature.driving, to) }),
    ...(room.heat !== null && { heat: plain(room.heat.driving) }),
    ...(room.windows !== null && { windows: part(room.windows) }),
    ...(room.people !== null && { people: plain(room.people.driving, [0, 50]) }),
    ...(room.presence !== null && { presence: part(room.presence) }),
  });
  const plain = (series: Float64Array, [least, most] = [-1e5, 1e5]): Float64Array =>
    series.slice(from * perHour, to * perHour).map((x) => Math.min(most, Math.max(least, x)));
  const part = (series: Float64Array): Float64Array => series.slice(from * perHour, to * perHour);
  const held = (room: RoomReadings): HeldSeries => ({
    ...(!temperature &&
      room.temperature !== null && { airTemperature: cut(room.temperature.driving, release) }),
    ...(room.humidity !== null && {
      relativeHumidity: cut(room.humidity.driving, release).map(asHumidity),
    }),
  });
  const byRoom = <T extends object>(of: (room: RoomReadings) => T): Record<string, T> =>
    Object.fromEntries(
      rooms.map((room) => [room.name, of(room)]).filter(([, series]) => !isEmpty(series as T)),
    );
  const heldRooms = byRoom(held);
  return {
    start: start + from * SECONDS_PER_HOUR,
    hours: to - from,
    spinUpDays: SPIN_UP_DAYS,
    imposed: byRoom(imposed),
    held: isEmpty(heldRooms)
      ? null
      : { until: start + release * SECONDS_PER_HOUR, rooms: heldRooms },
    devicePower: Object.fromEntries(
      Object.entries(devices).map(([name, { driving }]) => [name, plain(driving, [0, 1e5])]),
    ),
    metered: rooms.filter(({ heat }) => heat !== null).map(({ name }) => name),
  };
}

const isEmpty = (record: object): boolean => Object.keys(record).length === 0;
const asHumidity = (x: number): number => Math.min(100, Math.max(0, x));

/** Hours whose mean stores settle at. */
const SETTLING = 72;
const SPIN_UP_DAYS = 20;
