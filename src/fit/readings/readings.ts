import type { Home } from '../../home/home.ts';
import { intervalsOf } from '../../log/intervals.ts';
import { type Log, type LoggedSeries, seriesOf } from '../../log/log.ts';
import { longestGap } from '../../log/longest-gap.ts';
import { meansOverSteps, valuesAtInstants } from '../../log/onto-steps.ts';
import { SECONDS_PER_HOUR } from '../../units/time-units.ts';
import type { Weather } from '../../weather/weather.ts';
import { bridged } from './bridged.ts';
import { GASES } from './gases.ts';
import { heatOfElectricity, roomSource } from './heat-of-electricity.ts';
import { type HomeHeat, homeHeat } from './home-heat.ts';
import type { Beside } from './metered-heat.ts';
import type { DividedSpan, Span } from './span.ts';

/** A log laid out beside the rooms of a home. */
export interface Readings {
  /** First instant, on the hour. [s UTC] */
  readonly start: number;
  readonly hours: number;
  /** Heating of the home as a whole; null where only rooms were metered, or nothing. */
  readonly heating: HomeHeat | null;
  /** One per room of the home. */
  readonly rooms: readonly RoomReadings[];
  /** Time that most often lies between two readings of water and gases in a room, of the room where it is longest; 0 for none. [s] */
  readonly apart: number;
  /** Power that devices drew, by their names. [W] */
  readonly devices: Readonly<Record<string, Reading>>;
  /** Series of the log that any of this was made from. */
  readonly used: ReadonlySet<LoggedSeries>;
}

/** What was logged in one room; null where it was not. */
export interface RoomReadings {
  readonly name: string;
  readonly temperature: Reading | null;
  readonly humidity: Reading | null;
  readonly heat: Reading | null;
  /** How many people, where somebody counted them. */
  readonly people: Reading | null;
  /** Share of each control step in which windows stand open and somebody is there; NaN where that is not known. */
  readonly windows: Float64Array | null;
  readonly presence: Float64Array | null;
  /** By name of the species. */
  readonly species: Readonly<Record<string, Reading>>;
}

/** One thing in one room. */
interface Reading {
  /** Hourly means, NaN in gaps: what runs are compared with. */
  readonly hourly: Float64Array;
  /** At the end of each control step, gaps bridged: what rooms are held at, never compared with anything. */
  readonly driving: Float64Array;
}

/**
 * @param dt       control step of the runs [s]
 * @param weather  of the same hours, for what heat pumps gave
 */
export function readingsOf(
  log: Log,
  home: Home,
  division: DividedSpan,
  dt: number,
  weather: Weather,
  beside: Beside,
): Readings {
  const { start, hours } = division;
  const used = new Set<LoggedSeries>();
  const { reading, power, shares } = layouts({ start, hours }, dt, used);
  const heatOf = (room: string): Reading | null => {
    const heat = power(seriesOf(log, 'heating power', room));
    const drawn = seriesOf(log, 'heating electricity', room);
    const source = roomSource(home, room);
    if (heat !== null || drawn === undefined || source === undefined) return heat;
    return power(drawn, heatOfElectricity(drawn, source, weather));
  };
  const rooms = home.rooms.map(({ name }): RoomReadings => {
    const presence = seriesOf(log, 'presence', name);
    const counted = presence?.values.some((x) => x > 1) ?? false;
    return {
      name,
      temperature: reading(seriesOf(log, 'temperature', name)),
      humidity: reading(seriesOf(log, 'relative humidity', name)),
      heat: heatOf(name),
      windows: shares(seriesOf(log, 'window', name)),
      people: counted ? power(presence) : null,
      presence: counted ? null : shares(presence),
      species: Object.fromEntries(
        GASES.flatMap((gas) => {
          const found = reading(seriesOf(log, gas, name));
          return found === null ? [] : [[gas, found]];
        }),
      ),
    };
  });
  const heating = rooms.some(({ heat }) => heat !== null)
    ? null
    : homeHeat(log, home, division, weather, beside);
  if (heating !== null) used.add(heating.meter);
  return {
    ...{ start, hours, heating, apart: longestApart(log) },
    rooms,
    devices: Object.fromEntries(
      home.devices.flatMap(({ name, does }) => {
        const own = log.series.find((one) => one.device === name);
        const found = does.kind === 'stove' ? null : power(own);
        return found === null ? [] : [[name, found]];
      }),
    ),
    used,
  };
}

/**
 * How series are laid out on the hours and control steps of a span: readings at instants, powers and counts as
 * means of each step, and shares of it that may stay unknown. Null for a series that tells nothing there.
 *
 * @param used  gets each that tells something
 */
function layouts({ start, hours }: Span, dt: number, used: Set<LoggedSeries>) {
  const byHour = { start, step: SECONDS_PER_HOUR, count: hours };
  const bySteps = { start, step: dt, count: Math.round((hours * SECONDS_PER_HOUR) / dt) };
  const ends = { ...bySteps, start: start + dt };
  const laidOut = (
    series: LoggedSeries | undefined,
    driving: (series: LoggedSeries, gap: number) => Float64Array,
    made: LoggedSeries | undefined = series,
  ): Reading | null => {
    if (series === undefined || made === undefined) return null;
    const gap = longestGap(made);
    const hourly = meansOverSteps(made, byHour, gap);
    if (hourly.every((x) => Number.isNaN(x))) return null;
    used.add(series);
    return { hourly, driving: bridged(driving(made, gap)) };
  };
  return {
    reading: (series: LoggedSeries | undefined): Reading | null =>
      laidOut(series, (one, gap) => valuesAtInstants(one, ends, gap)),
    /** What counts is how much was drawn or given in each step, not how much at its end. */
    power: (series: LoggedSeries | undefined, made = series): Reading | null =>
      laidOut(series, (one, gap) => meansOverSteps(one, bySteps, gap), made),
    shares: (series: LoggedSeries | undefined): Float64Array | null => {
      if (series === undefined) return null;
      const found = meansOverSteps(series, bySteps, longestGap(series));
      if (found.every((x) => Number.isNaN(x))) return null;
      used.add(series);
      return found.map((x) => Math.min(1, Math.max(0, x)));
    },
  };
}

function longestApart({ series }: Log): number {
  const ofAir = series.filter(
    ({ quantity, room }) => room !== null && ['relative humidity', ...GASES].includes(quantity),
  );
  return Math.max(0, ...ofAir.map((one) => intervalsOf(one).every));
}
