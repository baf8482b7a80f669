import type { DeviceMeasures, PlanMeasures } from '../../measures/plan-measures.ts';
import { type FigureColumn, figureTable } from './figure-columns.ts';
import { WIDTH } from './text-table.ts';

/** What each device drew and did; nothing where there are none. */
export function devicesTable({ detail }: PlanMeasures['devices'], width = WIDTH): string {
  return figureTable('device', detail, FIGURES, width);
}

const FIGURES: readonly FigureColumn<DeviceMeasures>[] = [
  { head: 'running\n[h]', decimals: 0, of: (d) => d.hours },
  { head: 'starts', decimals: 0, of: (d) => d.starts },
  { head: 'electricity\n[kWh]', decimals: 0, of: (d) => d.electricity_kwh },
  { head: 'wood\n[kWh]', decimals: 0, of: (d) => d.fuel_kwh, optional: true },
  { head: 'heat to\nrooms\n[kWh]', decimals: 0, of: (d) => d.heat_kwh },
  {
    head: 'water\ntaken out\n[kg]',
    decimals: 0,
    of: (d) => Math.max(0, -d.water_kg),
    optional: true,
  },
  { head: 'water\nadded\n[kg]', decimals: 0, of: (d) => Math.max(0, d.water_kg), optional: true },
  {
    head: '4 Pa below\noutdoors\n[h]',
    decimals: 0,
    of: (d) => d.hours_4_pa_below_outdoors,
    optional: true,
  },
  { head: 'tank\nemptied', decimals: 0, of: (d) => d.emptied, optional: true },
];
