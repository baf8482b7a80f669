import type { PlanMeasures } from '../../measures/plan-measures.ts';
import { rowTable } from './row-table.ts';
import { WIDTH } from './text-table.ts';

/** What open windows carried out, what that cost, and whether it helped; nothing where none opened. */
export function airingTable({ airing, rooms, money }: PlanMeasures, width = WIDTH): string {
  if (!Object.values(rooms).some((room) => room.window_open_hours > 0)) return '';
  const row = (label: string, value: number | null, unit: string, decimals = 0) => ({
    label,
    value,
    unit,
    decimals,
  });
  return rowTable(
    [
      row('water out of windows', airing.openings_kg, 'kg'),
      row('of that, in the heating season', airing.heating_season_kg, 'kg'),
      row('heat out of windows in the heating season', airing.heating_season_kwh, 'kWh'),
      row('of each litre then', airing.kwh_per_litre, 'kWh', 2),
      row('of each litre then, at the price of heat', airing.money_per_litre, money.currency, 3),
      row('airings of an hour at most that dried a room', airing.short_airings, ''),
      row('of those, nearly as damp again within a day', airing.rebounds, ''),
      row('until then, mean', airing.rebound_minutes_mean, 'min'),
      row('windows open, drier outdoors', airing.hours_drier, 'room h'),
      row('windows open, no difference', airing.hours_no_difference, 'room h'),
      row('windows open, wetter outdoors', airing.hours_wetter, 'room h'),
      row('going by % alone would mislead', airing.hours_humidity_rule_wrong, 'room h'),
    ],
    width,
  );
}
