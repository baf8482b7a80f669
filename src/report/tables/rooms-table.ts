import { highKey } from '../../measures/band-hours.ts';
import type { RoomMeasures } from '../../measures/plan-measures.ts';
import { SPECIES } from '../../species/species-table.ts';
import { figureText } from '../../units/figure-text.ts';
import { extremeMarks } from './extreme-marks.ts';
import { type Column, textTable, WIDTH } from './text-table.ts';
import { wrapText } from './wrap-text.ts';

/**
 * Rooms down, figures across, in blocks where they are too many for the width. With more than one
 * room, the least and the most of each column are marked by these words.
 */
export function roomsTable(rooms: Readonly<Record<string, RoomMeasures>>, width = WIDTH): string {
  const all = Object.values(rooms);
  const names: Column = { head: 'room', cells: Object.keys(rooms), align: 'left' };
  const told = FIGURES.filter(({ rare, of }) => !rare || all.some((room) => of(room) !== 0));
  const columns = told.map(({ head, decimals, of }): Column => {
    const cells = all.map((room) => figureText(of(room), decimals));
    return { head, cells, marks: extremeMarks(cells) };
  });
  return `${textTable([names, ...columns], width)}\n${wrapText(HOURS, '', width)}`;
}

const HOURS =
  'h: hours of the period, or those with somebody in the room. K h: hours times kelvins beyond ' +
  'the band. The bands and the mould index are described in docs/quantities.md.';

interface Figure {
  readonly head: string;
  readonly decimals: number;
  readonly of: (room: RoomMeasures) => number;
  /** Left out where it is 0 in every room. */
  readonly rare?: true;
}

const FIGURES: readonly Figure[] = [
  { head: 'heat\n[kWh]', decimals: 0, of: (r) => r.heating_kwh },
  { head: 'cooling\n[kWh]', decimals: 0, of: (r) => r.cooling_kwh, rare: true },
  { head: 'mean air\n[°C]', decimals: 1, of: (r) => r.mean_temperature_c },
  { head: 'humidity\n[%]', decimals: 0, of: (r) => r.mean_relative_humidity_pct },
  { head: 'too cold\n[h]', decimals: 0, of: (r) => r.outside_band_hours.temperature_low },
  {
    head: 'too cold,\nsomebody in\n[h]',
    decimals: 0,
    of: (r) => r.outside_band_occupied_hours.temperature_low,
  },
  { head: 'too cold\n[K h]', decimals: 0, of: (r) => r.degree_hours_below },
  { head: 'too warm\n[h]', decimals: 0, of: (r) => r.outside_band_hours.temperature_high },
  {
    head: 'too warm,\nsomebody in\n[h]',
    decimals: 0,
    of: (r) => r.outside_band_occupied_hours.temperature_high,
  },
  { head: 'too warm\n[K h]', decimals: 0, of: (r) => r.degree_hours_above },
  { head: 'too damp\n[h]', decimals: 0, of: (r) => r.outside_band_hours.humidity_high },
  { head: 'too dry\n[h]', decimals: 0, of: (r) => r.outside_band_hours.humidity_low },
  ...SPECIES.filter(({ role }) => role === 'indicator').map(
    ({ name, symbol }): Figure => ({
      head: `${symbol} high,\nsomebody in\n[h]`,
      decimals: 0,
      of: (r) => r.outside_band_occupied_hours[highKey(name)],
    }),
  ),
  { head: 'cold spot\nover 80 %\n[h]', decimals: 0, of: (r) => r.cold_spot_hours_above_80_pct },
  { head: 'mould index,\nhighest\n[0 to 6]', decimals: 2, of: (r) => r.mould_index_peak },
  { head: 'mould index,\nat the end\n[0 to 6]', decimals: 2, of: (r) => r.mould_index_end },
  { head: 'panes wet\n[h]', decimals: 0, of: (r) => r.condensation_hours },
  { head: 'water on\npanes\n[kg]', decimals: 1, of: (r) => r.condensation_kg },
  { head: 'window\nopen\n[h]', decimals: 0, of: (r) => r.window_open_hours },
];
