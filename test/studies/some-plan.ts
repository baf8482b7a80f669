import type { BandHours } from '../../src/measures/band-hours.ts';
import type {
  AiringMeasures,
  PlanMeasures,
  RoomMeasures,
  SpeciesLevel,
} from '../../src/measures/plan-measures.ts';

/** Figures of a plan made by hand: a year of two rooms, nothing outside any band. */
export function somePlan(
  plan: string,
  figures: {
    energy?: number;
    purchaseCost?: number;
    useful?: number;
    hours?: number;
    den?: RoomFigures;
    bath?: RoomFigures;
  } = {},
): PlanMeasures {
  const { energy = 1000, purchaseCost = 0, useful = 9000, hours = 8760 } = figures;
  const perYear = hours === 8760 ? energy : (energy * 8766) / hours;
  return {
    scenario: 'Hand-made terrace',
    plan,
    period: { from: '2023-01-01T00:00:00Z', to: '2024-01-01T00:00:00Z', hours },
    heating: {
      useful_kwh: useful,
      delivered_kwh: { gas: useful / 0.9 },
      with_window_open_kwh: 0,
      by_presence: /home/.test(plan),
    },
    cooling: { removed_kwh: 0, delivered_kwh: {} },
    blinds: {},
    devices: { electricity_kwh: 1500, gas_kwh: 0, by_device: {}, detail: {} },
    money: {
      currency: 'GBP',
      energy,
      winter_energy: 0.7 * energy,
      by_fuel: { gas: energy - 400, electricity: 400 },
      by_use: asUsed({ gas: energy - 400, electricity: 400 }),
      purchase_cost_per_year: purchaseCost,
      total_per_year: perYear + purchaseCost,
    },
    carbon_kg: 2000,
    species: { co2: { label: 'CO2', unit: 'ppm', mean_outdoors: 420 } },
    rooms: { den: someRoom(figures.den), bath: someRoom(figures.bath) },
    outdoor_air: { l_per_s: 30, leaks_l_per_s: 20, windows_l_per_s: 10, fans_l_per_s: 0 },
    outdoor_air_share_by_storey: { 0: 1 },
    air_flows: [],
    airing: { ...NO_AIRING },
    alerts: { fired: 0, someone_home: 0, acted_on: 0, per_week: 0, by_rule: {} },
    balance: {
      energy_residual: 1e-14,
      water_residual: 2e-14,
      air_residual: 0,
      pollutant_residual: 0,
    },
    handbook_cross_check: {
      heat_loss_coefficient_w_per_k: 200,
      degree_days_k_d: 2000,
      degree_day_heating_kwh: 9600,
      difference_pct: 6.7,
      infiltration_ach_mean: 0.5,
      ach50_over_20: 0.55,
      vapour_excess_g_per_m3: 3.2,
      humidity_class: 2,
    },
    assumed: [],
    cautions: [],
    notices: [],
  };
}

/** Money by fuel as if all of it were for appliances, without standing charges. */
export const asUsed = (by_fuel: Record<string, number>): PlanMeasures['money']['by_use'] =>
  Object.fromEntries(
    Object.entries(by_fuel).map(([fuel, other]) => [fuel, { heating: 0, cooling: 0, other }]),
  );

export interface RoomFigures {
  outside?: Partial<BandHours>;
  occupied?: Partial<BandHours>;
  over?: Partial<RoomMeasures>;
}

function someRoom({ outside, occupied, over }: RoomFigures = {}): RoomMeasures {
  return {
    heating_kwh: 4500,
    cooling_kwh: 0,
    mean_temperature_c: 19.5,
    mean_relative_humidity_pct: 52,
    species: { co2: someLevel(700) },
    outside_band_hours: { ...NONE, ...outside },
    outside_band_occupied_hours: { ...NONE, ...occupied },
    felt_cold_hours: 0,
    winter_cold_hours_per_day: 0,
    degree_hours_below: 0,
    degree_hours_above: 0,
    cold_spot_hours_above_80_pct: 0,
    mould_index_peak: 0,
    mould_index_end: 0,
    condensation_hours: 0,
    condensation_kg: 0,
    window_open_hours: 0,
    occupied_hours: 3000,
    arrivals: 700,
    cold_arrivals: 0,
    cold_arrival_hours: 0,
    recovery_minutes_mean: 0,
    recovery_minutes_most: 0,
    outdoor_air_l_per_s: 15,
    outdoor_air_l_per_s_per_person_asleep: null,
    ...over,
  };
}

/** Levels that go with a mean, made by hand. */
export const someLevel = (mean: number): SpeciesLevel => ({
  ...{ mean, evening: 1.1 * mean, night: 1.2 * mean, p95: 1.5 * mean, peak: 2 * mean },
});

const NONE: BandHours = {
  temperature_low: 0,
  temperature_high: 0,
  humidity_low: 0,
  humidity_high: 0,
  co2_high: 0,
  tvoc_high: 0,
  pollen_high: 0,
  no2_high: 0,
  pm25_high: 0,
};

const NO_AIRING: AiringMeasures = {
  openings_kg: 0,
  openings_kwh: 0,
  heating_season_kg: 0,
  heating_season_kwh: 0,
  kwh_per_litre: null,
  money_per_litre: null,
  short_airings: 0,
  rebounds: 0,
  rebound_minutes_mean: null,
  hours_drier: 0,
  hours_no_difference: 0,
  hours_wetter: 0,
  hours_humidity_rule_wrong: 0,
};
