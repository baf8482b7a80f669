import { isYearOrMore } from '../../measures/years-in.ts';
import { figureText } from '../../units/figure-text.ts';
import { andList } from '../../units/word-list.ts';
import { extraPerYear } from '../compare/other-prices.ts';
import type { Effect } from '../effects/effect.ts';
import { type InRoom, planFigures } from '../effects/plan-figures.ts';
import { areSeveral } from '../purchase/thing-words.ts';
import type { DecisionSetup } from './decision-setup.ts';
import { type Guard, guardOf, HARM } from './guards.ts';
import { CLEAR, type Weighing } from './weigh-plan.ts';

/** A verdict in one sentence with a verb and its money. */
export function leadWords(setup: DecisionSetup, weighed: Weighing): string {
  switch (weighed.verdict) {
    case 'worth it':
      return worthIt(setup, weighed);
    case 'not needed':
      return `Not needed: ${notHappening(setup)}.`;
    case 'something else first':
      return insteadWords(setup, weighed);
    case 'too little':
      return tooLittle(setup, weighed);
    case 'a trade-off':
      return `A trade-off: ${setup.plan.plan} ${moneyWords(setup, weighed)}${gains(weighed, ' and ', '')}, but ${felt(weighed.harms)}.`;
  }
}

/**
 * Of a period that is no whole year: that it tells no verdict, and what was better and worse in it.
 *
 * @param length  of the period, with its unit
 */
export function partYearWords({ plan }: DecisionSetup, weighed: Weighing, length: string): string {
  const helps = gains(weighed, 'it helps: ', '');
  // No verdict names what is a harm, so that it is told with what else gets worse.
  const worse = losses({ ...weighed, harms: [] });
  return `${length} were run, which is no whole year: they cannot tell whether ${plan.plan} is worth its money. In these days ${helps === '' ? 'it makes nothing clearly better' : helps}${worse}.`;
}

function worthIt(setup: DecisionSetup, weighed: Weighing): string {
  const { plan, range } = setup;
  const { extra, rival } = weighed;
  const verb = does(setup);
  const worse = losses(weighed);
  const helps = gains(weighed, '', noMouldWords(setup, weighed) + worse);
  if (range.high < 0 && extra < 0) {
    const nothing = worse === '' ? ' and makes nothing clearly worse' : worse;
    const and = helps === '' ? nothing : `; with it, ${helps}`;
    const sure =
      range.high > range.low
        ? `, and some in nine of ten draws of the doubtful inputs or more${helps + worse === '' ? ',' : ''}`
        : '';
    return `${verb}: ${plan.plan} ${moneyWords(setup, weighed)}${sure}${and}.`;
  }
  const others = othersWords(weighed);
  const costs = `${verb}: ${plan.plan} ${moneyWords(setup, weighed)}, and with it ${helps}; ${others}.`;
  if (extra < 0 || rival !== null) return costs;
  return `${verb} if ${sum(extra, setup)} a year are worth it to you: with ${plan.plan} ${helps}; ${others}.`;
}

/** What else does as much for less: nothing, or what does not stand in the way of the plan. */
function othersWords({ aside, helped }: Weighing): string {
  if (aside === null) return NOTHING_ELSE;
  return `${aside.plan} does as much${againstWords(helped)} for less, and can be done as well`;
}

/** " against damp and the cold", or nothing. */
const againstWords = (helped: readonly Guard[]): string =>
  helped.length === 0 ? '' : ` against ${andList(helped.map((guard) => HARM[guard]))}`;

function insteadWords(setup: DecisionSetup, { better, helped }: Weighing): string {
  const less = sum(-extraPerYear(setup.plan, better!), setup);
  return `Something else first: ${better!.plan} does about as much${againstWords(helped)} and costs ${less} a year less than ${setup.plan.plan}.`;
}

function tooLittle(setup: DecisionSetup, weighed: Weighing): string {
  const buys = setup.purchases.length > 0;
  const money = `${buys ? 'Too little' : 'Not worth it'}: ${setup.plan.plan} ${moneyWords(setup, weighed)}`;
  if (weighed.harms.length > 0) return `${money}, and ${felt(weighed.harms)}.`;
  const better = weighed.effects.filter((effect) => effect.better);
  if (better.length === 0) {
    const worse = clearlyWorse(weighed);
    return worse.length === 0
      ? `${money} and makes nothing clearly better.`
      : `${money}, makes nothing clearly better, and ${felt(worse)}.`;
  }
  const little = `${money} and does little about ${andList(setup.guards.map((guard) => HARM[guard]))}`;
  const some = better.filter((effect) => setup.guards.includes(guardOf(effect)));
  // What it does besides is no measure of how little that is.
  const does = some.length > 0 ? `: ${felt(some)}` : `, though ${felt(better)}`;
  return `${little}${does}${losses(weighed)}.`;
}

/** That what is guarded against does not happen without it. */
function notHappening({ baseline, plan, guards, purchases }: DecisionSetup): string {
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
  return `${andList(guards.flatMap((guard) => words[guard]))}, so that ${plan.plan} guards against nothing here`;
}

/** That it is damp air or wet corners that it helps against, and no mould. */
function noMouldWords({ baseline, purchases }: DecisionSetup, weighed: Weighing): string {
  const told = wanted(weighed).slice(0, MOST_EFFECTS);
  if (!weighed.dampAlone || !told.some((effect) => guardOf(effect) === 'damp')) return '';
  const { mould } = planFigures(baseline);
  return `, though mould is not likely to start ${withoutWords(purchases)} (${indexWords(mould.value)})`;
}

/** "9 % of the time at most (den)" */
const mostWords = ({ value, room }: InRoom): string =>
  `${figureText(value, 0)}\u00a0% of the time at most (${room})`;
const withoutWords = (purchases: DecisionSetup['purchases']): string =>
  areSeveral(purchases) ? 'without them' : 'without it';
const indexWords = (index: number): string => `index up to ${figureText(index, 1)} of 6`;

/** What it makes better, of what it is for; with words around it where there is any. */
function gains(weighed: Weighing, before: string, after: string): string {
  const told = wanted(weighed);
  return told.length === 0 ? '' : `${before}${felt(told)}${after}`;
}

/** Of what it makes better what it is for, or all where that is nothing. */
function wanted({ effects, helped }: Weighing): Effect[] {
  const better = effects.filter((effect) => effect.better);
  const found = better.filter((effect) => helped.includes(guardOf(effect)));
  return found.length > 0 ? found : better;
}

/** What it makes clearly worse that is no harm yet, such as air that is damp where no mould starts. */
const clearlyWorse = ({ effects, harms }: Pick<Weighing, 'effects' | 'harms'>): Effect[] =>
  effects.filter((effect) => !effect.better && effect.weight >= CLEAR && !harms.includes(effect));

function losses(weighed: Pick<Weighing, 'effects' | 'harms'>): string {
  const worse = clearlyWorse(weighed);
  return worse.length === 0 ? '' : `, but ${felt(worse)}`;
}

const felt = (effects: readonly Effect[]): string =>
  andList(effects.slice(0, MOST_EFFECTS).map(({ words }) => words));

/** "saves 56 GBP a year" */
function moneyWords(setup: DecisionSetup, { extra }: Pick<Weighing, 'extra'>): string {
  const figure = figureText(Math.abs(extra), 0);
  if (Number(figure) === 0) return 'costs as much as doing nothing';
  return `${extra < 0 ? 'saves' : 'costs'} ${sum(Math.abs(extra), setup)} a year`;
}

const sum = (value: number, { plan }: DecisionSetup): string =>
  `${figureText(value, 0)} ${plan.money.currency}`;

function does({ purchases }: DecisionSetup): string {
  if (purchases.length === 0) return 'Do it';
  return areSeveral(purchases) ? 'Buy them' : 'Buy it';
}

/** What makes a rival: see `asGood`. */
const NOTHING_ELSE =
  'nothing else that was tried does as much for less without making something else worse';
const MOST_EFFECTS = 2;
