import type { PlanMeasures } from '../../measures/plan-measures.ts';
import { addAiringAt } from '../../scenario/edits/add-airing.ts';
import { figureText, signedText } from '../../units/figure-text.ts';
import { andList } from '../../units/word-list.ts';
import { edited, type Finding, type FindingRun, type FindSetup, worstRoom } from './finding.ts';
import { leastThatHolds, type Tried } from './least-that-holds.ts';
import { STALE_SYMBOL, staleHours } from './stale-air.ts';

/**
 * The cheapest routine of opening all windows wide, besides the habits there are, with which stale
 * air stands above its band for no more than so many hours with somebody in, in any room. For one to
 * four times a day the shortest that does it is looked for, and the cheapest of those is taken.
 */
export async function findAiring(setup: FindSetup, hours: number): Promise<Finding> {
  const asIs = await setup.run(setup.variant);
  const runs: FindingRun[] = [runOf('as it is', asIs, hours)];
  const routines = await Promise.all(
    TIMES.map(async (at) => {
      const { found, all } = await leastThatHolds({
        ...{ low: LOW, high: HIGH, tolerance: TOLERANCE },
        at: async (minutes) => setup.run(edited(setup, addAiringAt(setup.raw, at, minutes))),
        holds: (tried) => worst(tried).figure <= hours,
      });
      return { at, found, all };
    }),
  );
  for (const { at, all } of routines) {
    runs.push(...all.map(({ value, tried }) => runOf(wordsOf(at, value), tried, hours)));
  }
  const good = routines.flatMap(({ at, found }) => (found === null ? [] : [{ at, found }]));
  good.sort((a, b) => cost(a.found) - cost(b.found));
  const best = good[0];
  const allowed = hours === 0 ? 'at all times' : `for all but ${figureText(hours, 0)} h`;
  return {
    question: `the cheapest airing routine that keeps ${STALE_SYMBOL} under its band ${allowed}`,
    ...{ unit: 'min', low: LOW, high: HIGH, tolerance: TOLERANCE },
    value: worst(asIs).figure <= hours ? 0 : (best?.found.value ?? null),
    answer: answerOf(asIs, hours, best, routines.at(-1)!.all.at(-1)!.tried),
    figure: `${STALE_SYMBOL} above its band with somebody in, worst room [h]`,
    runs,
  };
}

function answerOf(
  asIs: PlanMeasures,
  hours: number,
  best: { readonly at: readonly string[]; readonly found: Tried<PlanMeasures> } | undefined,
  most: PlanMeasures,
): string[] {
  if (worst(asIs).figure <= hours) {
    const { room, figure } = worst(asIs);
    return [`None is needed: as it is the ${room} is worst with ${figureText(figure, 0)} h.`];
  }
  const besides = 'All windows are opened wide, besides the habits there are.';
  if (best === undefined) {
    const { room, figure } = worst(most);
    return [
      `No routine does it: even ${wordsOf(TIMES.at(-1)!, HIGH)} leaves the ${room} with ${figureText(figure, 0)} h.`,
      besides,
      'Where the air grows stale again between airings, as while people sleep, outdoor air has to come in all the time; find outdoor-air tells how much.',
    ];
  }
  const { at, found } = best;
  const { room, figure } = worst(found.tried);
  const more = cost(found) - asIs.money.total_per_year;
  return [
    `${wordsOf(at, found.value)} does it for ${signedText(more, 0)} ${asIs.money.currency} a year; the ${room} is worst with ${figureText(figure, 0)} h.`,
    besides,
  ];
}

const runOf = (tried: string, measures: PlanMeasures, hours: number): FindingRun => {
  const { figure } = worst(measures);
  return { tried, figure, money: measures.money.total_per_year, holds: figure <= hours };
};

const cost = ({ tried }: Tried<PlanMeasures>): number => tried.money.total_per_year;

const worst = (plan: PlanMeasures) => worstRoom(plan, staleHours);

const wordsOf = (at: readonly string[], minutes: number): string =>
  `${figureText(minutes, 0)} min at ${andList(at)}`;

/** On getting up and before going to bed first, then in between. */
const TIMES: readonly (readonly string[])[] = [
  ['07:30'],
  ['07:30', '22:00'],
  ['07:30', '18:00', '22:00'],
  ['07:30', '13:00', '18:00', '22:00'],
];
const LOW = 2; // min
const HIGH = 60; // min
const TOLERANCE = 2; // min
