import type { Assumed, Notice } from '../home/notices.ts';
import type { BandHours } from './band-hours.ts';

/** The figures of one plan, as `--json` prints them. Units are in the names. */
export interface PlanMeasures {
  readonly scenario: string;
  readonly plan: string;
  readonly period: { readonly from: string; readonly to: string; readonly hours: number };
  readonly heating: {
    readonly useful_kwh: number;
    readonly delivered_kwh: Readonly<Record<string, number>>;
    readonly with_window_open_kwh: number;
    readonly by_presence: boolean;
  };
  readonly cooling: {
    readonly removed_kwh: number;
    readonly delivered_kwh: Readonly<Record<string, number>>;
  };
  readonly blinds: Readonly<
    Record<string, { readonly room: string; readonly closed_hours: number }>
  >;
  readonly devices: {
    readonly electricity_kwh: number;
    readonly gas_kwh: number;
    readonly by_device: Readonly<Record<string, number>>;
    readonly detail: Readonly<Record<string, DeviceMeasures>>;
  };
  readonly money: {
    readonly currency: string;
    readonly energy: number;
    readonly winter_energy: number;
    readonly by_fuel: Readonly<Record<string, number>>;
    readonly by_use: Readonly<Record<string, MoneyByUse>>;
    readonly purchase_cost_per_year: number;
    readonly total_per_year: number;
  };
  readonly carbon_kg: number;
  /** What the air carried, by name. */
  readonly species: Readonly<Record<string, SpeciesMeasures>>;
  readonly rooms: Readonly<Record<string, RoomMeasures>>;
  readonly outdoor_air: OutdoorAirMeasures;
  readonly outdoor_air_share_by_storey: Readonly<Record<string, number>>;
  readonly air_flows: readonly AirFlow[];
  readonly airing: AiringMeasures;
  readonly alerts: AlertMeasures;
  readonly balance: {
    readonly energy_residual: number;
    readonly water_residual: number;
    readonly air_residual: number;
    readonly pollutant_residual: number;
  };
  readonly handbook_cross_check: HandbookCrossCheck;
  readonly assumed: readonly Assumed[];
  readonly cautions: readonly Notice[];
  readonly notices: readonly Notice[];
}

export interface SpeciesMeasures {
  readonly label: string;
  readonly unit: string;
  readonly mean_outdoors: number;
}

/** Levels of one species in the air of one room, by hourly means. */
export interface SpeciesLevel {
  readonly mean: number;
  readonly evening: number;
  readonly night: number;
  readonly p95: number;
  readonly peak: number;
}

export interface RoomMeasures {
  readonly heating_kwh: number;
  readonly cooling_kwh: number;
  readonly mean_temperature_c: number;
  readonly mean_relative_humidity_pct: number;
  readonly species: Readonly<Record<string, SpeciesLevel>>;
  readonly outside_band_hours: BandHours;
  readonly outside_band_occupied_hours: BandHours;
  readonly felt_cold_hours: number;
  readonly winter_cold_hours_per_day: number | null;
  readonly degree_hours_below: number;
  readonly degree_hours_above: number;
  readonly cold_spot_hours_above_80_pct: number;
  readonly mould_index_peak: number;
  readonly mould_index_end: number;
  readonly condensation_hours: number;
  readonly condensation_kg: number;
  readonly window_open_hours: number;
  readonly occupied_hours: number;
  readonly arrivals: number;
  readonly cold_arrivals: number;
  readonly cold_arrival_hours: number;
  readonly recovery_minutes_mean: number;
  readonly recovery_minutes_most: number;
  readonly outdoor_air_l_per_s: number;
  readonly outdoor_air_l_per_s_per_person_asleep: number | null;
}

export interface OutdoorAirMeasures {
  readonly l_per_s: number;
  readonly leaks_l_per_s: number;
  readonly windows_l_per_s: number;
  readonly fans_l_per_s: number;
}

export interface AirFlow {
  readonly from: string;
  readonly to: string;
  readonly l_per_s: number;
}

/** What a fuel cost at the hours at which it was drawn, standing charges left out. */
export interface MoneyByUse {
  readonly heating: number;
  readonly cooling: number;
  readonly other: number;
}

export interface DeviceMeasures {
  readonly electricity_kwh: number;
  readonly electricity_money: number | null;
  readonly fuel_kwh: number;
  readonly water_kg: number;
  readonly heat_kwh: number;
  readonly hours: number;
  readonly starts: number;
  readonly emptied: number;
  readonly hours_4_pa_below_outdoors: number | null;
}

export interface AiringMeasures {
  readonly openings_kg: number;
  readonly openings_kwh: number;
  readonly heating_season_kg: number;
  readonly heating_season_kwh: number;
  readonly kwh_per_litre: number | null;
  readonly money_per_litre: number | null;
  readonly short_airings: number;
  readonly rebounds: number;
  readonly rebound_minutes_mean: number | null;
  readonly hours_drier: number;
  readonly hours_no_difference: number;
  readonly hours_wetter: number;
  readonly hours_humidity_rule_wrong: number;
}

export interface AlertMeasures {
  readonly fired: number;
  readonly someone_home: number;
  readonly acted_on: number;
  readonly per_week: number;
  readonly by_rule: Readonly<Record<string, RuleMeasures>>;
}

export interface RuleMeasures {
  readonly tells: boolean;
  readonly fired: number;
  readonly per_week: number;
  readonly someone_home: number;
  readonly someone_awake: number;
  readonly could_act: number;
  readonly acted_on: number;
  readonly duplicates: number;
  readonly active_hours: number;
  readonly missed: number;
  readonly held_back: number;
  readonly by_hour: readonly number[];
  readonly could_act_by_hour: readonly number[];
}

export interface HandbookCrossCheck {
  readonly heat_loss_coefficient_w_per_k: number;
  readonly degree_days_k_d: number;
  readonly degree_day_heating_kwh: number;
  readonly difference_pct: number;
  readonly infiltration_ach_mean: number;
  readonly ach50_over_20: number | null;
  readonly vapour_excess_g_per_m3: number;
  readonly humidity_class: number;
}
