import type { Ledger } from '../engine/ledger.ts';
import type { PlanMeasures } from '../measures/plan-measures.ts';
import type { PlanSeries } from '../measures/series/plan-series.ts';
import type { Scenario } from '../scenario/read-scenario.ts';
import {
  type ComparisonAnswers,
  comparisonAnswers,
  type PlanLine,
} from './answers/comparison-answers.ts';
import { type Answer, answerInWords } from './compare/answer-in-words.ts';
import { compareMeasures } from './compare/compare.ts';
import { type DoubtfulInput, doubtfulInputs } from './doubts/doubtful-inputs.ts';
import { statedDoubts } from './doubts/stated-doubts.ts';
import { memoizedRuns } from './memoized-runs.ts';
import { allOptions, type Option, type OptionsSetup } from './options.ts';
import type { PlanVariant } from './plan-variant.ts';
import { dampestRoom } from './proposals/dampest-room.ts';
import { aboutPurchase } from './purchase/about-purchase.ts';
import { type PurchaseStudy, purchaseStudy } from './purchase-study.ts';

/** All that a report tells. */
export interface ReportStudy {
  readonly scenario: Scenario;
  /** The baseline first, then plans, proposals, and the room kept warmer. */
  readonly options: readonly Option[];
  /** Null where nothing is bought that could be asked about. */
  readonly purchase: PurchaseStudy | null;
  /** Doubtful inputs that were left aside, because so many were asked for and no more. */
  readonly untried: readonly DoubtfulInput[];
  /** Doubts of the scenario that name no number of the two plans, or only one beyond their range. */
  readonly unusableDoubts: readonly string[];
  /** What the plans of the scenario do, in words. */
  readonly answer: Answer;
  /** What those plans ask, each question answered in a few sentences, and what is surprising. */
  readonly asked: Pick<ComparisonAnswers, 'questions' | 'surprise'>;
  /** Every option with its few figures: the baseline, then from the cheapest to the dearest. */
  readonly lines: readonly PlanLine[];
  /** Whose air the pictures show unless asked otherwise. */
  readonly room: string;
  /** The options that pictures show hour by hour, the baseline first. */
  readonly pictured: readonly PicturedOption[];
  /** How many years, or periods, were simulated. */
  readonly runs: number;
}

export interface PicturedOption extends WatchedRun {
  readonly option: Option;
}

/** A run with what pictures are made from. */
export interface WatchedRun {
  readonly measures: PlanMeasures;
  readonly series: PlanSeries;
  readonly ledger: Ledger;
}

export interface ReportStudySetup extends OptionsSetup {
  /** The plan or proposal to ask about; null for the first that dries air. */
  readonly about: string | null;
  /** Told when that name is none of those that could be asked about, which are handed in; throws. */
  readonly refuseAbout: (known: readonly string[]) => never;
  /** How many doubtful inputs are tried at most. */
  readonly mostDoubts: number;
  /** Runs a plan and keeps its hours. */
  readonly watch: (variant: PlanVariant) => WatchedRun | Promise<WatchedRun>;
}

/**
 * Runs whatever a report needs: every plan, what the program proposes, the purchase with its doubts
 * and break-evens, and the hours of a few plans for pictures.
 *
 * @throws InputProblems as `preparePlan`
 */
export async function reportStudy(setup: ReportStudySetup): Promise<ReportStudy> {
  const { scenario } = setup;
  let runs = 0;
  const run = memoizedRuns(async (variant) => {
    const measures = await setup.run(variant);
    runs++; // only now: one that is refused simulates nothing
    return measures;
  });
  const options = await allOptions({ ...setup, run });
  const about = aboutPurchase(options, setup.about);
  if (about === null && setup.about !== null) {
    setup.refuseAbout(
      options.map(({ name }) => name).filter((name) => aboutPurchase(options, name)),
    );
  }
  const doubts = doubtsOf(scenario, options[0]!, about?.option ?? options[0]!);
  const inputs = doubts.inputs.slice(0, setup.mostDoubts);
  const purchase =
    about === null ? null : await purchaseStudy({ ...setup, about, options, inputs, run });
  const warmer = purchase?.warmer ?? null;
  const own = options.filter(({ origin }) => origin !== 'proposed');
  const pictured = await Promise.all(
    worthPicturing(options, purchase).map(async (option) => {
      runs++;
      return { ...(await setup.watch(option.variant)), option };
    }),
  );
  const all = warmer === null ? options : [...options, warmer];
  return {
    ...{ scenario, purchase, pictured, runs },
    answer: answerOf(own),
    asked: comparisonAnswers(own),
    lines: comparisonAnswers(all).plans,
    options: all,
    untried: purchase === null ? doubts.inputs : doubts.inputs.slice(setup.mostDoubts),
    unusableDoubts: doubts.unusable,
    room: about?.room ?? dampestRoom(options[0]!.measures) ?? firstRoom(options[0]!),
  };
}

/**
 * What the scenario itself doubts comes before what the program assumed. A doubt is tried only
 * where it is one: a plan that sets the number to something else keeps what it sets.
 */
function doubtsOf(scenario: Scenario, baseline: Option, plan: Option) {
  const had = statedDoubts(scenario, baseline.prepared, baseline.raw);
  const has = statedDoubts(scenario, plan.prepared, plan.raw);
  const without = (inputs: readonly DoubtfulInput[], path: string): boolean =>
    inputs.every((input) => input.path !== path);
  const stated = [
    ...had.inputs.map(
      (input): DoubtfulInput =>
        without(has.inputs, input.path) ? { ...input, only: 'baseline' } : input,
    ),
    ...has.inputs
      .filter(({ path }) => without(had.inputs, path))
      .map((input): DoubtfulInput => ({ ...input, only: 'plan' })),
  ];
  const assumed = doubtfulInputs(
    baseline.prepared.assumed,
    plan.prepared.assumed,
    Number.POSITIVE_INFINITY,
  ).filter(({ path }) => without(stated, path));
  const unusable = scenario.doubts.map(({ path }) => path).filter((path) => without(stated, path));
  return { inputs: [...stated, ...assumed], unusable };
}

/** The baseline, what is asked about, what comes first instead, the warmer room; then the rest in order. */
function worthPicturing(options: readonly Option[], purchase: PurchaseStudy | null): Option[] {
  const [baseline, ...others] = options;
  const chosen = [
    baseline!,
    ...(purchase === null ? [] : [purchase.about.option]),
    ...others.filter(({ name }) => name === purchase?.decision?.instead),
    ...(purchase === null || purchase.warmer === null ? [] : [purchase.warmer]),
    ...others.filter(({ origin }) => origin === 'plan'),
    ...others,
  ];
  return [...new Set(chosen)].slice(0, PICTURED);
}

function answerOf(plans: readonly Option[]): Answer {
  const purchases = plans.map(({ prepared }) => prepared);
  return answerInWords(
    compareMeasures(
      plans.map(({ measures }) => measures),
      purchases,
    ),
  );
}

const firstRoom = ({ prepared }: Option): string => prepared.home.rooms[0]!.name;

/** Options whose hours a page has room for. */
const PICTURED = 8;
