import type { TraceView } from '../engine/record/trace.ts';

/** Means over one hour. The object and its arrays are reused for the next: copy what you keep. */
export interface Hour {
  /** Instant at which it begins. [s UTC] */
  readonly start: number;
  /** [°C] */
  readonly outdoorTemperature: number;
  /** [Pa] */
  readonly outdoorVapourPressure: number;
  /** Leakage of the whole home. [m3/s] */
  readonly infiltration: number;
  /** Air temperature by room. [°C] */
  readonly airTemperature: Float64Array;
  /** Vapour pressure by room. [Pa] */
  readonly vapourPressure: Float64Array;
  /** Concentrations by room, one array per species. [species unit] */
  readonly species: readonly Float64Array[];
}

/**
 * Turns a trace into hours, for measures that follow the hour and not the minute. Hours are counted
 * from the trace's first instant; one that stretches cut in two is put together again.
 *
 * @param watchers  called for every hour, in order of time
 * @param carried   number of species whose hours are wanted, the first of the home
 * @throws RangeError for a trace whose steps do not fill the hour
 */
export function createHourlyMeans(
  rooms: number,
  watchers: readonly ((hour: Hour) => void)[],
  carried = 0,
): { observe(trace: TraceView): void } {
  const hour = {
    start: 0,
    outdoorTemperature: 0,
    outdoorVapourPressure: 0,
    infiltration: 0,
    airTemperature: new Float64Array(rooms),
    vapourPressure: new Float64Array(rooms),
    species: Array.from({ length: carried }, () => new Float64Array(rooms)),
  };
  const { airTemperature, vapourPressure, species } = hour;
  let had = 0; // steps of this hour so far

  function observe(trace: TraceView): void {
    const { steps, dt, start } = trace;
    const perHour = stepsPerHour(dt);
    for (let from = 0; from < steps; ) {
      const to = Math.min(steps, from + perHour - had);
      if (had === 0) hour.start = start + from * dt;
      addUp(trace, from, to);
      had += to - from;
      if (had === perHour) close();
      from = to;
    }
  }

  /** Add steps to the sums of this hour; its first steps begin them anew. */
  function addUp({ room, home }: TraceView, from: number, to: number): void {
    const { airTemperature: warmths, vapourPressure: vapours } = room;
    const goesOn = had > 0;
    let outdoor = goesOn ? hour.outdoorTemperature : 0;
    let outdoorVapour = goesOn ? hour.outdoorVapourPressure : 0;
    let leaked = goesOn ? hour.infiltration : 0;
    for (let s = from; s < to; s++) {
      outdoor += home.outdoorTemperature[s]!;
      outdoorVapour += home.outdoorVapourPressure[s]!;
      leaked += home.infiltration[s]!;
    }
    hour.outdoorTemperature = outdoor;
    hour.outdoorVapourPressure = outdoorVapour;
    hour.infiltration = leaked;
    for (let i = 0; i < rooms; i++) {
      let warmth = goesOn ? airTemperature[i]! : 0;
      let vapour = goesOn ? vapourPressure[i]! : 0;
      for (let at = from * rooms + i; at < to * rooms; at += rooms) {
        warmth += warmths[at]!;
        vapour += vapours[at]!;
      }
      airTemperature[i] = warmth;
      vapourPressure[i] = vapour;
    }
    for (let q = 0; q < carried; q++) addLevels(room.species[q]!, species[q]!, from, to);
  }

  function addLevels(levels: Float64Array, sums: Float64Array, from: number, to: number): void {
    const goesOn = had > 0;
    for (let i = 0; i < rooms; i++) {
      let sum = goesOn ? sums[i]! : 0;
      for (let at = from * rooms + i; at < to * rooms; at += rooms) sum += levels[at]!;
      sums[i] = sum;
    }
  }

  /** From sums to means, and show them. */
  function close(): void {
    const share = 1 / had;
    hour.outdoorTemperature *= share;
    hour.outdoorVapourPressure *= share;
    hour.infiltration *= share;
    for (let i = 0; i < rooms; i++) {
      airTemperature[i] = airTemperature[i]! * share;
      vapourPressure[i] = vapourPressure[i]! * share;
      for (let q = 0; q < carried; q++) species[q]![i] = species[q]![i]! * share;
    }
    had = 0;
    for (let k = 0; k < watchers.length; k++) watchers[k]!(hour);
  }

  return { observe };
}

function stepsPerHour(dt: number): number {
  const steps = 3600 / dt;
  if (Number.isInteger(steps)) return steps;
  throw new RangeError(
    `createMeasures: a whole number of steps must make an hour, got steps of ${dt} s`,
  );
}
