import type { RoomAir } from './air/fresh-air.ts';
import type { Arrivals } from './comfort/arrivals.ts';
import type { TimeOutsideBands } from './comfort/time-outside-bands.ts';
import type { ColdSpots } from './damp/cold-spots.ts';
import type { RoomMeasures } from './plan-measures.ts';
import type { RoomSums } from './room-sums.ts';

/**
 * The figures of one room, under the names they are printed by.
 *
 * @param coolingKwh  heat removed by what cools it [kWh]
 * @param cold        felt to be too cold with somebody in: of the period [h], of its winter days [h/day]
 * @param levels      of each species, by name [species unit]
 * @param air         straight from outdoors in the heating season [L/s]
 */
export function roomMeasures(
  own: RoomSums,
  coolingKwh: number,
  levels: RoomMeasures['species'],
  out: ReturnType<TimeOutsideBands['result']>,
  cold: { readonly hours: number; readonly perWinterDay: number | null },
  spot: ReturnType<ColdSpots['result']>,
  came: Arrivals,
  air: RoomAir,
): RoomMeasures {
  return {
    heating_kwh: own.heatingKwh,
    cooling_kwh: coolingKwh,
    mean_temperature_c: own.meanTemperature,
    mean_relative_humidity_pct: own.meanRelativeHumidity,
    species: levels,
    outside_band_hours: out.all,
    outside_band_occupied_hours: out.occupied,
    felt_cold_hours: cold.hours,
    winter_cold_hours_per_day: cold.perWinterDay,
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
