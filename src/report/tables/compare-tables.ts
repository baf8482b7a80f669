import { countedSpecies } from '../../measures/counted-species.ts';
import type { PlanMeasures, RoomMeasures, SpeciesLevel } from '../../measures/plan-measures.ts';
import type { Comparison } from '../../studies/compare/compare.ts';
import { figureText } from '../../units/figure-text.ts';
import type { LocalClock } from '../../units/local-clock.ts';
import { signedSum, sumText } from '../../units/sum-text.ts';
import { visibleProse } from '../../units/visible-text.ts';
import { homeRows, type PlanRow } from './compare-rows.ts';
import { extremeMarks } from './extreme-marks.ts';
import { periodText } from './period-text.ts';
import { type Column, columnsOf, textTable } from './text-table.ts';
import { wrapText } from './wrap-text.ts';

/** Whose plans are compared, and over which time: two lines. */
export function compareTitle({ plans: [first] }: Comparison, clock: LocalClock): string {
  return first === undefined ? '' : `${visibleProse(first.scenario)}\n${periodText(first, clock)}`;
}

/**
 * Plans side by side as plain text: the figures of the home, each room's, and what changes against
 * the first plan. The least and the most of each row are marked by these words.
 */
export function compareTables(comparison: Comparison, width: number): string {
  const { plans, baseline, differences } = comparison;
  if (plans.length === 0) return '';
  const parts = [
    `${figuresByPlan('Whole home\n', homeRows(plans), plans, width)}\n${wrapText(ROOM_HOURS, '', width)}`,
    roomTables(comparison, width),
  ];
  if (differences.length > 0) {
    parts.push(
      `Against ${visibleProse(baseline)} (minus is less)\n${differenceTable(comparison, width)}`,
    );
  }
  return parts.join('\n\n');
}

/** What plans do to each room: temperature, cold, damp, mould, and the level of whatever the air carries. */
export function roomTables({ plans }: Comparison, width: number): string {
  const levels = countedSpecies(plans)
    .filter(({ name }) => plans.some(({ species }) => Object.hasOwn(species, name)))
    .flatMap(({ name, symbol }) => levelFigures(name, visibleProse(symbol), plans));
  return [...ROOM_FIGURES, ...levels].map((figure) => roomTable(figure, plans, width)).join('\n\n');
}

/** Usual and high levels of a species. */
function levelFigures(name: string, label: string, plans: readonly PlanMeasures[]): RoomFigure[] {
  const unit = plans.find(({ species }) => Object.hasOwn(species, name))!.species[name]!.unit;
  return LEVELS.map(({ words, key }) => ({
    title: `${label}, ${words} [${visibleProse(unit)}]`,
    of: ({ species }) => species[name]?.[key] ?? Number.NaN,
  }));
}

function roomTable(figure: RoomFigure, plans: readonly PlanMeasures[], width: number): string {
  const rooms = Object.keys(plans[0]!.rooms);
  const rows = rooms.map((room) => ({
    label: room,
    printed: plans.map(({ rooms: by }) => {
      const measures = by[room];
      return figureText(measures && figure.of(measures), figure.decimals);
    }),
  }));
  return figuresByPlan(`${figure.title}\n`, rows, plans, width);
}

/** One line per figure, one column per plan, the extremes of each line marked. */
function figuresByPlan(
  title: string,
  rows: readonly PlanRow[],
  plans: readonly PlanMeasures[],
  width: number,
): string {
  const marks = rows.map(({ printed }) => extremeMarks(printed));
  const columns = plans.map(
    ({ plan }, k): Column => ({
      head: plan,
      cells: rows.map(({ printed }) => printed[k]!),
      marks: marks.map((row) => row[k]!),
    }),
  );
  const labels: Column = { head: '', cells: rows.map(({ label }) => label), align: 'left' };
  return title + textTable([labels, ...columns], width);
}

function differenceTable({ plans, differences }: Comparison, width: number): string {
  const { currency } = plans[0]!.money;
  const { figures, words } = columnsOf(differences);
  const change = (head: string, of: (difference: Difference) => number): Column =>
    figures(head, (difference) => signedSum(of(difference), 0));
  const rare = [
    change('too cold,\njust in\n[room h]', (d) => d.cold_arrival_hours),
    change('too damp,\nnobody in\n[room h]', (d) => d.humidity_high_empty_hours),
  ].filter(({ cells }) => cells.some((cell) => Number(cell) !== 0));
  const ofMoney = (
    head: string,
    of: (difference: Difference) => number | null,
    decimals?: number,
  ): Column[] =>
    differences.some((difference) => of(difference) !== null)
      ? [figures(head, (difference) => sumText(of(difference), decimals))]
      : [];
  return textTable(
    [
      words('plan', (d) => d.plan),
      change('heat to\nrooms\n[kWh]', (d) => d.useful_kwh),
      change(`energy\n\n[${currency}]`, (d) => d.energy_money),
      change(`all money\na year\n[${currency}]`, (d) => d.total_money_per_year),
      change('too cold,\nany time\n[room h]', (d) => d.temperature_low_hours),
      change('too damp,\nany time\n[room h]', (d) => d.humidity_high_hours),
      ...rare,
      ...ofMoney('pays back\nin\n[years]', (d) => d.payback_years, 1),
      ...ofMoney(`worth\ntoday\n[${currency}]`, (d) => d.npv, 0),
      ...ofMoney(`per damp h\navoided\n[${currency}]`, (d) => d.money_per_damp_hour_avoided),
    ],
    width,
  );
}

type Difference = Comparison['differences'][number];

const ROOM_HOURS =
  'room h: hours, added up over the rooms. Bands, cold spots and mould index: docs/quantities.md.';

interface RoomFigure {
  readonly title: string;
  /** About three significant digits where left out. */
  readonly decimals?: number;
  readonly of: (room: RoomMeasures) => number;
}

const LEVELS: readonly { words: string; key: keyof SpeciesLevel }[] = [
  { words: 'mean', key: 'mean' },
  { words: '95 of 100 hours under', key: 'p95' },
];

const ROOM_FIGURES: readonly RoomFigure[] = [
  { title: 'Mean air temperature [°C]', decimals: 1, of: (r) => r.mean_temperature_c },
  {
    title: 'Too cold while somebody is in the room [h]',
    decimals: 0,
    of: (r) => r.outside_band_occupied_hours.temperature_low,
  },
  {
    title: 'Too damp: humidity above the band [h]',
    decimals: 0,
    of: (r) => r.outside_band_hours.humidity_high,
  },
  {
    title: 'Cold spot over 80 % [h]',
    decimals: 0,
    of: (r) => r.cold_spot_hours_above_80_pct,
  },
  { title: 'Highest mould index [0 to 6]', decimals: 2, of: (r) => r.mould_index_peak },
];
