import type { PlanMeasures } from '../../measures/plan-measures.ts';
import { rowTable } from './row-table.ts';

/** What open windows carried out, what that cost, and whether it helped; nothing where none opened. */
export function airingTable({ airing, rooms, money }: PlanMeasures, width: number): string {
  if (!Object.values(rooms).some((room) => room.window_open_hours > 0)) return '';
  return rowTable(
    [
      ['water out of windows', airing.openings_kg, 'kg'],
      ['of that, in the heating season', airing.heating_season_kg, 'kg'],
      ['heat out of windows in the heating season', airing.heating_season_kwh, 'kWh'],
      ['of each litre then', airing.kwh_per_litre, 'kWh', 2],
      ['of each litre then, at the price of heat', airing.money_per_litre, money.currency, 3],
      ['airings of an hour at most that dried a room', airing.short_airings, ''],
      ['of those, nearly as damp again within a day', airing.rebounds, ''],
      ['until then, mean', airing.rebound_minutes_mean, 'min'],
      ['windows open, drier outdoors', airing.hours_drier, 'room h'],
      ['windows open, no difference', airing.hours_no_difference, 'room h'],
      ['windows open, wetter outdoors', airing.hours_wetter, 'room h'],
      ['going by % alone would mislead', airing.hours_humidity_rule_wrong, 'room h'],
    ],
    width,
  );
}
