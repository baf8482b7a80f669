import type { Log, LoggedSeries } from '../../src/log/log.ts';

/*
 * Ways in which a truth is unlike the model that is fitted to it: what nobody knows of a home, and what
 * sensors do to it.
 */

/** A twin's truth where it departs from the model. */
export interface Unlike {
  readonly words: string;
  /** Sections of the scenario in place of the model's. */
  readonly heating?: string;
  readonly household?: string;
  readonly noise?: {
    readonly temperature: number;
    readonly humidity: number;
    readonly rho: number;
  };
  /** What becomes of readings before anybody sees them. */
  readonly readings?: (series: LoggedSeries) => LoggedSeries;
}

export const UNLIKE: Readonly<Record<string, Unlike>> = {
  alike: { words: 'as the model' },
  people: {
    words: 'three people with other days, windows wide open every morning and long when it is mild',
    household: `household:
  people: [{ who: adult, pattern: works at home }, { who: adult, pattern: works at home }, { who: child }]
  airing:
    - { rooms: all, at: "07:10", lasts: 15 min }
    - { room: bedroom, when: [{ reading: temperature, room: outdoors, over: 10, clear: 9 }], lasts: 90 min, open share: 0.3 }
`,
  },
  heating: {
    words: 'heated 1.5 K less, an hour or two earlier and later, with a deeper setback',
    heating: `heating: { source: direct electric, setpoint: 18.5, hours: ["05:30-09:30", "15:00-23:00"], setback: 14 }
`,
  },
  sensors: {
    words: 'sensors that read 0.7 K and 3 points high, an hour late, with slow errors',
    noise: { temperature: 0.25, humidity: 1.5, rho: 0.97 },
    readings: (series) => shifted(late(series), series.quantity === 'temperature' ? 0.7 : 3),
  },
  irregular: {
    words: 'readings only on a change of 0.2 K or 1 point, and two days without any',
    readings: (series) => without(onChange(series, series.quantity === 'temperature' ? 0.2 : 1)),
  },
};

/** A log as its sensors give it. */
export const seenBy = (log: Log, { readings = (one) => one }: Unlike): Log => ({
  ...log,
  series: log.series.map(readings),
});

const valued = (series: LoggedSeries, values: Float64Array): LoggedSeries => ({
  ...series,
  values,
});

/** A sensor that takes an hour to see a change: each half-hour a third of the way. */
function late(series: LoggedSeries): LoggedSeries {
  let seen = series.values[0]!;
  return valued(
    series,
    series.values.map((value) => {
      seen += (value - seen) / 3;
      return seen;
    }),
  );
}

const shifted = (series: LoggedSeries, by: number): LoggedSeries =>
  valued(
    series,
    series.values.map((value) =>
      series.quantity === 'temperature' ? value + by : Math.min(100, value + by),
    ),
  );

/** Only readings that differ from the last one told, in steps. */
function onChange(series: LoggedSeries, step: number): LoggedSeries {
  let told = Number.NaN;
  const kept = [...series.values.keys()].filter((k) => {
    const value = Math.round(series.values[k]! / step) * step;
    if (value === told) return false;
    told = value;
    return true;
  });
  return picked(series, kept, (k) => Math.round(series.values[k]! / step) * step);
}

/** Two days in the middle are lost. */
function without(series: LoggedSeries): LoggedSeries {
  const middle = (series.times[0]! + series.times.at(-1)!) / 2;
  const kept = [...series.times.keys()].filter((k) => Math.abs(series.times[k]! - middle) > 86_400);
  return picked(series, kept, (k) => series.values[k]!);
}

const picked = (
  series: LoggedSeries,
  rows: readonly number[],
  value: (row: number) => number,
): LoggedSeries => ({
  ...series,
  times: Float64Array.from(rows, (k) => series.times[k]!),
  values: Float64Array.from(rows, value),
});
