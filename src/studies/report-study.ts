import type { Ledger } from '../engine/ledger/ledger.ts';
import type { PlanMeasures } from '../measures/plan-measures.ts';
import type { PlanSeries } from '../measures/series/plan-series.ts';
import type { Scenario } from '../scenario/read-scenario.ts';
import { type AboutPlan, aboutPlan } from './about-plan.ts';
import {
  type ComparisonAnswers,
  comparisonAnswers,
  type PlanLine,
} from './answers/comparison-answers.ts';
import { type Answer, answerInWords } from './compare/answer-in-words.ts';
import { compareMeasures } from './compare/compare.ts';
import { type DoubtfulInput, doubtfulInputs } from './doubts/doubtful-inputs.ts';
import { type DrawChoice, type PlanDraws, planDraws } from './doubts/plan-draws.ts';
import { statedDoubts } from './doubts/stated-doubts.ts';
import type { InputWords } from './doubts/verdict-flips.ts';
import { memoizedRuns } from './memoized-runs.ts';
import { allOptions, type Option, type OptionsSetup } from './options.ts';
import { type PlanStudy, planStudy } from './plan-study.ts';
import type { PlanVariant, RunVariant } from './plan-variant.ts';
import { dampestRoom } from './proposals/dampest-room.ts';
import { type SetpointBargain, setpointBargain } from './sweep/setpoint-bargain.ts';

/** All that a report tells. */
export interface ReportStudy {
  readonly scenario: Scenario;
  /** The baseline first, then plans, proposals, and the room kept warmer. */
  readonly options: readonly Option[];
  /** The plan that is asked about, be it a purchase or not; null where nothing is asked. */
  readonly purchase: PlanStudy | null;
  /** Doubtful inputs that were not drawn. */
  readonly untried: readonly DoubtfulInput[];
  /** Doubts of the scenario that name no number of the two plans, or only one beyond their range. */
  readonly unusableDoubts: readonly string[];
  /** What the plans of the scenario do, in words. */
  readonly answer: Answer;
  /** What those plans ask, each question answered in a few sentences, and what is surprising. */
  readonly asked: Pick<ComparisonAnswers, 'questions' | 'surprise' | 'caveat'>;
  /** Every option with its few figures: the baseline, then from the cheapest to the dearest. */
  readonly lines: readonly PlanLine[];
  /** Money against hours outside the bands over the thermostats; null where nothing is heated or asked. */
  readonly bargain: SetpointBargain | null;
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
  /** The plan or proposal to ask about, whatever it changes; null for the first that dries air, or is bought where nothing is damp. */
  readonly about: string | null;
  /** Told when that name is none of those that could be asked about, which are handed in; throws. */
  readonly refuseAbout: (known: readonly string[]) => never;
  /** Names and units of inputs, for those who have not seen the scenario. */
  readonly inputWords: InputWords;
  readonly draw: DrawChoice;
  /** Runs a plan in a year of weather, by its number; the first is that of `run`. */
  readonly runIn: (variant: PlanVariant, year: number) => PlanMeasures | Promise<PlanMeasures>;
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
  const counted = (work: RunVariant): RunVariant =>
    memoizedRuns(async (variant) => {
      const measures = await work(variant);
      runs++; // only now: one that is refused simulates nothing
      return measures;
    });
  const run = counted(setup.run);
  const inYear = Array.from({ length: setup.draw.years }, (_, year) =>
    year === 0 ? run : counted((variant) => setup.runIn(variant, year)),
  );
  const options = await allOptions({ ...setup, run });
  const about = aboutPlan(options, setup.about);
  if (about === null && setup.about !== null) {
    setup.refuseAbout(options.slice(1).map(({ name }) => name));
  }
  const doubts = doubtsOf(scenario, options[0]!, about);
  const draws =
    about === null
      ? null
      : await planDraws({
          ...{ ...setup.draw, scenario, files: setup.files },
          ...{ baseline: options[0]!, plan: about.option, air: about.guards.includes('air') },
          run: (variant, year) => inYear[year]!(variant),
        });
  const purchase =
    about === null
      ? null
      : await planStudy({
          ...{ ...setup, about, options, draws, run },
          inputs: strongest(draws, doubts.inputs),
        });
  const warmer = purchase?.warmer ?? null;
  const own = options.filter(({ origin }) => origin !== 'proposed');
  const pictured = await Promise.all(
    worthPicturing(options, purchase).map(async (option) => {
      runs++;
      return { ...(await setup.watch(option.variant)), option };
    }),
  );
  const all = warmer === null ? options : [...options, warmer];
  const bargain =
    about === null ? null : await setpointBargain(all, [options[0]!, about.option], run);
  return {
    ...{ scenario, purchase, pictured, bargain, runs },
    answer: answerOf(own),
    asked: comparisonAnswers(
      own,
      [],
      options.filter(({ origin }) => origin === 'proposed'),
    ),
    lines: comparisonAnswers(all).plans,
    options: all,
    untried: doubts.inputs.filter(
      ({ path }) => draws?.ranked.every((one) => one.path !== path) ?? true,
    ),
    unusableDoubts: doubts.unusable,
    room: about?.room ?? roomInQuestion(options[0]!),
  };
}

/**
 * What the scenario itself doubts comes before what the program assumed. A doubt is tried only
 * where it is one: a plan that sets the number to something else keeps what it sets.
 */
function doubtsOf(scenario: Scenario, baseline: Option, about: AboutPlan | null) {
  const plan = about?.option ?? baseline;
  const had = statedDoubts(scenario, baseline.prepared, baseline.raw);
  const has = statedDoubts(scenario, plan.prepared, plan.raw);
  const alike = (inputs: readonly DoubtfulInput[], { path, value }: DoubtfulInput): boolean =>
    inputs.some((input) => input.path === path && input.value === value);
  const without = (inputs: readonly DoubtfulInput[], path: string): boolean =>
    inputs.every((input) => input.path !== path);
  const stated = [
    ...had.inputs.map(
      (input): DoubtfulInput => (alike(has.inputs, input) ? input : { ...input, only: 'baseline' }),
    ),
    ...has.inputs
      .filter((input) => !alike(had.inputs, input))
      .map((input): DoubtfulInput => ({ ...input, only: 'plan' })),
  ];
  const assumed = doubtfulInputs(
    baseline.prepared.assumed,
    plan.prepared.assumed,
    Number.POSITIVE_INFINITY,
    about?.guards.includes('air') ?? false,
  ).filter(({ path }) => without(stated, path));
  const unusable = scenario.doubts.map(({ path }) => path).filter((path) => without(stated, path));
  return { inputs: [...stated, ...assumed], unusable };
}

/** Doubtful inputs that are worth a look by themselves: those that the draws follow most. */
function strongest(draws: PlanDraws | null, inputs: readonly DoubtfulInput[]): DoubtfulInput[] {
  const most = draws?.ranked.slice(0, TRIED_ALONE) ?? [];
  return most.flatMap(({ path }) => inputs.filter((input) => input.path === path));
}

/** The baseline, what is asked about, what comes first instead, the warmer room; then the rest in order. */
function worthPicturing(options: readonly Option[], purchase: PlanStudy | null): Option[] {
  const [baseline, ...others] = options;
  const chosen = [
    baseline!,
    ...(purchase === null ? [] : [purchase.about.option]),
    ...others.filter(({ name }) => name === purchase?.decision.instead),
    ...(purchase === null || purchase.warmer === null ? [] : [purchase.warmer]),
    ...others.filter(({ origin }) => origin === 'plan'),
    ...others,
  ];
  return [...new Set(chosen)].slice(0, PICTURED);
}

/** What plans do, in words, the baseline first. */
export function answerOf(plans: readonly Option[]): Answer {
  const purchases = plans.map(({ prepared }) => prepared);
  return answerInWords(
    compareMeasures(
      plans.map(({ measures }) => measures),
      purchases,
    ),
  );
}

/** The dampest room, or the first. */
export const roomInQuestion = ({ prepared, measures }: Option): string =>
  dampestRoom(measures) ?? prepared.home.rooms[0]!.name;

/** Options whose hours a page has room for. */
export const PICTURED = 6;
/** Doubtful inputs that are tried low and high by themselves. */
const TRIED_ALONE = 6;
