import type {
  BeatDoubt,
  DifferenceDoubt,
  FigureDoubt,
  PlanDoubt,
} from '../../studies/doubts/figure-doubt.ts';
import type { SampledDoubt } from '../../studies/doubts/sampled-doubt.ts';
import { figureText } from '../../units/figure-text.ts';
import { sumText } from '../../units/sum-text.ts';
import { unitBehind } from '../../units/unit-behind.ts';
import { andList } from '../../units/word-list.ts';
import { type Column, textTable } from './text-table.ts';
import { wrapText } from './wrap-text.ts';

/** What figures of a doubt are told by. */
export interface DoubtedHome {
  readonly currency: string;
  /** How many rooms its hours are added up over. */
  readonly rooms: number;
  /** Length of the period. [h] */
  readonly hours: number;
}

/**
 * What doubtful inputs do to the figures of plans, in a table and a few sentences.
 *
 * @param named  words for a pointer, and the unit of what stands there
 */
export function doubtText(
  doubt: SampledDoubt,
  home: DoubtedHome,
  named: (pointer: string) => { readonly name: string; readonly unit: string },
  width: number,
): string {
  const { plans, differences } = doubt;
  const name = (pointer: string) =>
    pointer === 'weather' ? 'the year of weather' : named(pointer).name;
  const unitOf = (pointer: string) => unitBehind(named(pointer).unit);
  const said = (sentences: readonly string[]) => wrapText(sentences.join(' '), '', width);
  const alone = differences.length === 0 ? plans.map((plan) => said([alonePlan(plan, name)])) : [];
  return [
    said(intro(doubt, name)),
    table(plans, home, width),
    ...outsideWords(doubt, home.currency, name).map((words) => said([words])),
    ...differences.map((each) => said(differenceWords(doubt, each, home.currency, name, unitOf))),
    ...alone,
  ].join('\n\n');
}

function intro(
  { samples, impossible, inputs, left_aside, years, plans, step_minutes }: SampledDoubt,
  name: (pointer: string) => string,
): string[] {
  const weather = years > 1 ? ` and ${years} years of weather` : '';
  const alike = plans.length > 1 ? ', each draw the same in every plan' : '';
  return [
    `Doubt: ${samples} draws of ${inputs.length} numbers that were assumed or stated as ` +
      `doubtful${weather}, all at once${alike}.`,
    'Half of the draws of a number lie below the value used, unless that is the least or the most it may ' +
      'be. The table has medians, and in brackets ' +
      'the range without the lowest and highest tenth; wet corners are cold spots above 80 % ' +
      'relative humidity, as a mean of the rooms; too cold is over 0.5 °C with somebody in, in the room worst off, of winter days if any were run.',
    `Draws are simulated in steps of ${figureText(step_minutes, 0)} minutes; where the scenario's own are shorter, one in twenty, and at least three, in those too, to correct the others.`,
    ...(left_aside.length === 0
      ? []
      : [
          `Not drawn, because giving them changes more than themselves: ${andList(left_aside.map(name))}.`,
        ]),
    ...(impossible === 0
      ? []
      : [`${impossible} further draws were left out: their numbers make no home together.`]),
  ];
}

/** Money of the values used that lies outside of what draws come to, and what moves one way only. */
function outsideWords(
  { plans, inputs }: SampledDoubt,
  currency: string,
  name: (pointer: string) => string,
): string[] {
  const outside = plans.filter(({ money: { as_is: now, p10, p90 } }) => now < p10 || now > p90);
  if (outside.length === 0) return [];
  const matter = new Set(outside.flatMap(({ money }) => money.matters.map(({ path }) => path)));
  const ends = inputs.filter(({ path, value, low, high }) => {
    return matter.has(path) && (value === low || value === high);
  });
  const each = (['below', 'above'] as const).flatMap((side) => {
    const there = outside.filter(
      ({ money: { as_is: now, p10 } }) => now < p10 === (side === 'below'),
    );
    if (there.length === 0) return [];
    const sums = there.map(
      ({ plan, money }, k) =>
        `${sumText(money.as_is, 0)}${k === 0 ? ` ${currency} a year` : ''} with ${plan}`,
    );
    return [`${andList(sums)}, ${side} ${there.length === 1 ? 'its range' : 'their ranges'}`];
  });
  const why =
    ends.length === 0
      ? 'What may cost more and what may cost less do not even out.'
      : `Draws move ${andList(ends.slice(0, 3).map(({ path }) => name(path)))} one way only, because ` +
        'the value used is the least or the most that it may be.';
  return [`The values used come to ${each.join('; to ')}. ${why} Go by the range.`];
}

function table(
  plans: readonly PlanDoubt[],
  { currency, rooms, hours }: DoubtedHome,
  width: number,
): string {
  const spread = (
    head: string,
    of: (plan: PlanDoubt) => FigureDoubt,
    per = 1,
    decimals = 0,
  ): Column => ({
    head,
    cells: plans.map((plan) => {
      const { median, p10, p90 } = of(plan);
      const [mid, low, high] = [median, p10, p90].map((value) => sumText(value / per, decimals));
      return `${mid} (${low} to ${high})`;
    }),
  });
  return textTable(
    [
      { head: '\nplan', cells: plans.map(({ plan }) => plan), align: 'left' },
      spread(`money a year\n[${currency}]`, ({ money }) => money),
      spread('wet corners\n[% of the time]', ({ damp }) => damp, (rooms * hours) / 100),
      spread('too cold\n[h a day]', ({ cold }) => cold, 1, 1),
    ],
    width,
  );
}

function differenceWords(
  { baseline, samples }: SampledDoubt,
  { plan, money, damp, cold, flips }: DifferenceDoubt,
  currency: string,
  name: (pointer: string) => string,
  unitOf: (pointer: string) => string,
): string[] {
  const range = [money.p10, money.p90].map(Math.abs);
  const sides = [money.p10, money.p90].map((value) => (value < 0 ? 'less' : 'more'));
  const ends =
    sides[0] === sides[1]
      ? `${range
          .sort((a, b) => a - b)
          .map((value) => sumText(value, 0))
          .join(' to ')} ${sides[0]}`
      : `${sumText(range[0], 0)} ${sides[0]} to ${sumText(range[1], 0)} ${sides[1]}`;
  const middle = `${sumText(Math.abs(money.median), 0)} ${currency} a year ${money.median < 0 ? 'less' : 'more'}`;
  return [
    `${plan} costs less than ${baseline} in ${inDraws(money, samples)} (median ${middle}; ${ends} ` +
      `in the middle 80 %), has fewer wet hours in ${inDraws(damp, samples)} and fewer cold ones ` +
      `in ${inDraws(cold, samples)}.`,
    ...mattersWords('the difference in money', money, name),
    ...flipWords(flips, money, [plan, baseline], name, unitOf),
  ];
}

/** "93 of 100 draws", with those that are equal where there are any. */
function inDraws({ less, equal }: BeatDoubt, samples: number): string {
  const same = Math.round(equal * samples);
  const tail = same === 0 ? '' : ` (as many in ${same})`;
  return `${Math.round(less * samples)} of ${samples} draws${tail}`;
}

function alonePlan({ money, damp }: PlanDoubt, name: (pointer: string) => string): string {
  return [...mattersWords('money', money, name), ...mattersWords('wet hours', damp, name)].join(
    ' ',
  );
}

function mattersWords(
  what: string,
  { matters }: FigureDoubt,
  name: (pointer: string) => string,
): string[] {
  if (matters.length === 0) return [`No single input moves ${what} more than chance could.`];
  const words = matters
    .slice(0, MOST)
    .map(({ path, correlation }) => `${name(path)} (${figureText(correlation, 2)})`);
  return [`What moves ${what} most, by rank correlation: ${andList(words)}.`];
}

function flipWords(
  flips: DifferenceDoubt['flips'],
  { less, equal, matters }: BeatDoubt,
  [plan, baseline]: readonly [string, string],
  name: (pointer: string) => string,
  unitOf: (pointer: string) => string,
): string[] {
  if (less === 0 || less + equal >= 1 || matters.length === 0) return [];
  if (flips.length === 0) {
    return ['None of these by itself turns round which costs less; several together do.'];
  }
  const words = flips.map(
    ({ path, today, value }) =>
      `${name(path)} at ${figureText(value)}${unitOf(path)} (taken as ${figureText(today)}${unitOf(path)})`,
  );
  return [
    `${plan} and ${baseline} cost the same with ${andList(words).replace(/ and (?=[^,]*$)/, ' or ')}.`,
  ];
}

const MOST = 4;
