import type { PlanMeasures } from '../../measures/plan-measures.ts';
import { yearsIn } from '../../measures/years-in.ts';
import type { PreparedPlan } from '../../scenario/prepared.ts';
import { type Cause, causesOf } from '../compare/plan-causes.ts';
import { type Effect, effectsOf } from '../effects/plan-effects.ts';
import type { PlanFigures } from '../effects/plan-figures.ts';
import { askedPlan } from './plan-questions.ts';
import { planVerdict } from './plan-sentence.ts';
import { type QuestionAnswer, questionAnswers } from './question-answers.ts';
import { surpriseOf } from './surprise.ts';

/** What a comparison comes to for somebody who has a minute. */
export interface ComparisonAnswers {
  readonly currency: string;
  /** Length of a period that is no year, from which money and energy are scaled; null for a year. [days] */
  readonly days: number | null;
  /** Whether cold is told of winter days; otherwise of the period. */
  readonly ofWinter: boolean;
  readonly questions: readonly QuestionAnswer[];
  /** What most people would not have guessed; empty for nothing. */
  readonly surprise: string;
  /** Names of plans that could not be run to their end. */
  readonly failed: readonly string[];
  /** One for each plan: the baseline, then from the cheapest to the dearest. */
  readonly plans: readonly PlanLine[];
}

/** A plan's few figures, and its sentence. */
export interface PlanLine {
  readonly figures: PlanFigures;
  /** What it is, as the scenario says; may be empty. */
  readonly description: string;
  /** What it gains and costs against the baseline in a few words; empty for the baseline. */
  readonly verdict: string;
  /** What it changes against the baseline, what matters most first. */
  readonly effects: readonly Effect[];
  /** By what it moves its figures, what moves most first; empty for the baseline. */
  readonly causes: readonly Cause[];
}

/**
 * @param runs    plans and their figures, the baseline first, at least one
 * @param failed  names of plans that have none
 */
export function comparisonAnswers(
  runs: readonly { readonly prepared: PreparedPlan; readonly measures: PlanMeasures }[],
  failed: readonly string[] = [],
): ComparisonAnswers {
  const plans = runs.map(({ prepared, measures }) => askedPlan(prepared, measures));
  const [baseline, ...others] = plans;
  if (baseline === undefined) throw new RangeError('comparisonAnswers: needs at least one plan');
  const { hours } = baseline.measures.period;
  const { rooms } = baseline.measures;
  const line = ({ prepared, measures, figures }: (typeof plans)[number]): PlanLine => ({
    figures,
    description: prepared.description,
    verdict: figures === baseline.figures ? '' : planVerdict(baseline.figures, figures),
    effects: effectsOf(baseline.figures, figures),
    causes: figures === baseline.figures ? [] : causesOf(baseline.measures, measures),
  });
  return {
    currency: baseline.measures.money.currency,
    days: yearsIn(hours) === 1 ? null : hours / 24,
    ofWinter: Object.values(rooms).some((room) => room.winter_cold_hours_per_day !== null),
    questions: questionAnswers(plans),
    surprise: surpriseOf(plans),
    failed,
    plans: [
      line(baseline),
      ...others.toSorted((a, b) => a.figures.money - b.figures.money).map(line),
    ],
  };
}
