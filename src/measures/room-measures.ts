import type { RoomAir } from './air/fresh-air.ts';
import type { RoomMeasures } from './plan-measures.ts';
import type { Watchers } from './watchers.ts';

/**
 * The figures of one room, under the names they are printed by.
 *
 * @param watched  the whole run
 * @param air      straight from outdoors in the heating season [L/s]
 */
export function roomMeasures(watched: Watchers, room: number, air: RoomAir): RoomMeasures {
  const own = watched.sums.result(room);
  const out = watched.outside.result(room);
  const spot = watched.coldSpots.result(room);
  const came = watched.arrivals.result(room);
  return {
    heating_kwh: own.heatingKwh,
    cooling_kwh: watched.cooled.removed(room),
    mean_temperature_c: own.meanTemperature,
    mean_relative_humidity_pct: own.meanRelativeHumidity,
    species: watched.levels.room(room),
    outside_band_hours: out.all,
    outside_band_occupied_hours: out.occupied,
    felt_cold_hours: watched.feltCold.hours(room),
    winter_cold_hours_per_day: watched.feltCold.perWinterDay(room),
    degree_hours_below: out.degreeHoursBelow,
    degree_hours_above: out.degreeHoursAbove,
    cold_spot_hours_above_80_pct: spot.hoursAbove80,
    mould_index_peak: spot.mouldPeak,
    mould_index_end: spot.mouldEnd,
    condensation_hours: own.condensationHours,
    condensation_kg: own.condensationKg,
    window_open_hours: own.windowOpenHours,
    occupied_hours: own.occupiedHours,
    arrivals: came.arrivals,
    cold_arrivals: came.cold,
    cold_arrival_hours: came.coldHours,
    recovery_minutes_mean: came.recoveryMean,
    recovery_minutes_most: came.recoveryMost,
    outdoor_air_l_per_s: air.outdoor,
    outdoor_air_l_per_s_per_person_asleep: air.perPersonAsleep,
  };
}
