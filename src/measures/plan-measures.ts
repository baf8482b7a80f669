import type { Assumed, Remark } from '../home/remarks.ts';

/** The figures of one plan, as `--json` prints them. Units are in the names. */
export interface PlanMeasures {
  readonly scenario: string;
  readonly plan: string;
  readonly period: { readonly from: string; readonly to: string; readonly hours: number };
  readonly heating: {
    readonly useful_kwh: number;
    readonly delivered_kwh: Readonly<Record<string, number>>;
  };
  readonly devices: {
    readonly electricity_kwh: number;
    readonly by_device: Readonly<Record<string, number>>;
  };
  readonly money: {
    readonly currency: string;
    readonly energy: number;
    readonly by_fuel: Readonly<Record<string, number>>;
    readonly owning_per_year: number;
    readonly total_per_year: number;
  };
  readonly carbon_kg: number;
  readonly rooms: Readonly<Record<string, RoomMeasures>>;
  readonly alerts: {
    readonly fired: number;
    readonly someone_home: number;
    readonly acted_on: number;
    readonly per_week: number;
    readonly by_rule: Readonly<Record<string, unknown>>;
  };
  readonly balance: {
    readonly energy_residual: number;
    readonly water_residual: number;
    readonly air_residual: number;
    readonly pollutant_residual: number;
  };
  readonly second_opinion: SecondOpinion;
  readonly assumed: readonly Assumed[];
  readonly cautions: readonly Remark[];
  readonly notices: readonly Remark[];
}

export interface RoomMeasures {
  readonly heating_kwh: number;
  readonly mean_temperature_c: number;
  readonly mean_relative_humidity_pct: number;
  readonly outside_band_hours: BandHours;
  readonly outside_band_occupied_hours: BandHours;
  readonly degree_hours_below: number;
  readonly degree_hours_above: number;
  readonly cold_spot_hours_above_80_pct: number;
  readonly mould_index_peak: number;
  readonly mould_index_end: number;
  readonly condensation_hours: number;
  readonly condensation_kg: number;
  readonly window_open_hours: number;
}

export interface BandHours {
  readonly temperature_low: number;
  readonly temperature_high: number;
  readonly humidity_low: number;
  readonly humidity_high: number;
  readonly co2_high: number;
  readonly tvoc_high: number;
  readonly pm25_high: number;
}

export interface SecondOpinion {
  readonly heat_loss_coefficient_w_per_k: number;
  readonly degree_days_k_d: number;
  readonly degree_day_heating_kwh: number;
  readonly difference_pct: number;
  readonly infiltration_ach_mean: number;
  readonly ach50_over_20: number | null;
  readonly vapour_excess_g_per_m3: number;
  readonly humidity_class: number;
}
