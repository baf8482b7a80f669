import { hoursOutsideBands as outside, roomHours } from '../../measures/comfort/room-hours.ts';
import type { PlanMeasures } from '../../measures/plan-measures.ts';
import { figureText } from '../../units/figure-text.ts';
import { sumText } from '../../units/sum-text.ts';
import { andList } from '../../units/word-list.ts';
import { GROWTH } from '../effects/mould-marks.ts';
import type { Comparison } from './compare.ts';
import { type Trades, tradesOf } from './trade-sentences.ts';

/**
 * The comparison in a few sentences, made from its figures alone: which plan costs least, which
 * keeps the rooms in their bands longest, what each gives up for it, where mould gets likelier, and
 * what heating by presence and bought things get and give.
 *
 * Hours outside are room-hours: too cold or too warm while somebody is in the room, too damp or too
 * dry at any time, because damp does its work in empty rooms too. Plans whose printed figures are
 * the same count as equal.
 */
export function answerInWords(comparison: Comparison): Answer {
  return { sentences: costAndComfort(comparison), trades: tradesOf(comparison) };
}

/** What a comparison comes to, in words that stand as they are wherever they are printed. */
export interface Answer {
  /** One paragraph; the first sentence stands by itself where there is room for one only. */
  readonly sentences: readonly string[];
  /** What some plans get and give, each list under what its items have in common. */
  readonly trades: readonly Trades[];
}

function costAndComfort({ baseline, plans }: Comparison): string[] {
  const [first, ...others] = plans;
  if (first === undefined) return [];
  if (others.length === 0) {
    return [
      `Only ${first.plan} was run: it costs ${costText(first)} a year and leaves its rooms ` +
        `outside their bands for ${hoursText(outside(first))} (${IN_WORDS}).`,
    ];
  }
  const cheapest = least(plans, cost);
  const kindest = least(plans, outside);
  const cheap = cheapest[0]!;
  // Among equally kind plans the dear ones give money away for nothing.
  const kind = least(kindest, cost)[0]!;
  const both = cheapest.filter((plan) => kindest.includes(plan));
  return [
    costSentence(cheapest, plans, baseline),
    ...(both.length > 0 ? bestOfBoth(both, kind, plans) : kindestSentences(kindest, kind, cheap)),
    ...mouldSentence(cheap, plans),
  ];
}

function bestOfBoth(
  both: readonly PlanMeasures[],
  kind: PlanMeasures,
  plans: readonly PlanMeasures[],
): string[] {
  const keeps =
    `${names(both)} ${both.length > 1 ? 'also keep' : 'also keeps'} the rooms in their bands ` +
    `longest (${hoursText(outside(kind))} ${IN_WORDS})`;
  const others = plans.filter((plan) => !both.includes(plan));
  const [best] = both;
  const rival = others[0];
  // Even a plan that is best on the whole may be worse in one kind of hours.
  const lost = best === undefined || rival === undefined ? '' : givenUp(best, rival);
  if (lost === '') return [`${keeps}, so nothing is given up for the money.`];
  return [`${keeps}.`, `What ${best!.plan} gives up against ${rival!.plan}: ${lost}.`];
}

function kindestSentences(
  kindest: readonly PlanMeasures[],
  kind: PlanMeasures,
  cheap: PlanMeasures,
): string[] {
  return [
    `${names(kindest)} ${kindest.length > 1 ? 'keep' : 'keeps'} the rooms in their bands longest ` +
      `(${hoursText(outside(kind))} ${IN_WORDS}, against ${figureText(outside(cheap), 0)} with ` +
      `${cheap.plan}), for ${money(cost(kind) - cost(cheap), kind)} a year more.`,
    `What ${cheap.plan} gives up against ${kind.plan}: ${givenUp(cheap, kind) || NOTHING_MUCH}.`,
  ];
}

/** Says so where the cheapest plan lets mould grow that another plan would not. */
function mouldSentence(cheap: PlanMeasures, plans: readonly PlanMeasures[]): string[] {
  const safest = plans.reduce((a, b) => (mould(b) < mould(a) ? b : a));
  if (mould(cheap) < GROWTH || mould(cheap) - mould(safest) < NOTABLE) return [];
  return [
    `Mould at cold spots is likelier with ${cheap.plan}: index up to ${figureText(mould(cheap), 1)} ` +
      `of 6 (3 is seen by eye), against ${figureText(mould(safest), 1)} with ${safest.plan}.`,
  ];
}

function costSentence(
  cheapest: readonly PlanMeasures[],
  plans: readonly PlanMeasures[],
  baseline: string,
): string {
  const cheap = cheapest[0]!;
  if (cheapest.length === plans.length) {
    return `All plans cost the same: ${costText(cheap)} a year.`;
  }
  const base = plans.find(({ plan }) => plan === baseline)!;
  const saved = cheapest.includes(base)
    ? ''
    : `, ${money(cost(base) - cost(cheap), cheap)} less than ${baseline}`;
  return (
    `${names(cheapest)} ${cheapest.length > 1 ? 'cost' : 'costs'} least: ` +
    `${costText(cheap)} a year${saved}.`
  );
}

/** The kinds of hours in which one plan is worse than another, worst first. */
function givenUp(worse: PlanMeasures, better: PlanMeasures): string {
  const kinds = KINDS.map(({ words, hours }) => ({ words, more: hours(worse) - hours(better) }))
    .filter(({ more }) => Math.round(more) > 0)
    .sort((a, b) => b.more - a.more)
    .map(({ words, more }) => `${figureText(more, 0)} more room-hours ${words}`);
  return kinds.join(', ');
}

/** All plans whose printed figure is the least. */
function least(
  plans: readonly PlanMeasures[],
  figure: (plan: PlanMeasures) => number,
): readonly PlanMeasures[] {
  const lowest = Math.min(...plans.map((plan) => Math.round(figure(plan))));
  return plans.filter((plan) => Math.round(figure(plan)) === lowest);
}

function names(plans: readonly PlanMeasures[]): string {
  return andList(plans.map(({ plan }) => plan));
}

const KINDS = [
  {
    words: 'too cold with somebody there',
    hours: (p: PlanMeasures) => roomHours(p, 'outside_band_occupied_hours', 'temperature_low'),
  },
  {
    words: 'too warm with somebody there',
    hours: (p: PlanMeasures) => roomHours(p, 'outside_band_occupied_hours', 'temperature_high'),
  },
  {
    words: 'too damp',
    hours: (p: PlanMeasures) => roomHours(p, 'outside_band_hours', 'humidity_high'),
  },
  {
    words: 'too dry',
    hours: (p: PlanMeasures) => roomHours(p, 'outside_band_hours', 'humidity_low'),
  },
];

/** What puts a room-hour outside the bands. */
const IN_WORDS = 'too cold, warm, damp or dry';
const NOTHING_MUCH = 'less than a room-hour of any kind';
/** A difference of mould indices that is worth a sentence. */
const NOTABLE = 0.3;

const mould = ({ rooms }: PlanMeasures): number =>
  Math.max(...Object.values(rooms).map((room) => room.mould_index_peak));
const cost = (plan: PlanMeasures): number => plan.money.total_per_year;
const money = (sum: number, plan: PlanMeasures): string =>
  `${sumText(sum, 0)} ${plan.money.currency}`;
const costText = (plan: PlanMeasures): string => money(cost(plan), plan);
const hoursText = (hours: number): string => `${figureText(hours, 0)} room-hours`;
