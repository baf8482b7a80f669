import { highKey } from '../../measures/band-hours.ts';
import type {
  DeviceMeasures,
  PlanMeasures,
  RoomMeasures,
  RuleMeasures,
} from '../../measures/plan-measures.ts';
import { SPECIES } from '../../species/species-table.ts';
import { figureText } from '../../units/figure-text.ts';
import { extremeMarks } from './extreme-marks.ts';
import { type Column, textTable } from './text-table.ts';
import { wrapText } from './wrap-text.ts';

/**
 * Rooms down, figures across, in blocks where they are too many for the width. With more than one
 * room, the least and the most of each column are marked by these words.
 */
export const roomsTable = (rooms: PlanMeasures['rooms'], width: number): string =>
  `${figureTable('room', rooms, OF_ROOMS, width, extremeMarks)}\n${wrapText(HOURS, '', width)}`;

/** What people find who come into a room; nothing where nobody ever does. */
export function arrivalsTable(rooms: PlanMeasures['rooms'], width: number): string {
  const used = Object.entries(rooms).filter(([, { arrivals }]) => arrivals > 0);
  return figureTable('room', Object.fromEntries(used), OF_ARRIVALS, width);
}

/** How long each blind was closed; nothing where there are none. */
export const blindsTable = (blinds: PlanMeasures['blinds'], width: number): string =>
  figureTable('blind', blinds, OF_BLINDS, width);

/** What each device drew and did; nothing where there are none. */
export const devicesTable = ({ detail }: PlanMeasures['devices'], width: number): string =>
  figureTable('device', detail, OF_DEVICES, width);

/** How often each rule fired and what came of it; nothing where there are no rules. */
export const alertsTable = ({ by_rule }: PlanMeasures['alerts'], width: number): string =>
  figureTable('rule', by_rule, OF_RULES, width);

/** One column of figures about named things. */
interface FigureColumn<Thing> {
  readonly head: string;
  /** None where left out. */
  readonly decimals?: number;
  readonly of: (thing: Thing) => number | null;
  /** Whether the column is left out where all its figures are 0 or not known. */
  readonly optional?: true;
}

/**
 * Named things down, figures across; nothing where there are no things.
 *
 * @param marksOf  words beside the figures of a column
 */
function figureTable<Thing>(
  head: string,
  things: Readonly<Record<string, Thing>>,
  figures: readonly FigureColumn<Thing>[],
  width: number,
  marksOf: (cells: readonly string[]) => readonly string[] = () => [],
): string {
  const all = Object.values(things);
  if (all.length === 0) return '';
  const told = figures.filter(
    ({ optional, of }) => !optional || all.some((it) => (of(it) ?? 0) !== 0),
  );
  const names: Column = { head, cells: Object.keys(things), align: 'left' };
  const columns = told.map(({ head, decimals = 0, of }): Column => {
    const cells = all.map((thing) => figureText(of(thing), decimals));
    return { head, cells, marks: marksOf(cells) };
  });
  return textTable([names, ...columns], width);
}

const OF_ROOMS: readonly FigureColumn<RoomMeasures>[] = [
  { head: 'heat\n[kWh]', of: (r) => r.heating_kwh },
  { head: 'cooling\n[kWh]', of: (r) => r.cooling_kwh, optional: true },
  { head: 'mean air\n[°C]', decimals: 1, of: (r) => r.mean_temperature_c },
  { head: 'humidity\n[%]', of: (r) => r.mean_relative_humidity_pct },
  { head: 'too cold\n[h]', of: (r) => r.outside_band_hours.temperature_low },
  {
    head: 'too cold,\nsomebody in\n[h]',
    of: (r) => r.outside_band_occupied_hours.temperature_low,
  },
  { head: 'too cold\n[K h]', of: (r) => r.degree_hours_below },
  { head: 'too warm\n[h]', of: (r) => r.outside_band_hours.temperature_high },
  {
    head: 'too warm,\nsomebody in\n[h]',
    of: (r) => r.outside_band_occupied_hours.temperature_high,
  },
  { head: 'too warm\n[K h]', of: (r) => r.degree_hours_above },
  { head: 'too damp\n[h]', of: (r) => r.outside_band_hours.humidity_high },
  { head: 'too dry\n[h]', of: (r) => r.outside_band_hours.humidity_low },
  ...SPECIES.filter(({ role }) => role === 'indicator').map(
    ({ name, symbol }): FigureColumn<RoomMeasures> => ({
      head: `${symbol} high,\nsomebody in\n[h]`,
      of: (r) => r.outside_band_occupied_hours[highKey(name)],
    }),
  ),
  { head: 'cold spot\nover 80 %\n[h]', of: (r) => r.cold_spot_hours_above_80_pct },
  { head: 'mould index,\nhighest\n[0 to 6]', decimals: 2, of: (r) => r.mould_index_peak },
  { head: 'mould index,\nat the end\n[0 to 6]', decimals: 2, of: (r) => r.mould_index_end },
  { head: 'panes wet\n[h]', of: (r) => r.condensation_hours },
  { head: 'water on\npanes\n[kg]', decimals: 1, of: (r) => r.condensation_kg },
  { head: 'window\nopen\n[h]', of: (r) => r.window_open_hours },
];

const HOURS =
  'h: hours of the period, or those with somebody in the room. K h: hours times kelvins beyond ' +
  'the band. The bands and the mould index are described in docs/quantities.md.';

const OF_ARRIVALS: readonly FigureColumn<RoomMeasures>[] = [
  { head: 'somebody\nin\n[h]', of: (r) => r.occupied_hours },
  { head: 'arrivals', of: (r) => r.arrivals },
  { head: 'too cold\nthen', of: (r) => r.cold_arrivals },
  { head: 'and in\n2 h after\n[h]', of: (r) => r.cold_arrival_hours },
  { head: 'until\nwarm, mean\n[min]', of: (r) => r.recovery_minutes_mean },
  { head: 'longest\n[min]', of: (r) => r.recovery_minutes_most },
];

const OF_BLINDS: readonly FigureColumn<PlanMeasures['blinds'][string]>[] = [
  { head: 'closed\n[h]', of: ({ closed_hours }) => closed_hours },
];

const OF_DEVICES: readonly FigureColumn<DeviceMeasures>[] = [
  { head: 'running\n[h]', of: (d) => d.hours },
  { head: 'starts', of: (d) => d.starts },
  { head: 'electricity\n[kWh]', of: (d) => d.electricity_kwh },
  { head: 'wood\n[kWh]', of: (d) => d.fuel_kwh, optional: true },
  { head: 'heat to\nrooms\n[kWh]', of: (d) => d.heat_kwh },
  {
    head: 'water\ntaken out\n[kg]',
    of: (d) => Math.max(0, -d.water_kg),
    optional: true,
  },
  { head: 'water\nadded\n[kg]', of: (d) => Math.max(0, d.water_kg), optional: true },
  {
    head: '4 Pa below\noutdoors\n[h]',
    of: (d) => d.hours_4_pa_below_outdoors,
    optional: true,
  },
  { head: 'tank\nemptied', of: (d) => d.emptied, optional: true },
];

const OF_RULES: readonly FigureColumn<RuleMeasures>[] = [
  { head: 'fired', of: (r) => r.fired },
  { head: 'a week', decimals: 1, of: (r) => r.per_week },
  { head: 'somebody\nhome', of: (r) => r.someone_home },
  { head: 'and\nawake', of: (r) => r.someone_awake },
  { head: 'could be\nacted on', of: (r) => r.could_act },
  { head: 'acted\non', of: (r) => r.acted_on },
  { head: 'again in\nan hour', of: (r) => r.duplicates },
  { head: 'active\n[h]', of: (r) => r.active_hours },
  { head: 'missed', of: (r) => r.missed },
  { head: 'held\nback', of: (r) => r.held_back },
];
