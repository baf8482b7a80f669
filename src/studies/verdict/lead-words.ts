import { purchaseCostPerYear } from '../../measures/energy/purchase-cost-per-year.ts';
import { isYearOrMore } from '../../measures/years-in.ts';
import { capital } from '../../units/capital.ts';
import { figureText } from '../../units/figure-text.ts';
import { sumText } from '../../units/sum-text.ts';
import { andList } from '../../units/word-list.ts';
import { extraPerYear } from '../compare/plan-money.ts';
import type { Effect } from '../effects/effect.ts';
import { pct } from '../effects/percent.ts';
import { effectsOf } from '../effects/plan-effects.ts';
import { type InRoom, planFigures } from '../effects/plan-figures.ts';
import { areSeveral } from '../purchase/thing-words.ts';
import { billSaved } from './bill-saved.ts';
import type { DecisionSetup } from './decision-setup.ts';
import { type Guard, guardOf, HARM } from './guards.ts';
import { CLEAR, type Weighing } from './weigh-plan.ts';

/** A verdict as it is told: first in short, then the figures that carry it. */
export interface Lead {
  /** One sentence with a verb and its money, without a figure of the air. */
  readonly verdict: string;
  /** What carries it, in at most three sentences. */
  readonly because: readonly string[];
  /** Effects that these tell, so that nothing is told twice. */
  readonly told: readonly Effect[];
}

/** What a weighing comes to, in words. */
export function leadWords(setup: DecisionSetup, weighed: Weighing): Lead {
  switch (weighed.verdict) {
    case 'worth it':
      return worthIt(setup, weighed);
    case 'not needed':
      return notNeeded(setup);
    case 'something else first':
      return insteadWords(setup, weighed);
    case 'too little':
      return tooLittle(setup, weighed);
    case 'a trade-off':
      return tradeOff(setup, weighed);
  }
}

/**
 * Of a period that is no whole year: that it tells no verdict, and what was better and worse in it.
 *
 * @param length  of the period, with its unit
 */
export function partYearWords({ plan }: DecisionSetup, weighed: Weighing, length: string): Lead {
  // No verdict names what is a harm, so that it is told with what else gets worse.
  const losses = told(clearlyWorse({ ...weighed, harms: [] }));
  const gains = told(wanted(weighed));
  const helps = gains.length === 0 ? 'it makes nothing clearly better' : felt(gains);
  return {
    verdict: `${length} were run, which is no whole year: they cannot tell whether ${plan.plan} is worth its money.`,
    because: [`In these days ${helps}.`, ...but(losses)],
    told: [...gains, ...losses],
  };
}

function worthIt(setup: DecisionSetup, weighed: Weighing): Lead {
  const { plan, range } = setup;
  const { extra } = weighed;
  const gains = told(wanted(weighed));
  const losses = told(clearlyWorse(weighed));
  const verb = does(setup);
  const helps = [...withPlan(setup, gains, noMouldWords(setup, weighed)), ...but(losses)];
  const all = { told: [...gains, ...losses] };
  const plain = `${verb}: ${plan.plan} ${moneyWords(setup, extra)}.`;
  if (range.high < 0 && extra < 0) {
    const sure = range.high > range.low ? [SURE] : [];
    const nothing = gains.length + losses.length === 0 ? ['It makes nothing clearly worse.'] : [];
    return { ...all, verdict: plain, because: [...sure, ...helps, ...nothing] };
  }
  const because = [...helps, othersWords(weighed)];
  const money = `${sum(extra, setup)} a year`;
  if (namesWorth(weighed)) {
    return { ...all, because, verdict: `${verb} if ${areWorth(gains)} ${money} to you.` };
  }
  if (extra < 0 || roundsToNothing(extra)) return { ...all, because, verdict: plain };
  return { ...all, because, verdict: `${verb}: ${things(gains)} for ${money}.` };
}

/** Whether what is worth it is told by what it must be worth a year, for want of anything to hold it against. */
export const namesWorth = ({ extra, rival }: Pick<Weighing, 'extra' | 'rival'>): boolean =>
  rival === null && extra >= 0 && !roundsToNothing(extra);

/** "drier rooms and less mould are worth" */
function areWorth(gains: readonly Effect[]): string {
  const [only] = gains;
  const single = gains.length === 1 && !IN_SHORT[only!.of].several;
  return `${things(gains)} ${single ? 'is' : 'are'} worth`;
}

/** What else does as much for less: nothing, or what does not stand in the way of the plan. */
function othersWords({ aside, helped }: Weighing): string {
  if (aside === null) return NOTHING_ELSE;
  return `${aside.plan} does as much${againstWords(helped)} for less, and can be done as well.`;
}

/** " against damp and the cold", or nothing. */
const againstWords = (helped: readonly Guard[]): string =>
  helped.length === 0 ? '' : ` against ${andList(helped.map((guard) => HARM[guard]))}`;

function insteadWords(setup: DecisionSetup, weighed: Weighing): Lead {
  const { better, helped } = weighed;
  const less = sum(-extraPerYear(setup.plan, better!), setup);
  const baseline = planFigures(setup.baseline);
  const itsOwn = { helped, effects: effectsOf(baseline, planFigures(better!)) };
  const gains = told(wanted(weighed));
  return {
    verdict: `Something else first: ${better!.plan} does about as much${againstWords(helped)} and costs ${less} a year less.`,
    because: [...withPlan({ plan: better! }, told(wanted(itsOwn))), ...withPlan(setup, gains)],
    told: gains,
  };
}

function tooLittle(setup: DecisionSetup, weighed: Weighing): Lead {
  const { harms, effects, extra } = weighed;
  const buys = setup.purchases.length > 0;
  const money = `${buys ? 'Too little' : 'Not worth it'}: ${setup.plan.plan} ${littleMoney(setup, extra)}`;
  const losses = told(clearlyWorse(weighed));
  if (harms.length > 0) {
    const worse = told(harms);
    const because = withPlan(setup, worse);
    return { because, told: worse, verdict: `${money} and brings ${things(worse)}.` };
  }
  const better = effects.filter((effect) => effect.better);
  if (better.length === 0) {
    const verdict = `${money} and makes nothing clearly better.`;
    return { verdict, because: withPlan(setup, losses), told: losses };
  }
  const some = better.filter((effect) => setup.guards.includes(guardOf(effect)));
  // What it does besides is no measure of how little that is.
  const gains = told(some.length > 0 ? some : better);
  const little = `${money} and does little about ${andList(setup.guards.map((guard) => HARM[guard]))}`;
  const besides = some.length > 0 ? '' : ', which is something else';
  return {
    verdict: `${little}.`,
    because: [...withPlan(setup, gains, besides), ...but(losses)],
    told: [...gains, ...losses],
  };
}

function tradeOff(setup: DecisionSetup, weighed: Weighing): Lead {
  const gains = told(wanted(weighed));
  const losses = told(weighed.harms);
  const money = `A trade-off: ${setup.plan.plan} ${moneyWords(setup, weighed.extra)}`;
  const brings = gains.length === 0 ? ', but brings' : ` and brings ${things(gains)}, but`;
  return {
    verdict: `${money}${brings} ${things(losses)}.`,
    because:
      gains.length === 0 ? withPlan(setup, losses) : [...withPlan(setup, gains), ...but(losses)],
    told: [...gains, ...losses],
  };
}

/** Money that is too little: a saving that is not sure, or less than its price comes to. */
function littleMoney(setup: DecisionSetup, extra: number): string {
  const plain = moneyWords(setup, extra);
  if (roundsToNothing(extra)) return plain;
  if (extra < 0) return `${plain}, but not in nine of ten draws of the doubtful inputs,`;
  const bill = billSaved(setup.baseline, setup.plan);
  if (bill === null || setup.purchases.length === 0) return plain;
  const their = areSeveral(setup.purchases) ? 'their' : 'its';
  const alone = purchaseCostPerYear(setup.purchases, setup.discountRate);
  const beyond = roundsToNothing(alone - bill.price)
    ? ''
    : ' beyond that of what is not bought then';
  return `saves ${sum(bill.saved, setup)} a year on the bill, less than the ${sum(bill.price, setup)} that ${their} price comes to${beyond},`;
}

/** That what is guarded against does not happen without it. */
function notNeeded({ baseline, plan, guards, purchases }: DecisionSetup): Lead {
  const without = withoutWords(purchases);
  const { cold, mould, wettest, dampest } = planFigures(baseline);
  const year = isYearOrMore(baseline.period.hours);
  const there = year ? '' : ` ${without}`;
  const words: Readonly<Record<Guard, readonly string[]>> = {
    damp: [
      ...(year ? [`mould is not likely to start ${without} (${indexWords(mould.value)})`] : []),
      wettest.value >= 1
        ? `corners are wet ${mostWords(wettest)}${there}`
        : `corners are hardly ever wet${there}`,
      dampest.value >= 1
        ? `rooms are too damp ${mostWords(dampest)}`
        : 'rooms are hardly ever too damp',
    ],
    cold: [
      `hardly anybody is in rooms that are too cold ${without} (${figureText(cold.value, 1)} h a day at most)`,
    ],
    heat: [`hardly anybody is too warm ${without}`],
    dry: [`air is hardly ever too dry ${without}`],
    air: [`what the air carries hardly ever passes its limit ${without}`],
  };
  const parts = guards.flatMap((guard) => words[guard]);
  const each = Math.ceil(parts.length / MOST_SENTENCES);
  const starts = parts.flatMap((_, k) => (k % each === 0 ? [k] : []));
  return {
    verdict: `Not needed: what ${plan.plan} guards against does not happen here.`,
    because: starts.map((k) => `${capital(andList(parts.slice(k, k + each)))}.`),
    told: [],
  };
}

/** That it is damp air or wet corners that it helps against, and no mould. */
function noMouldWords({ baseline, purchases }: DecisionSetup, weighed: Weighing): string {
  const ofDamp = told(wanted(weighed)).some((effect) => guardOf(effect) === 'damp');
  if (!weighed.dampAlone || !ofDamp) return '';
  const { mould } = planFigures(baseline);
  return `, though mould is not likely to start ${withoutWords(purchases)} (${indexWords(mould.value)})`;
}

/** "9 % of the time at most (den)" */
const mostWords = ({ value, room }: InRoom): string =>
  `${pct(value)} of the time at most (${room})`;
const withoutWords = (purchases: DecisionSetup['purchases']): string =>
  areSeveral(purchases) ? 'without them' : 'without it';
const indexWords = (index: number): string => `index up to ${figureText(index, 1)} of 6`;

/** Of what it makes better what it is for, or all where that is nothing. */
function wanted({ effects, helped }: Pick<Weighing, 'effects' | 'helped'>): Effect[] {
  const better = effects.filter((effect) => effect.better);
  const found = better.filter((effect) => helped.includes(guardOf(effect)));
  return found.length > 0 ? found : better;
}

/** What it makes clearly worse that is no harm yet, such as air that is damp where no mould starts. */
const clearlyWorse = ({ effects, harms }: Pick<Weighing, 'effects' | 'harms'>): Effect[] =>
  effects.filter((effect) => !effect.better && effect.weight >= CLEAR && !harms.includes(effect));

const told = (effects: readonly Effect[]): readonly Effect[] => effects.slice(0, MOST_EFFECTS);

const felt = (effects: readonly Effect[]): string => andList(effects.map(({ words }) => words));

/** "With dry, rooms are dry enough 90 % of the time (was 70 %)."; none where there is nothing to tell. */
const withPlan = (
  { plan }: Pick<DecisionSetup, 'plan'>,
  effects: readonly Effect[],
  after = '',
): string[] => (effects.length === 0 ? [] : [`With ${plan.plan}, ${felt(effects)}${after}.`]);

const but = (effects: readonly Effect[]): string[] =>
  effects.length === 0 ? [] : [`But ${felt(effects)}.`];

/** "less mould and drier rooms", without figures. */
const things = (effects: readonly Effect[]): string =>
  andList(
    effects.map(({ of, better, word, short }) => {
      const usual = IN_SHORT[of];
      return short ?? (better ? usual.better : usual.worse) ?? word;
    }),
  );

/** "saves 56 GBP a year" @param extra  [currency/year] */
function moneyWords(setup: DecisionSetup, extra: number): string {
  if (roundsToNothing(extra)) return 'costs as much as doing nothing';
  return `${extra < 0 ? 'saves' : 'costs'} ${sum(Math.abs(extra), setup)} a year`;
}

const roundsToNothing = (extra: number): boolean => Number(figureText(Math.abs(extra), 0)) === 0;

const sum = (value: number, { plan }: DecisionSetup): string =>
  `${sumText(value, 0)} ${plan.money.currency}`;

function does({ purchases }: DecisionSetup): string {
  if (purchases.length === 0) return 'Do it';
  return areSeveral(purchases) ? 'Buy them' : 'Buy it';
}

/** What an effect is in two words; what the air carries has its own. */
const IN_SHORT: Readonly<
  Record<Effect['of'], { better?: string; worse?: string; several: boolean }>
> = {
  cold: { better: 'fewer cold hours', worse: 'more cold hours', several: true },
  warm: { better: 'fewer hot hours', worse: 'more hot hours', several: true },
  damp: { better: 'drier rooms', worse: 'damper rooms', several: true },
  dry: { better: 'less dry air', worse: 'drier air', several: false },
  spots: { better: 'drier corners', worse: 'wetter corners', several: true },
  mould: { several: false },
  air: { several: false },
};
/** What makes a rival: see `asGood`. */
const NOTHING_ELSE =
  'Nothing else that was tried does as much for less without making something else worse.';
const SURE = 'It saves some in nine of ten draws of the doubtful inputs or more.';
const MOST_EFFECTS = 2;
const MOST_SENTENCES = 3;
