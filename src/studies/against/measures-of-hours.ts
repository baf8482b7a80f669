import { createRoomColumns } from '../../engine/record/room-columns.ts';
import type { TraceView } from '../../engine/record/trace.ts';
import { createTimeOutsideBands } from '../../measures/comfort/time-outside-bands.ts';
import { createColdSpots } from '../../measures/damp/cold-spots.ts';
import type { PreparedPlan } from '../../scenario/prepared.ts';
import { type HourlyRooms, HUMIDITY, TEMPERATURE } from './hourly-rooms.ts';

/** Figures of a room over the hours that were logged. Temperatures are those of the air. */
export interface HourFigures {
  /** Hours with a logged temperature, and with humidity as well. */
  readonly hours: number;
  readonly hours_with_humidity: number;
  readonly too_cold_hours: number;
  readonly too_warm_hours: number;
  readonly too_dry_hours: number;
  readonly too_damp_hours: number;
  readonly cold_spot_hours_above_80_pct: number;
  readonly mould_index_peak: number;
}

/**
 * Hours outside bands and the mould index of log and run, by the measures of any run, in the hours
 * that the log knows. In gaps no hour counts and mould neither grows nor goes.
 */
export function measuresOfHours(
  plan: PreparedPlan,
  logged: HourlyRooms,
  simulated: HourlyRooms,
  start: number,
): Readonly<Record<string, { readonly logged: HourFigures; readonly simulated: HourFigures }>> {
  const found = plan.home.rooms.flatMap(({ name }, i) => {
    const { columns } = logged.rooms[i]!;
    if (!columns.has(TEMPERATURE)) return [];
    const figures = (of: HourlyRooms) => figuresOf(plan, of, logged, i, start);
    return [[name, { logged: figures(logged), simulated: figures(simulated) }] as const];
  });
  return Object.fromEntries(found);
}

function figuresOf(
  { home, bands, mouldClasses }: PreparedPlan,
  hours: HourlyRooms,
  logged: HourlyRooms,
  i: number,
  start: number,
): HourFigures {
  const alone = { ...home, rooms: [home.rooms[i]!], species: [] };
  const outside = createTimeOutsideBands(alone, [bands[i]!]);
  const spots = createColdSpots(alone, [mouldClasses[i]!]);
  const { trace, known, humid } = hourlyTrace(hours, logged, i, start);
  outside.observe(trace);
  for (let h = 0; h < hours.hours; h++) {
    if (Number.isNaN(trace.room.relativeHumidity[h]!)) continue;
    spots.observe({
      start: start + h * 3600,
      outdoorTemperature: hours.outdoors.temperature[h]!,
      outdoorVapourPressure: hours.outdoors.vapourPressure[h]!,
      infiltration: 0,
      airTemperature: trace.room.airTemperature.subarray(h, h + 1),
      vapourPressure: trace.room.vapourPressure.subarray(h, h + 1),
      species: [],
    });
  }
  const { all } = outside.result(0);
  const spot = spots.result(0);
  return {
    hours: known,
    hours_with_humidity: humid,
    too_cold_hours: all.temperature_low,
    too_warm_hours: all.temperature_high,
    too_dry_hours: all.humidity_low,
    too_damp_hours: all.humidity_high,
    cold_spot_hours_above_80_pct: spot.hoursAbove80,
    mould_index_peak: spot.mouldPeak,
  };
}

/** One room's hours as measures look at a run, unknown where the log does not know them. */
function hourlyTrace(hours: HourlyRooms, logged: HourlyRooms, i: number, start: number) {
  const count = hours.hours;
  const { columns, vapourPressure } = hours.rooms[i]!;
  const seen = logged.rooms[i]!.columns;
  const room = createRoomColumns(1, 0, count);
  const none = new Float64Array(count);
  let [known, humid] = [0, 0];
  for (let h = 0; h < count; h++) {
    const warm = Number.isNaN(seen.get(TEMPERATURE)!.values[h]!)
      ? Number.NaN
      : columns.get(TEMPERATURE)!.values[h]!;
    const damp = seen.get(HUMIDITY)?.values[h] ?? Number.NaN;
    const both = !Number.isNaN(warm) && !Number.isNaN(damp);
    room.airTemperature[h] = warm;
    room.operativeTemperature[h] = warm;
    room.relativeHumidity[h] = both ? columns.get(HUMIDITY)!.values[h]! : Number.NaN;
    room.vapourPressure[h] = both ? vapourPressure[h]! : Number.NaN;
    if (!Number.isNaN(warm)) known++;
    if (both) humid++;
  }
  const trace: TraceView = {
    ...{ firstStep: 0, steps: count, rooms: 1, dt: 3600, start },
    room: { ...room, heldHeat: none, heldVapour: none, species: [] },
    home: {
      outdoorTemperature: hours.outdoors.temperature,
      outdoorVapourPressure: hours.outdoors.vapourPressure,
      outdoorSpecies: [],
      infiltration: none,
      sourceFuel: [],
      sourceBackup: [],
      electricity: none,
      gas: none,
      blinds: [],
      coolers: [],
      devices: [],
    },
  };
  return { trace, known, humid };
}
