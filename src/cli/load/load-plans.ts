import { FAR } from '../../scenario/notices/weather-elsewhere.ts';
import type { PreparedPlan } from '../../scenario/prepared.ts';
import type { PlanRequest } from '../../studies/run-plan.ts';
import { degreesEast } from '../../units/coordinates.ts';
import { figureText } from '../../units/figure-text.ts';
import { InputProblems, type Problem } from '../../units/problem.ts';
import type { Weather } from '../../weather/weather.ts';
import type { Io } from '../io.ts';
import { tellNote } from '../tell-note.ts';
import { type LoadedScenario, loadScenario } from './load-scenario.ts';
import { requireName } from './require-name.ts';

/** Everything that runs of a scenario need. */
export interface LoadedPlans extends LoadedScenario {
  readonly weather: Weather;
  readonly plans: readonly PlanRequest[];
}

/** What the words of the call change about a scenario. */
export interface Choice {
  /** Names of plans, or the first, or all. */
  readonly plans: readonly string[] | 'first' | 'all';
  /** What of the scenario must be right: all plans and doubts, or only the plans named. */
  readonly check: 'all' | 'named';
  /** Words of `--set`, laid on every plan. */
  readonly set: readonly string[];
  /** An outdoor file in place of the scenario's. */
  readonly weather?: string | undefined;
  /** What is to be noted of weather and home was told before. */
  readonly noted?: true;
  /** Told how many plans there will be to run, as soon as that is known, and before they are checked. */
  readonly expect?: (plans: number) => Promise<void>;
}

/**
 * Read a scenario with its files, and prepare plans of it.
 *
 * @throws InputProblems with everything that is wrong with scenario, settings and weather
 * @throws UsageError for a plan that the scenario does not have
 */
export async function loadPlans(io: Io, path: string, choice: Choice): Promise<LoadedPlans> {
  const scope = choice.check === 'all' ? {} : { plans: choice.plans, doubts: false };
  const named = (known: readonly string[]) => choice.expect?.(namesOf(choice.plans, known).length);
  const loaded = await loadScenario(io, path, scope, choice.weather, named);
  const { scenario } = loaded;
  const known = scenario.plans.map((plan) => plan.name);
  const names = namesOf(choice.plans, known);
  for (const name of names) requireName(name, known, 'plan');

  const { sectionAt } = await import('../../scenario/named-at.ts');
  const { preparePlan } = await import('../../scenario/prepare-plan.ts');
  const { uncoveredLevels } = await import('../../scenario/uncovered-levels.ts');
  const { readWeather } = await import('../../weather/read/read-weather.ts');
  const { periodOf } = await import('../../weather/period-of.ts');
  const problems = new Map<string, Problem>();
  const tried = <T>(work: () => T): T | null => attempt(work, problems);

  const { weatherFile, weatherText } = loaded;
  const weather = tried(() => readWeather(weatherText, weatherFile));
  const prepared = names.map((plan) =>
    tried(() => preparePlan(scenario, { plan, set: choice.set, files: loaded.files })),
  );
  const plans = prepared.map((plan) =>
    plan === null || weather === null ? null : tried(() => requestOf(plan, weather)),
  );
  // The weather's own problems stand under the name by which it is reached from here.
  for (const [key, { file }] of problems) {
    if (weather === null && file === scenario.weather && file !== weatherFile) problems.delete(key);
  }
  if (problems.size > 0) throw new InputProblems([...problems.values()]);
  if (!choice.noted) await noteDistance(io, weather!, prepared[0]!);
  return { ...loaded, weather: weather!, plans: plans as PlanRequest[] };

  function requestOf(plan: PreparedPlan, outdoors: Weather): PlanRequest {
    const { from, to } = plan.period;
    try {
      const period = periodOf(outdoors, from, to, plan.household.clock);
      refuseUncovered(plan, period);
      return { plan, weather: outdoors, period };
    } catch (error) {
      throw error instanceof InputProblems ? inScenario(error) : error;
    }
  }

  function refuseUncovered(plan: PreparedPlan, period: PlanRequest['period']): void {
    const place = { file: scenario.file, line: 0, column: 0, where: '', hint: '' };
    const found = uncoveredLevels(plan, period).map((finding) => ({ ...place, ...finding }));
    if (found.length > 0) throw new InputProblems(found);
  }

  /** Problems of the period, with their place in the scenario. */
  function inScenario({ problems }: InputProblems): InputProblems {
    return new InputProblems(
      problems.map((problem) => ({ ...problem, ...sectionAt(scenario, problem.path ?? []) })),
    );
  }
}

/** Weather of another place may be meant, but should not go unnoticed. */
async function noteDistance(
  io: Io,
  { latitude, longitude }: Weather,
  { home }: PreparedPlan,
): Promise<void> {
  const { site } = home;
  const east = Math.abs(degreesEast(longitude, site.longitude));
  if (Math.abs(site.latitude - latitude) <= FAR && east <= 2 * FAR) return;
  const place = (north: number, east: number) => `${figureText(north, 1)}, ${figureText(east, 1)}`;
  const told =
    `the weather is of latitude and longitude ${place(latitude, longitude)}, ` +
    `the home stands at ${place(site.latitude, site.longitude)}`;
  await tellNote(io, told);
}

function namesOf(wanted: Choice['plans'], known: readonly string[]): readonly string[] {
  return wanted === 'all' ? known : wanted === 'first' ? known.slice(0, 1) : wanted;
}

/** The result of some work, or null and its problems kept, each once. */
function attempt<T>(work: () => T, problems: Map<string, Problem>): T | null {
  try {
    return work();
  } catch (error) {
    if (!(error instanceof InputProblems)) throw error;
    for (const problem of error.problems) problems.set(JSON.stringify(problem), problem);
    return null;
  }
}
