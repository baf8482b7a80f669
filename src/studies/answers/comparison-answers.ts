import type { PlanMeasures } from '../../measures/plan-measures.ts';
import type { PreparedPlan } from '../../scenario/prepared.ts';
import { type Cause, causesOf } from '../compare/plan-causes.ts';
import type { Effect } from '../effects/effect.ts';
import { effectsOf } from '../effects/plan-effects.ts';
import type { PlanFigures } from '../effects/plan-figures.ts';
import { askedPlan } from './plan-questions.ts';
import { planVerdict } from './plan-sentence.ts';
import { type QuestionAnswer, questionAnswers } from './question-answers.ts';
import { surpriseOf } from './surprise.ts';

/** What a comparison comes to for somebody who has a minute. */
export interface ComparisonAnswers {
  readonly currency: string;
  /** What to know before any answer: weather of elsewhere, no price, a period that is no whole year; empty otherwise. */
  readonly caveat: string;
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
 * @param runs       plans and their figures, the baseline first, at least one
 * @param failed     names of plans that have none
 * @param proposals  what the program proposes, which might be done instead of a purchase
 */
export function comparisonAnswers(
  runs: readonly { readonly prepared: PreparedPlan; readonly measures: PlanMeasures }[],
  failed: readonly string[] = [],
  proposals: typeof runs = [],
): ComparisonAnswers {
  const plans = runs.map(({ prepared, measures }) => askedPlan(prepared, measures));
  const [baseline, ...others] = plans;
  if (baseline === undefined) throw new RangeError('comparisonAnswers: needs at least one plan');
  const { rooms } = baseline.measures;
  const line = ({ prepared, measures, figures }: (typeof plans)[number]): PlanLine => ({
    figures,
    description: prepared.description,
    verdict: figures === baseline.figures ? '' : planVerdict(baseline.figures, figures),
    effects: effectsOf(baseline.figures, figures),
    causes:
      figures === baseline.figures
        ? []
        : causesOf(baseline.measures, measures).filter(
            (cause) => !OF_YEARS.has(cause.of) || figures.part === null,
          ),
  });
  const questions = questionAnswers(
    plans,
    proposals.map(({ prepared, measures }) => askedPlan(prepared, measures)),
  );
  return {
    currency: baseline.measures.money.currency,
    caveat: [beforehand(baseline.measures), caveatOf(baseline.figures)]
      .filter((words) => words !== '')
      .join(' '),
    ofWinter: Object.values(rooms).some((room) => room.winter_cold_hours_per_day !== null),
    questions,
    surprise: surpriseOf(
      plans,
      questions.flatMap(({ told }) => told),
    ),
    failed,
    plans: [
      line(baseline),
      ...others.toSorted((a, b) => a.figures.money - b.figures.money).map(line),
    ],
  };
}

/** Shutters that nobody needs on one coast are needed on another, and no answer is worth more than its prices. */
const beforehand = ({ cautions }: PlanMeasures): string =>
  cautions
    .filter(({ id }) => BEFOREHAND.includes(id))
    .map(({ text }) => text)
    .join(' ');

function caveatOf({ part }: PlanFigures): string {
  if (part === null) return '';
  return `${part.length.replace('\u00a0', ' ')} were run, which is no whole year: they cannot tell what a year costs, nor whether a purchase pays.`;
}

/** Causes whose words tell a year's amount. */
const OF_YEARS: ReadonlySet<Cause['of']> = new Set(['open windows', 'water taken out', 'purchase']);

/** Cautions without which no answer is to be read. */
const BEFOREHAND: readonly string[] = ['weather-elsewhere', 'all-prices-assumed', 'price-unknown'];
