import { countedSpecies } from '../../measures/counted-species.ts';
import type { PlanMeasures, RoomMeasures, SpeciesLevel } from '../../measures/plan-measures.ts';
import type { Comparison } from '../../studies/compare/compare.ts';
import { figureText, signedText } from '../../units/figure-text.ts';
import type { LocalClock } from '../../units/local-clock.ts';
import { visibleProse } from '../../units/visible-text.ts';
import { homeRows, type PlanRow } from './compare-rows.ts';
import { extremeMarks } from './extreme-marks.ts';
import { periodText } from './period-text.ts';
import { type Column, textTable, WIDTH } from './text-table.ts';
import { wrapText } from './wrap-text.ts';

/** Whose plans are compared, and over which time: two lines. */
export function compareTitle({ plans: [first] }: Comparison, clock: LocalClock): string {
  return first === undefined ? '' : `${visibleProse(first.scenario)}\n${periodText(first, clock)}`;
}

/**
 * Plans side by side as plain text: the figures of the home, each room's, and what changes against
 * the first plan. The least and the most of each row are marked by these words.
 */
export function compareTables(comparison: Comparison, width = WIDTH): string {
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
export function roomTables({ plans }: Comparison, width = WIDTH): string {
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
  const currency = plans[0]!.money.currency;
  const column = (head: string, cells: readonly string[]): Column => ({ head, cells });
  const anything = (values: readonly (number | null)[]) => values.some((v) => v !== null);
  const columns: Column[] = [
    { head: 'plan', cells: differences.map((d) => d.plan), align: 'left' },
    column(
      'heat to\nrooms\n[kWh]',
      differences.map((d) => signedText(d.useful_kwh, 0)),
    ),
    column(
      `energy\n\n[${currency}]`,
      differences.map((d) => signedText(d.energy_money, 0)),
    ),
    column(
      `all money\na year\n[${currency}]`,
      differences.map((d) => signedText(d.total_money_per_year, 0)),
    ),
    column(
      'too cold,\nany time\n[room h]',
      differences.map((d) => signedText(d.temperature_low_hours, 0)),
    ),
    column(
      'too damp,\nany time\n[room h]',
      differences.map((d) => signedText(d.humidity_high_hours, 0)),
    ),
  ];
  for (const [head, hours] of [
    ['too cold,\njust in\n[room h]', differences.map((d) => d.cold_arrival_hours)],
    ['too damp,\nnobody in\n[room h]', differences.map((d) => d.humidity_high_empty_hours)],
  ] as const) {
    const cells = hours.map((value) => signedText(value, 0));
    if (cells.some((cell) => Number(cell) !== 0)) columns.push(column(head, cells));
  }
  const optional: readonly (readonly [string, readonly (number | null)[], number | undefined])[] = [
    ['pays back\nin\n[years]', differences.map((d) => d.payback_years), 1],
    [`worth\ntoday\n[${currency}]`, differences.map((d) => d.npv), 0],
    [
      `per damp h\navoided\n[${currency}]`,
      differences.map((d) => d.money_per_damp_hour_avoided),
      undefined,
    ],
  ];
  for (const [head, values, decimals] of optional) {
    if (anything(values))
      columns.push(
        column(
          head,
          values.map((v) => figureText(v, decimals)),
        ),
      );
  }
  return textTable(columns, width);
}

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
