import { airLevel } from '../../measures/air/air-level.ts';
import type { ComparisonAnswers, PlanLine } from '../../studies/answers/comparison-answers.ts';
import type { AirFigure, PlanFigures } from '../../studies/effects/plan-figures.ts';
import { figureText, signedText } from '../../units/figure-text.ts';
import { signedSum, sumText } from '../../units/sum-text.ts';
import { visibleProse } from '../../units/visible-text.ts';
import { shortened, shortenedApart } from '../shortened.ts';
import { type Column, textTable } from './text-table.ts';

/** A line of figures for each plan under a head, and what its columns mean. */
export interface PlanLines {
  readonly head: readonly string[];
  /** One for each plan. */
  readonly lines: readonly string[];
  /** A sentence for each column that needs one. */
  readonly legend: readonly string[];
}

/**
 * Plans against the baseline, which comes first with its own money and energy. Columns that say the
 * least are left out where the width has no room for all.
 */
export function planLines(answers: ComparisonAnswers, width: number): PlanLines {
  const { plans, currency } = answers;
  const figures = plans.map((plan) => plan.figures);
  const columns = MOST_WANTED.map(({ head, of }) => columnOf(head(currency), figures, of));
  const legend = [moneyNote(answers), coldNote(answers), DAMP_NOTE];
  const names = namesOf(plans, width);
  for (const extra of [...mouldRoom(figures), ...extraColumns(figures)]) {
    const more = columnOf(extra.head(currency), figures, extra.of);
    if (widthOf([names, ...columns, more]) > width) continue;
    columns.push(extra.left ? { ...more, align: 'left' } : more);
    legend.push(...(extra.says === undefined ? [] : [extra.says]));
  }
  const all = textTable([names, ...columns], Number.POSITIVE_INFINITY, GAP).split('\n');
  const head = all.length - plans.length;
  return { head: all.slice(0, head), lines: all.slice(head), legend };
}

interface Wanted {
  readonly head: (currency: string) => string;
  readonly of: (figures: PlanFigures, baseline: PlanFigures) => string;
  readonly says?: string;
  readonly left?: true;
}

const columnOf = (head: string, plans: readonly PlanFigures[], of: Wanted['of']): Column => ({
  head,
  cells: plans.map((plan) => of(plan, plans[0]!)),
});

/** Where mould is likeliest, as far as plans differ in it; otherwise the legend names the room. */
function mouldRoom(plans: readonly PlanFigures[]): Wanted[] {
  const rooms = [...new Set(plans.map(({ mould }) => mould.room).filter((room) => room !== ''))];
  if (rooms.length < 2 || plans.every(({ mould }) => mould.value < WORTH_A_PLACE)) return [];
  const of = ({ mould }: PlanFigures) => shortened(visibleProse(mould.room), MOST_OF_ROOM);
  return [{ head: () => 'in\n', of, left: true }];
}

function extraColumns(plans: readonly PlanFigures[]): Wanted[] {
  const [first] = plans;
  const alerts: Wanted = {
    head: () => 'rings\n/week',
    of: ({ alerts }) => (alerts > 0 ? figureText(alerts, alerts < 10 ? 1 : 0) : '0'),
    says: 'rings: alerts a week.',
  };
  const warm: Wanted = {
    head: () => 'hot\n%',
    of: ({ warm }) => figureText(warm, 0),
    says: 'hot: too warm, of the time somebody is in.',
  };
  const dry: Wanted = {
    head: () => 'dry\n%',
    of: ({ dry }) => figureText(dry, 0),
    says: 'dry: air too dry, of the time, mean of the rooms.',
  };
  const shares = plans.map((plan) => plan.dry);
  const [driest, leastDry] = [Math.max(...shares), Math.min(...shares)];
  const carried = first?.air ?? [];
  // What tells that air is stale, then what harms, which has the most harmful last in its list.
  const stale = carried.filter(({ kind }) => kind === 'worst night');
  const air = [...stale, ...carried.filter(({ kind }) => kind === 'mean').toReversed()]
    .map((figure) => ({ figure, tells: spreadOf(plans, figure.name) > TELLING }))
    .sort((a, b) => Number(b.tells) - Number(a.tells))
    .map(({ figure }) => airColumn(figure));
  return [
    ...(plans.some((plan) => plan.alerts > 0) ? [alerts] : []),
    ...(Math.max(...plans.map((plan) => Math.abs(plan.warm - first!.warm))) >= 1 ? [warm] : []),
    ...(driest >= OFTEN_DRY && driest - leastDry >= TOLD_DRY ? [dry] : []),
    ...air,
  ];
}

function airColumn({ name, label, unit, kind }: AirFigure): Wanted {
  return {
    head: () => `${label}\n${unit}`,
    of: (plan) => {
      const value = airLevel(plan, name);
      return figureText(value, value !== undefined && value >= 100 ? 0 : 1);
    },
    says: kind === 'mean' ? `${label}: mean of the rooms.` : `${label}: nights, room worst off.`,
  };
}

/** How far apart plans are, as a share of the highest. [-] */
function spreadOf(plans: readonly PlanFigures[], name: string): number {
  const values = plans.flatMap((plan) => airLevel(plan, name) ?? []);
  const most = Math.max(...values);
  return most > 0 ? (most - Math.min(...values)) / most : 0;
}

function namesOf(plans: readonly PlanLine[], width: number): Column {
  const most = Math.max(12, Math.floor(width / 4));
  const names = plans.map(({ figures }) => visibleProse(figures.plan));
  return { head: '', cells: shortenedApart(names, most), align: 'left' };
}

function widthOf(columns: readonly Column[]): number {
  const lines = textTable(columns, Number.POSITIVE_INFINITY, GAP).split('\n');
  return Math.max(...lines.map((line) => [...line].length));
}

/** A year's, or of the part of one that was run. */
export const moneyOf = ({ money, part }: PlanFigures): number => part?.money ?? money;
const energyOf = ({ energy, part }: PlanFigures): number => part?.energy ?? energy;

const MOST_WANTED: readonly Wanted[] = [
  {
    head: (currency) => `money\n${visibleProse(currency)}`,
    of: (plan, base) =>
      plan === base ? sumText(moneyOf(plan), 0) : signedSum(moneyOf(plan) - moneyOf(base), 0),
  },
  {
    head: () => 'energy\nkWh',
    of: (plan, base) =>
      plan === base
        ? figureText(energyOf(plan), 0)
        : signedText(energyOf(plan) - energyOf(base), 0),
  },
  {
    head: () => 'cold\nh/day',
    of: ({ cold }) => (cold.value < 0.05 ? '0' : figureText(cold.value, 1)),
  },
  {
    head: () => 'damp\n%',
    of: ({ damp }) => figureText(damp, 0),
  },
  { head: () => 'wet\n%', of: ({ spots }) => figureText(spots, 0) },
  { head: () => 'mould\n0-6', of: ({ mould }) => figureText(mould.value, 1) },
];
function moneyNote({ plans: [first] }: ComparisonAnswers): string {
  const part = first?.figures.part ?? null;
  const span = part === null ? 'a year' : `in these ${part.length.replaceAll('\u00a0', ' ')}`;
  const counted =
    part === null ? 'purchases included, hot water not' : 'without purchases and hot water';
  return `Money (${counted}) and energy ${span}: the difference from the first plan.`;
}
const coldNote = ({ ofWinter }: ComparisonAnswers): string =>
  `cold: over 0.5 °C too cold with somebody in, ${ofWinter ? 'winter half of the year' : 'over the period'}, room worst off.`;
const DAMP_NOTE =
  'damp: air too damp, wet: cold corners over 80 %, both of the time, mean of the rooms.';
const GAP = 1;
const MOST_OF_ROOM = 9;
/** Mould index under which nobody asks where. */
const WORTH_A_PLACE = 0.5;
/** So much of the time too dry is clear to anybody, and so many points of it are told. [%] */
const OFTEN_DRY = 15;
const TOLD_DRY = 4;
/** Share by which a level must differ between plans to come before others. */
const TELLING = 0.02;
