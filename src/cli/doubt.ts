import type { PlanMeasures } from '../measures/plan-measures.ts';
import type { SampledDoubt } from '../studies/doubts/sampled-doubt.ts';
import type { SampledInput } from '../studies/doubts/sampled-inputs.ts';
import type { PlanVariant } from '../studies/plan-variant.ts';
import type { PlanRequest } from '../studies/run-plan.ts';
import type { Weather } from '../weather/weather.ts';
import type { Io } from './io.ts';
import type { LoadedPlans } from './load/load-plans.ts';
import { MOST_DATA } from './load/load-scenario.ts';
import { countedRuns } from './runs/counted-runs.ts';
import { startRunCount } from './runs/run-count.ts';
import type { Workers } from './runs/start-workers.ts';
import { UsageError } from './usage-error.ts';

/** What the words of a call say of doubt. */
export interface DoubtChoice {
  readonly set: readonly string[];
  /** Files; the first is the weather of the figures as they are. */
  readonly weather?: readonly string[];
  /** How many draws; none are made where not given. */
  readonly doubt?: number;
  readonly seed: number;
}

/** The weather of the figures as they are; undefined for the scenario's. @throws UsageError */
export function firstYear({
  weather = [],
  doubt,
}: Pick<DoubtChoice, 'weather' | 'doubt'>): string | undefined {
  if (weather.length > 1 && (doubt ?? 0) === 0) {
    throw new UsageError('error: --weather more than once is for --doubt');
  }
  return weather[0];
}

/** What is drawn where plans are in doubt. */
export interface DoubtedPlans {
  /** The plans, the baseline first. */
  readonly variants: readonly PlanVariant[];
  readonly inputs: readonly SampledInput[];
  readonly leftAside: readonly SampledInput[];
}

/** What is not known exactly of the loaded plans; null where that is not asked for. */
export async function doubtedPlans(
  { scenario, files, plans: loaded }: LoadedPlans,
  { set, doubt }: Pick<DoubtChoice, 'set' | 'doubt'>,
): Promise<DoubtedPlans | null> {
  if (doubt === undefined) return null;
  const { sampledInputs, setAside } = await import('../studies/doubts/sampled-inputs.ts');
  const { prepareVariant, variantScenario, withSettings } = await import(
    '../studies/plan-variant.ts'
  );
  const variants = loaded.map(({ plan }): PlanVariant => ({ plan: plan.plan, set }));
  const plans = loaded.map(({ plan: prepared }, k) => ({
    ...{ prepared, raw: variantScenario(scenario, variants[k]!) },
  }));
  const all = sampledInputs(scenario, plans);
  const { drawn: inputs, leftAside } = setAside(all, plans, (k, laidOn) =>
    prepareVariant(scenario, files, withSettings(variants[k]!, laidOn)),
  );
  return { variants, inputs, leftAside };
}

/**
 * What that does to the plans.
 *
 * @param asIs  figures of the plans as they are, in their order
 * @param own   threads to share the runs, left running; others are started and ended where there are none
 */
export async function doubtOf(
  io: Io,
  loaded: LoadedPlans,
  { variants: plans, inputs, leftAside }: DoubtedPlans,
  asIs: readonly PlanMeasures[],
  { weather = [], doubt: samples = 0, seed }: DoubtChoice,
  own: Workers | null = null,
): Promise<SampledDoubt> {
  const { sampledDoubt } = await import('../studies/doubts/sampled-doubt.ts');
  const { prepareVariant } = await import('../studies/plan-variant.ts');
  const { memoizedRuns } = await import('../studies/memoized-runs.ts');
  const { startSimulations } = await import('./runs/simulations.ts');
  const { scenario, files } = loaded;
  const others = await otherYears(io, weather, loaded.plans[0]!);
  const workers = own ?? (await io.startWorkers(Number.POSITIVE_INFINITY));
  const count = await startRunCount(io);
  try {
    const setup = { file: scenario.file, weather: loaded.weather, others };
    const { run } = await startSimulations(workers, setup, { done: count.done });
    const ran = countedRuns(count, workers?.threads ?? 1, (variant, year) =>
      run(prepareVariant(scenario, files, variant), year),
    );
    const inYear = [loaded.weather, ...others].map((_, year) =>
      memoizedRuns((variant) => ran(variant, year)),
    );
    const known = new Map(plans.map((variant, k) => [variant, asIs[k]!]));
    return await sampledDoubt({
      ...{ plans, inputs, leftAside, samples, seed },
      ...{ years: inYear.length, step: loaded.plans[0]!.plan.dt },
      run: (variant, year) => (year === 0 && known.get(variant)) || inYear[year]!(variant),
    });
  } finally {
    count.stop();
    if (own === null) await workers?.close();
  }
}

/**
 * Years of weather beside the first.
 *
 * @throws InputProblems for a file whose period is of another length than the first's: its money a year
 *   and its hours would be those of other seasons
 */
export async function otherYears(
  io: Io,
  weather: readonly string[] = [],
  { plan, period }: PlanRequest,
): Promise<Weather[]> {
  const { readWeather } = await import('../weather/read/read-weather.ts');
  const { periodOf } = await import('../weather/period-of.ts');
  const { InputProblems } = await import('../units/problem.ts');
  const { from, to } = plan.period;
  return Promise.all(
    weather.slice(1).map(async (file) => {
      const year = readWeather(await io.readText(file, MOST_DATA), file);
      const { hours } = periodOf(year, from, to, plan.household.clock);
      if (Math.abs(hours - period.hours) <= LEAP_AND_ENDS) return year;
      const expected = `as many days as the first weather has, ${Math.round(period.hours / 24)}`;
      const got = `${Math.round(hours / 24)}`;
      const hint = 'a period in the scenario says which days of each are run';
      throw new InputProblems([{ file, line: 0, column: 0, where: '', expected, got, hint }]);
    }),
  );
}

/** Print what a doubt comes to. */
export async function tellDoubt(io: Io, loaded: LoadedPlans, doubt: SampledDoubt): Promise<void> {
  const { doubtText } = await import('../report/tables/doubt-text.ts');
  const { inputInWords } = await import('../report/page/input-in-words.ts');
  const { variantScenario } = await import('../studies/plan-variant.ts');
  const { plan, period } = loaded.plans[0]!;
  const raw = variantScenario(loaded.scenario, { plan: plan.plan, set: [] });
  const named = (pointer: string) => inputInWords(pointer, raw);
  const home = {
    ...{ currency: plan.prices.currency, rooms: plan.home.rooms.length, hours: period.hours },
  };
  io.out(`\n${doubtText(doubt, home, named, io.width)}\n`);
}

/** Years may have a day more, and lack hours at their ends. [h] */
const LEAP_AND_ENDS = 48;
