import { figureText } from '../units/figure-text.ts';
import type { Comparison } from './compare.ts';

/**
 * What each plan saves or costs against the first, and what that does to people who come into a
 * room and to rooms while nobody is there; then what bought things are worth. Empty where no plan
 * differs in these. Plans whose printed figures are the baseline's are left out.
 */
export function tradeSentences({ baseline, plans, differences }: Comparison): string[] {
  const currency = plans[0]?.money.currency ?? '';
  const traded = differences.flatMap((difference) => {
    const effects = effectsOf(difference);
    const money = moneyWords(difference.total_money_per_year, currency);
    return effects.length === 0 ? [] : [`${difference.plan} ${money}, with ${list(effects)}`];
  });
  const sentence = traded.length === 0 ? [] : [`Against ${baseline}, ${traded.join('; ')}.`];
  return [...sentence, ...differences.flatMap((d) => boughtSentences(d, currency))];
}

type Difference = Comparison['differences'][number];

function effectsOf(difference: Difference): string[] {
  return EFFECTS.flatMap(({ of, words }) => {
    const hours = Math.round(of(difference));
    if (hours === 0) return [];
    return [`${Math.abs(hours)} ${hours > 0 ? 'more' : 'fewer'} room-hours ${words}`];
  });
}

function moneyWords(extra: number, currency: string): string {
  const sum = figureText(Math.abs(extra), 0);
  if (Number(sum) === 0) return 'costs the same';
  return extra < 0 ? `saves ${sum} ${currency} a year` : `costs ${sum} ${currency} a year more`;
}

/** A worth today is only reckoned where something is bought. */
function boughtSentences(difference: Difference, currency: string): string[] {
  const { plan, npv, payback_years: years, money_per_damp_hour_avoided: each } = difference;
  if (npv === null) return [];
  const sentences: string[] = [];
  if (years !== null) {
    sentences.push(`What ${plan} buys pays back in ${figureText(years, 1)} years.`);
  }
  if (each !== null) {
    sentences.push(
      `${plan} pays ${figureText(each)} ${currency} for each room-hour less that is too damp.`,
    );
  }
  return sentences.length > 0 || difference.humidity_high_hours < 0
    ? sentences
    : [`What ${plan} buys neither saves energy nor keeps a room from being too damp.`];
}

const list = (words: readonly string[]): string => words.join(' and ');

const EFFECTS: readonly { readonly of: (d: Difference) => number; readonly words: string }[] = [
  { of: (d) => d.cold_arrival_hours, words: 'too cold just after somebody came in' },
  { of: (d) => d.humidity_high_empty_hours, words: 'too damp with nobody there' },
];
