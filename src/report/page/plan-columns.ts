import { airLevel } from '../../measures/air/air-level.ts';
import type { PlanLine } from '../../studies/answers/comparison-answers.ts';
import type { ReportStudy } from '../../studies/report-study.ts';
import { figureText } from '../../units/figure-text.ts';
import { relativeChange } from '../../units/relative-change.ts';
import { signedSum, sumText } from '../../units/sum-text.ts';
import { airDecimals } from '../air-decimals.ts';
import { type Html, html } from './html.ts';

/** A figure of all plans, on one scale. */
export interface PlanColumn {
  readonly head: string;
  /** Unit and what it is of. */
  readonly under: string;
  readonly of: (line: PlanLine) => number;
  readonly print: (line: PlanLine, baseline: boolean) => string;
  /** Whether somebody would notice the difference from the baseline. */
  readonly look: (line: PlanLine) => 'better' | 'worse' | 'same';
  readonly note?: (line: PlanLine) => Html | null;
  /** Whether a figure that is neither better nor worse is worth a word all the same. */
  readonly tells?: (line: PlanLine, baseline: PlanLine) => boolean;
  readonly from: number;
  readonly to: number;
}

/** Money, warmth, damp, air and alerts of the plans; what no plan has is left out. */
export function planColumns({ lines, options }: ReportStudy): PlanColumn[] {
  const { currency } = options[0]!.measures.money;
  const winter = Object.values(options[0]!.measures.rooms).some(
    (room) => room.winter_cold_hours_per_day !== null,
  );
  const all = [
    moneyColumn(lines, currency),
    energyColumn(lines),
    column(lines, 'too cold', `h a day${winter ? ' of winter' : ''}, room worst off`, 'cold', {
      of: ({ figures }) => figures.cold.value,
      decimals: 1,
      room: ({ figures }) => figures.cold.room,
    }),
    column(lines, 'too damp', '% of the time, mean of the rooms', 'damp', {
      of: ({ figures }) => figures.damp,
    }),
    column(lines, 'wet corner', '% of the time, mean of the rooms', 'spots', {
      of: ({ figures }) => figures.spots,
    }),
    column(lines, 'mould', 'index 0 to 6, room worst off', 'mould', {
      of: ({ figures }) => figures.mould.value,
      decimals: 1,
      room: ({ figures }) => figures.mould.room,
    }),
    column(lines, 'too warm', '% of the time that somebody is in', 'warm', {
      of: ({ figures }) => figures.warm,
    }),
    column(lines, 'too dry', '% of the time, mean of the rooms', 'dry', {
      of: ({ figures }) => figures.dry,
    }),
    ...airColumns(lines),
    alertsColumn(lines),
  ];
  return all.filter(({ of, always }) => always || lines.some((line) => of(line) >= LEAST));
}

interface AnyColumn extends PlanColumn {
  readonly always?: boolean;
}

function column(
  lines: readonly PlanLine[],
  head: string,
  under: string,
  kind: PlanLine['effects'][number]['of'],
  {
    of,
    decimals = 0,
    room,
  }: {
    readonly of: (line: PlanLine) => number;
    readonly decimals?: number;
    readonly room?: (line: PlanLine) => string;
  },
): AnyColumn {
  return {
    ...{ head, under, of, from: 0, to: Math.max(...lines.map(of)) },
    print: (line) => figureText(of(line), decimals),
    look: ({ effects }) => lookOf(effects.find((effect) => effect.of === kind)),
    ...(room !== undefined && {
      // Said where another room is worst off than in the baseline.
      note: (line: PlanLine) =>
        room(line) === room(lines[0]!) ? null : html` <small>${room(line)}</small>`,
    }),
  };
}

const lookOf = (effect: PlanLine['effects'][number] | undefined): 'better' | 'worse' | 'same' =>
  effect === undefined ? 'same' : effect.better ? 'better' : 'worse';

/** Every plan's money beyond the baseline's, whose own is said whole. */
function moneyColumn(lines: readonly PlanLine[], currency: string): AnyColumn {
  const baseline = lines[0]!.figures.money;
  const of = ({ figures }: PlanLine): number => figures.money - baseline;
  return {
    ...{ head: 'money', under: `${currency} a year, what is bought included`, of, always: true },
    from: Math.min(...lines.map(of)),
    to: Math.max(...lines.map(of)),
    print: (line, first) => (first ? sumText(baseline, 0) : signedSum(Math.round(of(line)), 0)),
    look: (line) => {
      const clear = Math.abs(of(line)) >= Math.max(1, 0.005 * Math.abs(baseline));
      return clear ? (of(line) > 0 ? 'worse' : 'better') : 'same';
    },
  };
}

function energyColumn(lines: readonly PlanLine[]): AnyColumn {
  const of = ({ figures }: PlanLine): number => figures.energy;
  return {
    ...{ head: 'energy', under: 'kWh a year, all fuels', of, always: true },
    ...{ from: Math.min(...lines.map(of)), to: Math.max(...lines.map(of)) },
    print: (line) => figureText(of(line), 0),
    look: () => 'same',
  };
}

/** Of each species that the air carries. */
function airColumns(lines: readonly PlanLine[]): AnyColumn[] {
  return lines[0]!.figures.air.map(({ name, label, unit, kind }) => {
    const of = ({ figures }: PlanLine): number => airLevel(figures, name) ?? 0;
    const before = of(lines[0]!);
    return {
      ...{ head: label, of, from: 0, to: Math.max(...lines.map(of)) },
      under: `${unit}, ${kind === 'mean' ? 'mean of the rooms' : 'night, room worst off'}`,
      print: (line) => figureText(of(line), airDecimals(before, of(line))),
      look: (line) => {
        const change = relativeChange(before, of(line));
        return Math.abs(change) < 0.1 ? 'same' : change > 0 ? 'worse' : 'better';
      },
    };
  });
}

function alertsColumn(lines: readonly PlanLine[]): AnyColumn {
  const of = ({ figures }: PlanLine): number => figures.alerts;
  return {
    ...{ head: 'alerts', under: 'a week', of, from: 0, to: Math.max(...lines.map(of)) },
    print: (line) => (of(line) === 0 ? 'none' : figureText(of(line), of(line) < 10 ? 1 : 0)),
    look: () => 'same',
    tells: (line, baseline) => of(line) !== of(baseline),
  };
}

/** What would print as 0. */
const LEAST = 0.05;
