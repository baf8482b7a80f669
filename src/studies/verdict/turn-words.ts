import { purchaseCostPerYear } from '../../measures/energy/purchase-cost-per-year.ts';
import { capital } from '../../units/capital.ts';
import { figureText } from '../../units/figure-text.ts';
import { sumText } from '../../units/sum-text.ts';
import { areSeveral } from '../purchase/thing-words.ts';
import type { DecisionSetup } from './decision-setup.ts';
import { namesWorth } from './lead-words.ts';
import type { MoneyTurn } from './money-turn.ts';
import type { Weighing } from './weigh-plan.ts';

/** The money at which a verdict turns, in a sentence; none where the verdict itself names it. */
export function turnWords(setup: DecisionSetup, weighed: Weighing, turn: MoneyTurn): string[] {
  const words =
    turn.of === 'worth' ? worthWords(setup, weighed, turn) : pricesWords(setup, weighed, turn);
  return words === '' ? [] : [words];
}

function pricesWords(setup: DecisionSetup, weighed: Weighing, turn: MoneyTurn): string {
  const { currency } = setup.plan.money;
  if (turn.of === 'price' && turn.value < 0.5) {
    const they = areSeveral(setup.purchases) ? 'they' : 'it';
    return weighed.verdict === 'too little'
      ? `${capital(they)} would not pay even as a gift.`
      : `Even as a gift ${they} would not come out ahead.`;
  }
  const [value, today] = [turn.value, turn.today ?? 0];
  const [name, unit, print] =
    turn.of === 'price'
      ? ['the price of what is bought', currency, (x: number) => sumText(x, 0)]
      : [`the price of ${turn.fuel}`, `${currency}/kWh`, (x: number) => figureText(x, 3)];
  const side = value < today ? 'below' : 'above';
  return `The answer turns round where ${name} is ${side} ${print(value)} ${unit} (${print(today)} today): then ${then(weighed)}${surely(setup, weighed, turn)}.`;
}

/** Where a plan that saves too little would save in nearly all draws of what is doubtful. */
function surely(
  { purchases, discountRate, range }: DecisionSetup,
  { verdict, extra }: Weighing,
  turn: MoneyTurn,
): string {
  if (verdict !== 'too little') return '';
  if (extra < 0) return ' in nine of ten draws';
  if (turn.of !== 'price' || !(range.high > extra)) return '';
  const value = (turn.today ?? 0) * (1 - range.high / purchaseCostPerYear(purchases, discountRate));
  return value < 0.5
    ? ', though not in nine of ten draws'
    : `, and below ${sumText(value, 0)} in nine of ten draws`;
}

/** What is so on the other side. */
function then({ verdict, rival, better }: Weighing): string {
  if (verdict === 'something else first') return `it costs less than ${better!.plan}`;
  if (verdict === 'too little') return 'it saves money';
  return rival === null ? 'it no longer saves money' : `${rival.plan} does as much for less`;
}

function worthWords(setup: DecisionSetup, weighed: Weighing, { value }: MoneyTurn): string {
  const { plan } = setup;
  const { verdict, extra } = weighed;
  const a = `${sumText(value, 0)} ${plan.money.currency} a year`;
  if (verdict === 'a trade-off') {
    return extra < 0
      ? `It is worth it only to those who would accept that for ${a}.`
      : `It is worth it only to those to whom the rest is worth ${a}.`;
  }
  if (verdict === 'something else first') {
    return `Even for nothing ${plan.plan} would come second: what it does besides would have to be worth ${a} to you.`;
  }
  const gift = giftWords(setup, extra);
  if (verdict === 'worth it' && namesWorth(weighed)) return gift === '' ? '' : `${capital(gift)}.`;
  const words =
    verdict === 'worth it'
      ? `The answer turns round where ${plan.plan} is worth less than ${a} to you`
      : `What ${plan.plan} does besides would have to be worth ${a} to you`;
  return `${words}${gift === '' ? '' : `; ${gift}`}.`;
}

/** What it costs where nothing is paid for the thing itself. */
function giftWords({ purchases, discountRate, plan }: DecisionSetup, extra: number): string {
  const yearly = purchaseCostPerYear(purchases, discountRate);
  if (!(yearly > 0)) return '';
  const rest = extra - yearly;
  const figure = sumText(Math.abs(rest), 0);
  const [they, cost] = areSeveral(purchases) ? ['they', 'they cost'] : ['it', 'it costs'];
  if (Number(figure) === 0) return `as a gift ${they} would cost nothing`;
  const sum = `${figure} ${plan.money.currency} a year`;
  return rest > 0 ? `even as a gift ${cost} ${sum}` : `as a gift ${they} would save ${sum}`;
}
