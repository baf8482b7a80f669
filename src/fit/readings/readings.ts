import type { Home } from '../../home/home.ts';
import { type Log, type LoggedSeries, seriesOf } from '../../log/log.ts';
import { meansOverSteps, valuesAtInstants } from '../../log/onto-steps.ts';
import { bridged } from './bridged.ts';
import { longestGap } from './longest-gap.ts';
import { meteredHeat } from './metered-heat.ts';

/** A log laid out beside the rooms of a home. */
export interface Readings {
  /** First instant, on the hour. [s UTC] */
  readonly start: number;
  readonly hours: number;
  /** Heating of the home as a whole; null where only rooms were metered, or nothing. */
  readonly heating: Reading | null;
  /** How heating was made from a meter that counts other things too; null where it was not. */
  readonly heatingWords: string | null;
  /** One per room of the home. */
  readonly rooms: readonly RoomReadings[];
}

/** What was logged in one room; null where it was not. */
export interface RoomReadings {
  readonly name: string;
  readonly temperature: Reading | null;
  readonly humidity: Reading | null;
  readonly heat: Reading | null;
  /** Share of the windows that stands open, and people: as they were until the next reading. */
  readonly windows: Reading | null;
  readonly people: Reading | null;
  /** By name of the species. */
  readonly species: Readonly<Record<string, Reading>>;
}

/** One thing in one room. */
export interface Reading {
  /** Hourly means, NaN in gaps: what runs are compared with. */
  readonly hourly: Float64Array;
  /** At the end of each control step, gaps bridged: what rooms are held at, never compared with anything. */
  readonly driving: Float64Array;
}

/**
 * @param dt         control step of the runs [s]
 * @param gasBeside  share of logged gas that heats no rooms [-]; null where nobody said
 */
export function readingsOf(
  log: Log,
  home: Home,
  span: Span,
  dt: number,
  gasBeside: number | null,
): Readings {
  const { start, hours } = span;
  const steps = Math.round((hours * HOUR) / dt);
  const reading = (series: LoggedSeries | undefined): Reading | null => {
    if (series === undefined) return null;
    const gap = longestGap(series);
    const hourly = meansOverSteps(series, { start, step: HOUR, count: hours }, gap);
    if (hourly.every((x) => Number.isNaN(x))) return null;
    const ends = { start: start + dt, step: dt, count: steps };
    return { hourly, driving: bridged(valuesAtInstants(series, ends, gap)) };
  };
  const metered = meteredHeat(log, home, gasBeside);
  return {
    ...span,
    heating: reading(metered?.series ?? seriesOf(log, 'heating power', null)),
    heatingWords: metered?.words ?? null,
    rooms: home.rooms.map(({ name }) => ({
      name,
      temperature: reading(seriesOf(log, 'temperature', name)),
      humidity: reading(seriesOf(log, 'relative humidity', name)),
      heat: reading(seriesOf(log, 'heating power', name)),
      windows: reading(seriesOf(log, 'window', name)),
      people: reading(seriesOf(log, 'presence', name)),
      species: Object.fromEntries(
        home.species.flatMap((species) => {
          const found = reading(seriesOf(log, species.name, name));
          return found === null ? [] : [[species.name, found]];
        }),
      ),
    })),
  };
}

/** A stretch of whole hours. */
export interface Span {
  /** [s UTC] */
  readonly start: number;
  readonly hours: number;
}

const HOUR = 3600;
