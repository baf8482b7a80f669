import { settingWords } from '../../scenario/yaml/settings.ts';
import type { PlanVariant } from '../plan-variant.ts';
import type { Axis } from './axis.ts';
import type { SweepPoints } from './sweep-points.ts';

/** A home of a stock: its name, and what it has of its own. */
export interface StockHome {
  readonly name: string;
  /** `/pointer=value` words. */
  readonly set: readonly string[];
}

/** Everything that a sweep runs: each home with each setting of the axes and each plan. */
export interface SweepLayout {
  /** Null where the scenario's own home is the only one. */
  readonly homes: readonly StockHome[] | null;
  readonly axes: readonly Axis[];
  readonly points: SweepPoints;
  readonly plans: readonly string[];
  /** `/pointer=value` words laid on all of them. */
  readonly set: readonly string[];
}

/** One run of a sweep. */
export interface SweepRun {
  /** Counted from 1. */
  readonly number: number;
  readonly home: string | null;
  readonly plan: string;
  /** Values of the axes by their pointers. */
  readonly values: Readonly<Record<string, number>>;
  readonly variant: PlanVariant;
}

/** How many runs there are. */
export const runsOf = ({ homes, points, plans }: SweepLayout): number =>
  (homes?.length ?? 1) * points.count * plans.length;

/** A run by its number: homes in turn, within each its settings, within each of those the plans. */
export function sweepRun(layout: SweepLayout, number: number): SweepRun {
  const { homes, axes, points, plans, set } = layout;
  const k = number - 1;
  const plan = plans[k % plans.length]!;
  const at = Math.floor(k / plans.length);
  const home = homes?.[Math.floor(at / points.count)] ?? null;
  const values = points.at(at % points.count);
  const words = axes.map(({ pointer }, d) => settingWords(pointer, String(values[d])));
  return {
    number,
    home: home?.name ?? null,
    plan,
    values: Object.fromEntries(axes.map(({ pointer }, d) => [pointer, values[d]!])),
    variant: { plan, set: [...set, ...(home?.set ?? []), ...words] },
  };
}

/** Whether a run belongs to a part of a sweep: parts take turns. @param part  counted from 1 */
export const inPart = (number: number, part: number, parts: number): boolean =>
  (number - 1) % parts === part - 1;

/** How many runs a part of a sweep has. @param part  counted from 1 */
export const partCount = (runs: number, part: number, parts: number): number =>
  Math.floor((runs - part) / parts) + 1;
