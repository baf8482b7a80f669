import type { PlanMeasures } from '../../measures/plan-measures.ts';
import { addAiringAt } from '../../scenario/edits/add-airing.ts';
import { figureText } from '../../units/figure-text.ts';
import { signedSum } from '../../units/sum-text.ts';
import { theRoom } from '../../units/the-room.ts';
import { andList } from '../../units/word-list.ts';
import { type Alone, airingTimes, aloneWords } from './airing-times.ts';
import { edited, type Finding, type FindingRun, type FindSetup, worstRoom } from './finding.ts';
import { leastThatHolds, type Tried } from './least-that-holds.ts';
import { STALE_SYMBOL, staleHours } from './stale-air.ts';

/**
 * The cheapest routine of opening all windows wide, besides the habits there are, with which stale
 * air stands above its band for no more than so many hours with somebody in, in any room. For one to
 * four times a day the shortest that does it is looked for, and the cheapest of those is taken. Times at
 * which nobody is ever at home to open a window are left out, except where motors do.
 *
 * @param room  whose air is meant; that of all where not given
 */
export async function findAiring(setup: FindSetup, hours: number, room?: string): Promise<Finding> {
  const worst = (plan: PlanMeasures) => worstRoom(plan, staleHours, room);
  const runOf = (tried: string, measures: PlanMeasures): FindingRun => {
    const { figure } = worst(measures);
    return { tried, figure, money: measures.money.total_per_year, holds: figure <= hours };
  };
  const asIs = await setup.run(setup.variant);
  const runs: FindingRun[] = [runOf('as it is', asIs)];
  const { tried, alone } = airingTimes(setup);
  const routines = await Promise.all(
    tried.map(async (at) => {
      const { found, all } = await leastThatHolds({
        ...{ low: LOW, high: HIGH, tolerance: TOLERANCE },
        at: async (minutes) => setup.run(edited(setup, addAiringAt(setup.raw, at, minutes))),
        holds: (tried) => worst(tried).figure <= hours,
      });
      return { at, found, all };
    }),
  );
  for (const { at, all } of routines) {
    runs.push(...all.map(({ value, tried }) => runOf(wordsOf(at, value), tried)));
  }
  const good = routines.flatMap(({ at, found }) => (found === null ? [] : [{ at, found }]));
  good.sort((a, b) => cost(a.found) - cost(b.found));
  const best = good[0];
  const allowed = hours === 0 ? 'at all times' : `for all but ${figureText(hours, 0)} h`;
  return {
    question: `the cheapest airing routine that keeps ${STALE_SYMBOL}${room === undefined ? '' : ` in ${theRoom(room)}`} under its band ${allowed}`,
    ...{ unit: 'min', low: LOW, high: HIGH, tolerance: TOLERANCE },
    value: worst(asIs).figure <= hours ? 0 : (best?.found.value ?? null),
    answer: answerOf(asIs, { hours, worst }, { best, most: mostOf(routines), alone }),
    figure: `${STALE_SYMBOL} above its band with somebody in, ${room ?? 'worst room'} [h]`,
    runs,
  };
}

/** What came of the routines that were tried. */
interface Outcome {
  readonly best:
    | { readonly at: readonly string[]; readonly found: Tried<PlanMeasures> }
    | undefined;
  /** The routine that opens windows most often, and the home with it; null where none was tried. */
  readonly most: { readonly at: readonly string[]; readonly measures: PlanMeasures } | null;
  readonly alone: Alone;
}

/** How many hours of stale air may be, and where they are most. */
interface Limit {
  readonly hours: number;
  readonly worst: (plan: PlanMeasures) => ReturnType<typeof worstRoom>;
}

function answerOf(
  asIs: PlanMeasures,
  { hours, worst }: Limit,
  { best, most, alone }: Outcome,
): string[] {
  if (worst(asIs).figure <= hours) {
    const { room, figure } = worst(asIs);
    return [`None is needed: as it is ${theRoom(room)} is worst with ${figureText(figure, 0)} h.`];
  }
  const besides = 'All windows are opened wide, in addition to the usual habits.';
  if (most === null) return ['No routine does it by hand.', ...aloneWords(alone, [])];
  if (best === undefined) {
    const { room, figure } = worst(most.measures);
    return [
      `No routine does it: even ${wordsOf(most.at, HIGH)} leaves ${theRoom(room)} with ${figureText(figure, 0)} h.`,
      besides,
      ...aloneWords(alone, most.at),
      'Where the air grows stale again between airings, as while people sleep, outdoor air has to come in all the time; find outdoor-air tells how much.',
    ];
  }
  const { at, found } = best;
  const { room, figure } = worst(found.tried);
  const more = cost(found) - asIs.money.total_per_year;
  return [
    `${wordsOf(at, found.value)} does it for ${signedSum(more, 0)} ${asIs.money.currency} a year; ${theRoom(room)} is worst with ${figureText(figure, 0)} h.`,
    besides,
    ...aloneWords(alone, at),
  ];
}

const mostOf = (
  routines: readonly {
    readonly at: readonly string[];
    readonly all: readonly { readonly tried: PlanMeasures }[];
  }[],
): Outcome['most'] => {
  const last = routines.at(-1);
  return last === undefined ? null : { at: last.at, measures: last.all.at(-1)!.tried };
};

const cost = ({ tried }: Tried<PlanMeasures>): number => tried.money.total_per_year;

const wordsOf = (at: readonly string[], minutes: number): string =>
  `${figureText(minutes, 0)} min at ${andList(at)}`;

const LOW = 2; // min
const HIGH = 60; // min
const TOLERANCE = 2; // min
