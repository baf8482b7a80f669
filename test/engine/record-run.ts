import type { TraceView } from '../../src/engine/record/trace.ts';
import type { Run, RunInput } from '../../src/engine/run.ts';
import { simulate } from '../../src/engine/simulate.ts';
import type { Weather } from '../../src/weather/weather.ts';
import { NEW_YEAR, quietHousehold } from './homes.ts';

/** A run with everything its observers saw, one array per room over the whole period. */
export interface Recording {
  readonly run: Run;
  readonly room: Readonly<Record<Column, readonly Float64Array[]>>;
  /** `[species][room]` */
  readonly species: readonly (readonly Float64Array[])[];
  readonly outdoorTemperature: Float64Array;
  readonly outdoorVapourPressure: Float64Array;
  readonly infiltration: Float64Array;
}

type Column = (typeof COLUMNS)[number];

/** Run and keep the whole trace. Values are means over the step. */
export function recordRun(input: RunInput): Recording {
  const steps = Math.round((input.hours * 3600) / input.dt);
  const rooms = input.home.rooms.length;
  const perRoom = (): Float64Array[] =>
    Array.from({ length: rooms }, () => new Float64Array(steps));
  const room = Object.fromEntries(COLUMNS.map((c) => [c, perRoom()])) as unknown as Record<
    Column,
    Float64Array[]
  >;
  const species = input.home.species.map(perRoom);
  const home = {
    outdoorTemperature: new Float64Array(steps),
    outdoorVapourPressure: new Float64Array(steps),
    infiltration: new Float64Array(steps),
  };
  const copy = (from: Float64Array, into: Float64Array[], trace: TraceView): void => {
    for (let s = 0; s < trace.steps; s++) {
      for (let i = 0; i < rooms; i++) into[i]![trace.firstStep + s] = from[s * rooms + i]!;
    }
  };
  const run = simulate(input, [
    (trace) => {
      for (const c of COLUMNS) copy(trace.room[c], room[c], trace);
      species.forEach((into, q) => {
        copy(trace.room.species[q]!, into, trace);
      });
      for (const c of ['outdoorTemperature', 'outdoorVapourPressure', 'infiltration'] as const) {
        for (let s = 0; s < trace.steps; s++) home[c][trace.firstStep + s] = trace.home[c][s]!;
      }
    },
  ]);
  return { run, room, species, ...home };
}

/** What a run needs, with the usual answers: from New Year on, nobody in, ten-minute steps. */
export function runInput(
  needed: Pick<RunInput, 'home'> & { weather: Weather },
  more: Partial<RunInput> = {},
): RunInput {
  return {
    household: quietHousehold(needed.home),
    dt: 600,
    start: NEW_YEAR,
    hours: 24,
    spinUpDays: 0,
    ...needed,
    ...more,
  };
}

/** One term of the ledger over the whole run, all rooms. [J, kg or species unit m3] */
export function total(term: Float64Array): number {
  return term.reduce((sum, x) => sum + x, 0);
}

/** The last value of a series. */
export function last(series: Float64Array): number {
  return series[series.length - 1]!;
}

const COLUMNS = [
  'airTemperature',
  'radiantTemperature',
  'operativeTemperature',
  'humidityRatio',
  'relativeHumidity',
  'vapourPressure',
  'heating',
  'cooling',
  'occupants',
  'asleep',
  'windowOpen',
  'condensation',
  'wallCondensation',
  'heldHeat',
  'heldVapour',
] as const;
