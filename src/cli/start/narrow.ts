import { coldSpotHours, feltColdHours, roomHours } from '../../measures/comfort/room-hours.ts';
import type { PlanMeasures } from '../../measures/plan-measures.ts';
import { inputInWords } from '../../report/page/input-in-words.ts';
import { wrapText } from '../../report/tables/wrap-text.ts';
import { movesSummerHeat } from '../../scenario/edits/input-kinds.ts';
import { doubtfulInputs } from '../../studies/doubts/doubtful-inputs.ts';
import { oneAtATime } from '../../studies/doubts/one-at-a-time.ts';
import { memoizedRuns } from '../../studies/memoized-runs.ts';
import { prepareVariant, variantScenario } from '../../studies/plan-variant.ts';
import { figureText } from '../../units/figure-text.ts';
import { sumText } from '../../units/sum-text.ts';
import { unitBehind } from '../../units/unit-behind.ts';
import type { Io } from '../io.ts';
import { loadPlans } from '../load/load-plans.ts';
import { startRunCount } from '../runs/run-count.ts';
import { startSimulations } from '../runs/simulations.ts';

/** A figure that a person minds, and how it is told. */
interface Minded {
  readonly words: string;
  /** What is counted, after the unit. */
  readonly whose: string;
  readonly unit: (currency: string) => string;
  readonly of: (plan: PlanMeasures) => number;
  /** Whether the input at a pointer can move it; all that move damp and cost where not given. */
  readonly movedBy?: (pointer: string) => boolean;
}

/**
 * The three assumptions whose low and high move the first plan most, in words.
 *
 * Each is tried alone in the two coldest months, of heat in the two hottest, which takes seconds and tells which they are.
 *
 * @param bothers  what bothers the person most
 */
export async function narrow(io: Io, path: string, bothers: readonly string[]): Promise<string> {
  const name = MINDED_FIRST.find((one) => bothers.includes(one)) ?? 'cost';
  const minded = MINDED[name];
  const known = { plans: 'first', check: 'named', noted: true } as const;
  const first = await loadPlans(io, path, { ...known, set: [] });
  const south = first.plans[0]!.plan.home.site.latitude < 0;
  const hottest = name === 'heat';
  const months = south === hottest ? '{ from: 01-01, to: 02-28 }' : '{ from: 07-01, to: 08-31 }';
  const set = [`/period=${months}`];
  const { scenario, weather, files, plans } = await loadPlans(io, path, {
    ...{ ...known, set },
  });
  const { plan } = plans[0]!;
  const variant = { plan: plan.plan, set };
  const assumed = plan.assumed.filter(({ path }) => minded.movedBy?.(path) ?? true);
  const inputs = doubtfulInputs(assumed, assumed, MOST);
  const workers = await io.startWorkers(2 * inputs.length);
  const count = await startRunCount(io);
  try {
    const { run } = await startSimulations(workers, { file: scenario.file, weather }, count);
    const found = await oneAtATime({
      ...{ baseline: variant, plan: variant, inputs },
      run: memoizedRuns((one) => run(prepareVariant(scenario, files, one))),
      figure: minded.of,
    });
    const raw = variantScenario(scenario, variant);
    const unit = minded.unit(plan.prices.currency);
    const lines = telling(found.effects, found.figure).map(({ path: pointer, ...effect }, k) => {
      const ends = [effect.at_low, effect.at_high].map((end) => sumText(end, 0));
      const { name, unit: own } = inputInWords(pointer, raw);
      const of = unitBehind(own);
      const range = `${figureText(effect.low)} to ${figureText(effect.high)}${of}`;
      const assumed = `${name}: ${figureText(effect.value)}${of} is assumed`;
      const gives = `${range} gives ${ends.join(' to ')} ${unit} ${minded.whose}`;
      const told = `${assumed}; ${gives}${findOut(pointer)}`;
      return wrapText(told, `${k + 1}. `, io.width);
    });
    const asIs = `${sumText(found.figure, 0)} ${unit}`;
    const what = `${minded.words} in the two ${hottest ? 'hottest' : 'coldest'} months, ${asIs} as it is`;
    if (lines.length === 0)
      return wrapText(`Nothing that was assumed moves this: ${what}.`, '', io.width);
    const head = `${COUNTS[lines.length]} would narrow this most (${what}):`;
    return [wrapText(head, '', io.width), ...lines].join('\n');
  } finally {
    count.stop();
    await workers?.close();
  }
}

/** The first few whose low and high are told apart as they are printed, and by a hundredth of the figure as it is. */
export const telling = <T extends { readonly at_low: number; readonly at_high: number }>(
  effects: readonly T[],
  figure: number,
): T[] =>
  effects
    .filter(
      ({ at_low, at_high }) =>
        figureText(at_low, 0) !== figureText(at_high, 0) &&
        Math.abs(at_high - at_low) >= LEAST * Math.abs(figure),
    )
    .slice(0, TOLD);

const COUNTS = ['', 'One answer', 'Two answers', 'Three answers'] as const;
const MINDED_FIRST = ['damp', 'dry', 'cold', 'heat', 'cost'] as const;
const MINDED: Readonly<Record<(typeof MINDED_FIRST)[number], Minded>> = {
  cost: {
    words: 'money',
    whose: 'for energy',
    unit: (currency) => currency,
    of: ({ money }) => money.energy,
  },
  damp: {
    words: 'cold corners over 80 %, all rooms',
    whose: 'of wet corners',
    unit: () => 'h',
    of: coldSpotHours,
  },
  dry: {
    words: 'too dry, all rooms',
    whose: 'too dry',
    unit: () => 'h',
    of: (plan) => roomHours(plan, 'outside_band_hours', 'humidity_low'),
  },
  cold: {
    words: 'too cold with somebody in, all rooms',
    whose: 'too cold',
    unit: () => 'h',
    of: feltColdHours,
  },
  heat: {
    words: 'too warm with somebody in, all rooms',
    whose: 'too warm',
    unit: () => 'h',
    of: (plan) => roomHours(plan, 'outside_band_occupied_hours', 'temperature_high'),
    movedBy: movesSummerHeat,
  },
};

/** How a householder finds out; empty where there is no way at hand. */
export function findOut(pointer: string): string {
  return FIND_OUT.find(([place]) => place.test(pointer))?.[1] ?? '';
}

const FIND_OUT: readonly (readonly [place: RegExp, words: string])[] = [
  [/ach50/, '; say how draughty it is, or have it measured'],
  [/background vents/, '; count trickle vents and air bricks, and measure one'],
  [/\/wall u-value/, '; find out how the walls are built, and whether they are insulated'],
  [
    /window (u-value|g-value|shading|frame share)/,
    '; look at the glass, its edge strip and what stands before it',
  ],
  [/cold spot/, '; hold a thermometer to the coldest corner on a frosty morning'],
  [/\/activities\/.*water/, '; count showers, loads of laundry and meals'],
  [/\/price$/, '; look at a bill'],
  [/\/panes\/\d+\/area$/, '; measure the window'],
  [/usual airing/, '; think of how far windows stand open on mild days'],
  [/efficiency/, '; look for the label of the boiler'],
  [/roof u-value/, '; look how thick the wool in the loft is'],
  [/\/loft$/, '; look how thick the wool in the loft is'],
];
const TOLD = 3;
/** [-] */
const LEAST = 0.01;
/** Each takes two runs of two months. */
const MOST = 12;
