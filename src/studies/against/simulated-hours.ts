import type { Observer, TraceView } from '../../engine/record/trace.ts';
import type { Home } from '../../home/home.ts';
import {
  EXCESS,
  excess,
  type HourlyColumn,
  type HourlyRooms,
  HUMIDITY,
  TEMPERATURE,
} from './hourly-rooms.ts';

/** Keeps the hourly means of a run that a log can be set beside. */
export function simulatedHours(
  home: Home,
  hours: number,
): { readonly observe: Observer; result(): HourlyRooms } {
  const column = () => new Float64Array(hours);
  const outdoors = { temperature: column(), vapourPressure: column() };
  const rooms = home.rooms.map(() => ({
    temperature: column(),
    humidity: column(),
    vapourPressure: column(),
    species: home.species.map(column),
  }));

  function observe({ firstStep, steps, dt, room, home: whole, rooms: count }: TraceView): void {
    const perHour = 3600 / dt;
    for (let s = 0; s < steps; s++) {
      const h = Math.floor((firstStep + s) / perHour);
      if (h >= hours) return;
      outdoors.temperature[h]! += whole.outdoorTemperature[s]! / perHour;
      outdoors.vapourPressure[h]! += whole.outdoorVapourPressure[s]! / perHour;
      for (let i = 0; i < count; i++) {
        const at = s * count + i;
        const own = rooms[i]!;
        own.temperature[h]! += room.airTemperature[at]! / perHour;
        own.humidity[h]! += room.relativeHumidity[at]! / perHour;
        own.vapourPressure[h]! += room.vapourPressure[at]! / perHour;
        for (let q = 0; q < own.species.length; q++) {
          own.species[q]![h]! += room.species[q]![at]! / perHour;
        }
      }
    }
  }

  const result = (): HourlyRooms => ({
    hours,
    outdoors,
    rooms: rooms.map((own) => ({
      vapourPressure: own.vapourPressure,
      columns: new Map<string, HourlyColumn>([
        [TEMPERATURE, { unit: 'K', values: own.temperature }],
        [HUMIDITY, { unit: 'points', values: own.humidity }],
        [EXCESS, { unit: 'g/m3', values: excess(own.vapourPressure, own.temperature, outdoors) }],
        ...home.species.map(
          ({ name, unit }, q) => [name, { unit, values: own.species[q]! }] as const,
        ),
      ]),
    })),
  });

  return { observe, result };
}
