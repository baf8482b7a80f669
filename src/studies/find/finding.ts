import type { PlanMeasures } from '../../measures/plan-measures.ts';
import type { PreparedPlan } from '../../scenario/prepared.ts';
import { type PlanVariant, type RunVariant, withEdit } from '../plan-variant.ts';
import type { WatchedRun } from '../report-study.ts';

/** Something that was asked for, and what was found by running the home again and again. */
export interface Finding {
  /** What was looked for, in words. */
  readonly question: string;
  /** Null where there is no such value. */
  readonly value: number | null;
  readonly unit: string;
  /** Where it was looked for, and how nearly it is known. */
  readonly low: number;
  readonly high: number;
  readonly tolerance: number;
  readonly answer: readonly string[];
  /** What the column `figure` of the runs is. */
  readonly figure: string;
  readonly runs: readonly FindingRun[];
}

/** One run of a search. */
export interface FindingRun {
  /** What was tried; "as it is" for the home without a change. */
  readonly tried: string;
  readonly figure: number;
  /** All money. [currency/year] */
  readonly money: number;
  readonly holds: boolean;
}

/** The home that is asked about, and ways to run it. */
export interface FindSetup {
  readonly variant: PlanVariant;
  readonly prepared: PreparedPlan;
  /** The scenario as the plan has it, as plain values. */
  readonly raw: unknown;
  readonly run: RunVariant;
  readonly watch: (variant: PlanVariant) => WatchedRun | Promise<WatchedRun>;
}

/** The plan with an edit laid on. @param edit  a merge patch */
export const edited = ({ variant }: FindSetup, edit: unknown): PlanVariant =>
  withEdit(variant, edit);

/** The room where something is greatest, and how great it is. @param only  the one room that is looked at; all where not given */
export function worstRoom(
  { rooms }: PlanMeasures,
  of: (room: PlanMeasures['rooms'][string]) => number,
  only?: string,
): { readonly room: string; readonly figure: number } {
  const all = Object.entries(rooms)
    .filter(([room]) => only === undefined || room === only)
    .map(([room, figures]) => ({ room, figure: of(figures) }));
  return all.reduce((worst, one) => (one.figure > worst.figure ? one : worst));
}
