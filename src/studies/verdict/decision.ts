import type { PlanMeasures } from '../../measures/plan-measures.ts';
import { figureText } from '../../units/figure-text.ts';
import { sumText } from '../../units/sum-text.ts';
import { unitBehind } from '../../units/unit-behind.ts';
import { extraPerYear } from '../compare/plan-money.ts';
import { planFigures } from '../effects/plan-figures.ts';
import type { DecisionSetup } from './decision-setup.ts';
import { type Lead, leadWords, partYearWords } from './lead-words.ts';
import { type MoneyTurn, moneyTurn } from './money-turn.ts';
import { partRivalWords, partWayWords } from './part-rival.ts';
import { turnWords } from './turn-words.ts';
import { type Verdict, type Weighing, weighPlan } from './weigh-plan.ts';

/** Whether to do or buy what a plan asks about, in words made from the figures. */
export interface Decision {
  readonly verdict: Verdict;
  /** The price, of what is bought or of a fuel, or the worth a year at which it turns. */
  readonly turn: MoneyTurn;
  /** False where an input may well be such that the verdict turns round. */
  readonly sure: boolean;
  /** The option that does as much for less, where that comes first. */
  readonly instead: string | null;
  /** The verdict itself first, in a short sentence, then what carries it, then the money at which it turns. */
  readonly sentences: readonly string[];
  /** What is to be said before the verdict; empty for nothing. */
  readonly first: string;
  /** Those of the sentences that carry the verdict with figures, at most three. */
  readonly because: readonly string[];
  /** Those of the sentences that say at which value of an input it turns round. */
  readonly turns: readonly string[];
}

/**
 * The verdict of `weighPlan` with its reasons. It is sure where no input of `flips` turns it round
 * at a likely value, where the money between the plan and its nearest rival is more than the
 * doubtful inputs move it, and where nine of ten draws of all of them come out alike.
 */
export function decision(setup: DecisionSetup): Decision {
  const { plan, range, steady = null, first = '' } = setup;
  const weighed = weighPlan(setup);
  const { verdict, extra, rival, better } = weighed;
  const apart = rival === null ? null : Math.abs(extraPerYear(plan, rival));
  const moved = Math.max(range.high - extra, extra - range.low);
  const turned = setup.flips.filter(({ value }) => value !== null);
  const near = turned.filter(({ likely }) => likely);
  const byMoney = verdict === 'worth it' || verdict === 'something else first';
  const close = byMoney && apart !== null && apart <= moved;
  const sure = near.length === 0 && !close && (steady === null || steady >= STEADY);
  const turn = moneyTurn({ ...setup, weighed });
  const turns = turned.map(flipWords);
  const { part } = planFigures(plan);
  const lead =
    part === null ? leadWords(setup, weighed) : partYearWords(setup, weighed, part.length);
  const further = furtherEffects(weighed, lead);
  // Of days that are no whole year, money a year and what it turns on tell nothing.
  const rest =
    part !== null
      ? further
      : [
          ...lesserWords(setup, weighed),
          ...turnWords(setup, weighed, turn),
          ...further,
          ...(rival !== null && better === null ? [rivalWords(plan, rival)] : []),
          ...turns,
          ...(close && near.length === 0 ? [notSureWords(setup, verdict, apart, moved)] : []),
        ];
  return {
    ...{ verdict, turn, sure, first, instead: better?.plan ?? null, because: lead.because },
    sentences: [lead.verdict, ...lead.because, ...rest],
    turns: part === null ? turns : [],
  };
}

/** What does as much against the main thing alone, else what goes part of the way, for less. */
export function lesserWords(setup: DecisionSetup, weighed: Weighing): string[] {
  const rival = partRivalWords(setup, weighed);
  return rival.length > 0 ? rival : partWayWords(setup, weighed);
}

/** What else people notice of it than its lead tells, of what is not needed all. */
export function furtherEffects(
  { effects, harms, helped, verdict }: Weighing,
  { told }: Pick<Lead, 'told'>,
): string[] {
  if (verdict !== 'not needed' && helped.length === 0 && harms.length === 0) return [];
  const words = effects
    .filter((effect) => !told.includes(effect))
    .slice(0, MOST_EFFECTS)
    .map((effect) => effect.words);
  if (words.length === 0) return [];
  return [`What ${told.length === 0 ? 'it' : 'else it'} changes: ${words.join('; ')}.`];
}

function rivalWords(plan: PlanMeasures, rival: PlanMeasures): string {
  const more = extraPerYear(plan, rival);
  const apart = `${money(Math.abs(more))} ${plan.money.currency} a year ${more < 0 ? 'less' : 'more'}`;
  return `The cheapest other way to as much, ${rival.plan}, costs ${apart}.`;
}

function flipWords({
  input,
  unit,
  today,
  value,
  relative,
  becomes,
}: DecisionSetup['flips'][number]): string {
  const there = `${figureText(value)}${unitBehind(unit)}`;
  const turns = `It would turn round${becomes === null ? '' : ` (${becomes})`} were`;
  return relative
    ? `${turns} ${input} ${there} against today instead of ${figureText(today)}.`
    : `${turns} ${input} ${there} instead of ${figureText(today)}.`;
}

function notSureWords(
  { plan }: DecisionSetup,
  verdict: Verdict,
  apart: number | null,
  moved: number,
): string {
  const { currency } = plan.money;
  return (
    `This is not sure: doubtful inputs move the money by ${money(moved)} ${currency} a year, and only ` +
    `${money(apart ?? 0)} lie between ${verdict === 'worth it' ? 'it and the next' : 'the two'}.`
  );
}

const money = (value: number): string => sumText(value, 0);

const MOST_EFFECTS = 4;
/** Share of draws that must come out alike for an answer that stands. */
const STEADY = 0.9;
