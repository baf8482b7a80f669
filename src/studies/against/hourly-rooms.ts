import type { Home } from '../../home/home.ts';
import { type Log, type LoggedSeries, seriesOf } from '../../log/log.ts';
import { longestGap } from '../../log/longest-gap.ts';
import { meansOverSteps } from '../../log/onto-steps.ts';
import { vapourPressureFromRelativeHumidity } from '../../physics/moist-air/relative-humidity.ts';
import { vapourDensity } from '../../physics/moist-air/vapour-density.ts';

/** Hourly means of a home, simulated or logged; NaN for hours of which nothing is known. */
export interface HourlyRooms {
  readonly hours: number;
  /** Outdoors by the weather: temperature [°C] and vapour pressure [Pa]. */
  readonly outdoors: { readonly temperature: Float64Array; readonly vapourPressure: Float64Array };
  readonly rooms: readonly {
    /** By quantity: temperature, relative humidity, vapour excess, and species by their names. */
    readonly columns: ReadonlyMap<string, HourlyColumn>;
    /** [Pa] */
    readonly vapourPressure: Float64Array;
  }[];
}

export interface HourlyColumn {
  readonly unit: string;
  readonly values: Float64Array;
}

export const TEMPERATURE = 'temperature';
export const HUMIDITY = 'relative humidity';
export const EXCESS = 'vapour excess';

/**
 * What was logged, hour by hour. Gaps longer than two hours stay unknown; the vapour excess is over
 * outdoors by the weather, so that it can be set beside the run's.
 */
export function loggedHours(
  log: Log,
  home: Home,
  period: { readonly start: number; readonly hours: number },
  { outdoors }: Pick<HourlyRooms, 'outdoors'>,
): HourlyRooms {
  const steps = { start: period.start, step: 3600, count: period.hours };
  const hourly = (series: LoggedSeries | undefined) =>
    series === undefined ? null : meansOverSteps(series, steps, longestGap(series));
  const rooms = home.rooms.map(({ name }) => {
    const columns = new Map<string, HourlyColumn>();
    const add = (quantity: string, unit: string, values: Float64Array | null) => {
      if (values?.some((value) => !Number.isNaN(value))) columns.set(quantity, { unit, values });
    };
    const warm = hourly(seriesOf(log, TEMPERATURE, name));
    const damp = hourly(seriesOf(log, HUMIDITY, name));
    const vapourPressure = pressures(warm, damp, period.hours);
    add(TEMPERATURE, 'K', warm);
    add(HUMIDITY, 'points', damp);
    add(EXCESS, 'g/m3', warm === null ? null : excess(vapourPressure, warm, outdoors));
    for (const species of home.species) {
      add(species.name, species.unit, hourly(seriesOf(log, species.name, name)));
    }
    return { columns, vapourPressure };
  });
  return { hours: period.hours, outdoors, rooms };
}

/** Water in a room's air over that of outdoor air. [g/m3] */
export function excess(
  vapourPressure: Float64Array,
  temperature: Float64Array,
  outdoors: HourlyRooms['outdoors'],
): Float64Array {
  return vapourPressure.map((pressure, h) => {
    const [outside, cold] = [outdoors.vapourPressure[h]!, outdoors.temperature[h]!];
    if (Number.isNaN(pressure + temperature[h]!)) return Number.NaN;
    return vapourDensity(pressure, temperature[h]!) - vapourDensity(outside, cold);
  });
}

function pressures(
  warm: Float64Array | null,
  damp: Float64Array | null,
  hours: number,
): Float64Array {
  const found = new Float64Array(hours).fill(Number.NaN);
  if (warm === null || damp === null) return found;
  return found.map((_, h) =>
    Number.isNaN(warm[h]! + damp[h]!)
      ? Number.NaN
      : vapourPressureFromRelativeHumidity(warm[h]!, Math.min(100, Math.max(0, damp[h]!))),
  );
}
