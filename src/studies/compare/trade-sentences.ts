import { highKey } from '../../measures/band-hours.ts';
import { coldArrivalHours, dampEmptyHours, roomHours } from '../../measures/comfort/room-hours.ts';
import { countedSpecies } from '../../measures/counted-species.ts';
import type { PlanMeasures } from '../../measures/plan-measures.ts';
import { figureText } from '../../units/figure-text.ts';
import { sumText } from '../../units/sum-text.ts';
import { andList } from '../../units/word-list.ts';
import type { Comparison } from './compare.ts';

/**
 * What plans get and give against the first: those that heat by presence, and those that buy
 * something. Empty where no plan does either.
 */
export function tradesOf({ baseline, plans, differences }: Comparison): Trades[] {
  const [base] = plans;
  if (base === undefined) return [];
  const present: string[] = [];
  const bought: string[] = [];
  for (const [k, difference] of differences.entries()) {
    const plan = plans[k + 1]!;
    if (difference.npv !== null) {
      const cools = [base, plan].some(({ cooling }) => cooling.removed_kwh > 0);
      const things = ofThings([base, plan]);
      const effects = cools ? [TOO_WARM, ...things] : things;
      bought.push(trade(base, plan, difference, effects) + worth(difference, base));
    } else if (plan.heating.by_presence && !base.heating.by_presence) {
      present.push(trade(base, plan, difference, OF_PRESENCE));
    }
  }
  return [
    { opening: `Warm mostly while somebody is in, against ${baseline}`, trades: present },
    { opening: `With what is bought for them, against ${baseline}`, trades: bought },
  ].filter(({ trades }) => trades.length > 0);
}

/** What several plans get and give, under what they have in common. */
export interface Trades {
  readonly opening: string;
  readonly trades: readonly string[];
}

type Difference = Comparison['differences'][number];

/** "when-home saves 240 GBP a year, with 43 more room-hours too cold just after somebody came in" */
function trade(
  base: PlanMeasures,
  plan: PlanMeasures,
  { total_money_per_year: extra }: Difference,
  effects: readonly Effect[],
): string {
  const told = effects.flatMap(({ hours, words }) => {
    const more = Math.round(hours(plan) - hours(base));
    if (Math.abs(more) < NOTABLE) return [];
    return [`${Math.abs(more)} ${more > 0 ? 'more' : 'fewer'} room-hours ${words}`];
  });
  const money = `${plan.plan} ${moneyWords(extra, base.money.currency)}`;
  return told.length === 0 ? `${money} and changes little` : `${money}, with ${andList(told)}`;
}

function moneyWords(extra: number, currency: string): string {
  const sum = sumText(Math.abs(extra), 0);
  if (Number(sum) === 0) return 'costs the same';
  return extra < 0 ? `saves ${sum} ${currency} a year` : `costs ${sum} ${currency} a year more`;
}

/** What a damp hour less costs, where there are enough of them, and when the purchase is earned back. */
function worth(difference: Difference, { money }: PlanMeasures): string {
  const { payback_years, money_per_damp_hour_avoided: each, humidity_high_hours } = difference;
  const words: string[] = [];
  if (each !== null && -humidity_high_hours >= NOTABLE) {
    words.push(`${sumText(each)} ${money.currency} for each room-hour no longer too damp`);
  }
  if (payback_years !== null) words.push(`earned back in ${figureText(payback_years, 1)} years`);
  return words.length === 0 ? '' : ` (${words.join('; ')})`;
}

interface Effect {
  readonly hours: (plan: PlanMeasures) => number;
  readonly words: string;
}

const COLD_ARRIVALS: Effect = {
  hours: coldArrivalHours,
  words: 'too cold just after somebody came in',
};
const TOO_WARM: Effect = {
  hours: (p) => roomHours(p, 'outside_band_occupied_hours', 'temperature_high'),
  words: 'too warm with somebody there',
};
const OF_PRESENCE: readonly Effect[] = [
  COLD_ARRIVALS,
  { hours: dampEmptyHours, words: 'too damp with nobody there' },
];
/** What harms most comes first. */
const ofThings = (plans: readonly PlanMeasures[]): readonly Effect[] => [
  { hours: (p) => roomHours(p, 'outside_band_hours', 'humidity_high'), words: 'too damp' },
  ...countedSpecies(plans)
    .toReversed()
    .filter(({ role }) => role === 'pollutant')
    .map(
      ({ name, symbol }): Effect => ({
        hours: (p) => roomHours(p, 'outside_band_hours', highKey(name)),
        words: `high in ${symbol}`,
      }),
    ),
  COLD_ARRIVALS,
];
/** Fewer room-hours than this are not worth a word. */
const NOTABLE = 24;
