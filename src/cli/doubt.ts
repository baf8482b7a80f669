import type { SampledDoubt } from '../studies/doubts/sampled-doubt.ts';
import type { PlanVariant } from '../studies/plan-variant.ts';
import type { Weather } from '../weather/weather.ts';
import { countedRuns } from './counted-runs.ts';
import type { Io } from './io.ts';
import type { LoadedPlans } from './load-plans.ts';
import { MOST_DATA } from './load-scenario.ts';
import { startRunCount } from './run-count.ts';
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

/** What is not known exactly, and what it does to the plans; null where that is not asked for. */
export async function doubtOf(
  io: Io,
  loaded: LoadedPlans,
  { set, weather = [], doubt: samples, seed }: DoubtChoice,
): Promise<SampledDoubt | null> {
  if (samples === undefined) return null;
  const { sampledDoubt } = await import('../studies/doubts/sampled-doubt.ts');
  const { sampledInputs, setAside } = await import('../studies/doubts/sampled-inputs.ts');
  const { prepareVariant, variantScenario } = await import('../studies/plan-variant.ts');
  const { settingWords } = await import('../scenario/yaml/settings.ts');
  const { memoizedRuns } = await import('../studies/memoized-runs.ts');
  const { startSimulations } = await import('./simulations.ts');
  const { scenario, files } = loaded;
  const others = await otherYears(io, weather);
  const variants = loaded.plans.map(({ plan }): PlanVariant => ({ plan: plan.plan, set }));
  const plans = loaded.plans.map(({ plan: prepared }, k) => ({
    ...{ prepared, raw: variantScenario(scenario, variants[k]!) },
  }));
  const workers = io.startWorkers === null ? null : await io.startWorkers(Number.POSITIVE_INFINITY);
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
    const all = sampledInputs(scenario, plans);
    const { drawn, leftAside } = setAside(all, plans, (k, path, value) => {
      const words = settingWords(path, String(value));
      return prepareVariant(scenario, files, { ...variants[k]!, set: [...set, words] });
    });
    return await sampledDoubt({
      ...{ plans: variants, inputs: drawn, leftAside, samples, seed },
      ...{ years: inYear.length, step: loaded.plans[0]!.plan.dt },
      run: (variant, year) => inYear[year]!(variant),
    });
  } finally {
    count.stop();
    await workers?.close();
  }
}

/** Years of weather beside the first. */
export async function otherYears(io: Io, weather: readonly string[] = []): Promise<Weather[]> {
  const { readWeather } = await import('../weather/read/read-weather.ts');
  return Promise.all(
    weather.slice(1).map(async (file) => readWeather(await io.readText(file, MOST_DATA), file)),
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
