import type { PlanMeasures } from '../../measures/plan-measures.ts';

/** What came of one run of a sweep; a line of its NDJSON file. */
export interface SweepResult {
  /** Fingerprint of everything that decides the figures of the sweep. */
  readonly sweep: string;
  /** Number of the run, from 1. */
  readonly run: number;
  /** How many runs the sweep has. */
  readonly of: number;
  /** Home of a stock; null where there is only the scenario's own. */
  readonly home: string | null;
  readonly plan: string;
  /** Values of what varies, by RFC 6901 pointers. */
  readonly values: Readonly<Record<string, number>>;
  /** Why there are no figures; null where there are. */
  readonly problem: string | null;
  /** As `run --json` prints them; null where the run could not be made. */
  readonly figures: SweepFigures | null;
}

/** Figures of a run; lists are left out where only CSV is made of them. */
export type SweepFigures = Omit<PlanMeasures, ListKey> & Partial<Pick<PlanMeasures, ListKey>>;

type ListKey = 'assumed' | 'cautions' | 'notices';

/** Figures without lists, which CSV has no room for. */
export function withoutLists({
  assumed: _a,
  cautions: _c,
  notices: _n,
  ...figures
}: PlanMeasures): SweepFigures {
  return figures;
}
