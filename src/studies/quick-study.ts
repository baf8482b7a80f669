import { comparisonAnswers } from './answers/comparison-answers.ts';
import { memoizedRuns } from './memoized-runs.ts';
import { type OptionsSetup, writtenOptions } from './options.ts';
import type { PlanVariant } from './plan-variant.ts';
import {
  answerOf,
  PICTURED,
  type PicturedOption,
  type ReportStudy,
  roomInQuestion,
  type WatchedRun,
} from './report-study.ts';

/** Plans to look at, and how one is run. */
export interface QuickStudySetup extends Omit<OptionsSetup, 'run'> {
  /** Runs a plan and keeps its hours. */
  readonly watch: (variant: PlanVariant) => Promise<WatchedRun>;
}

/**
 * What can be told of plans from one run each: no proposals, no doubts, nothing asked of a purchase.
 *
 * @throws InputProblems as `preparePlan`
 */
export async function quickStudy(setup: QuickStudySetup): Promise<ReportStudy> {
  const { scenario, watch } = setup;
  const watched = new Map<string, WatchedRun>();
  const run = memoizedRuns(async (variant) => {
    const ran = await watch(variant);
    watched.set(variant.plan, ran);
    return ran.measures;
  });
  const options = await writtenOptions({ ...setup, run });
  const pictured = options
    .slice(0, PICTURED)
    .map((option): PicturedOption => ({ ...watched.get(option.name)!, option }));
  const asked = comparisonAnswers(options);
  return {
    ...{ scenario, options, pictured, asked, purchase: null, bargain: null },
    ...{ untried: [], unusableDoubts: [] },
    answer: answerOf(options),
    lines: asked.plans,
    room: roomInQuestion(options[0]!),
    runs: options.length,
  };
}
