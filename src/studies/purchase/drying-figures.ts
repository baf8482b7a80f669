import type { DeviceMeasures } from '../../measures/plan-measures.ts';
import { yearsIn } from '../../measures/years-in.ts';
import type { PreparedPlan } from '../../scenario/prepared.ts';
import { SECONDS_PER_DAY } from '../../units/time-units.ts';

/** What a device did in a year, and how that compares with its label. */
export interface DryingFigures {
  readonly run_hours_per_year: number;
  readonly kwh_per_year: number;
  readonly litres_per_year: number;
  /** Water a day while it ran [L/day]; null where it never did. */
  readonly litres_a_day_running: number | null;
  readonly litres_per_kwh: number | null;
  /** Water by the label, at its test condition [L/day]; null for devices whose label gives none. */
  readonly label_litres_a_day: number | null;
  /** Water while running over that by the label; null where the label gives none. [-] */
  readonly share_of_label: number | null;
  readonly tank_empties_per_year: number;
}

/**
 * @param device  its figures over the period
 * @param hours   length of the period [h]
 * @param label   water by its label [L/day], null where it has none
 */
export function dryingFigures(
  device: DeviceMeasures,
  hours: number,
  label: number | null,
): DryingFigures {
  const years = yearsIn(hours);
  const litres = Math.max(0, -device.water_kg);
  const running = device.hours > 0 ? litres / (device.hours / 24) : null;
  return {
    run_hours_per_year: device.hours / years,
    kwh_per_year: device.electricity_kwh / years,
    litres_per_year: litres / years,
    litres_a_day_running: running,
    litres_per_kwh: device.electricity_kwh > 0 ? litres / device.electricity_kwh : null,
    label_litres_a_day: label,
    share_of_label: running === null || label === null ? null : running / label,
    tank_empties_per_year: device.emptied / years,
  };
}

/** Water that a plan's device takes by its label; null where it is no dehumidifier. [L/day] */
export function labelOf({ home }: PreparedPlan, device: string): number | null {
  const does = home.devices.find(({ name }) => name === device)?.does;
  return does?.kind === 'dehumidifier' ? does.ratedWater * SECONDS_PER_DAY : null;
}
