import { readFileSync } from 'node:fs';
import type { Observer } from '../../src/engine/record/trace.ts';
import type { Run } from '../../src/engine/run.ts';
import type { PlanMeasures } from '../../src/measures/plan-measures.ts';
import { preparePlan } from '../../src/scenario/prepare-plan.ts';
import type { PreparedPlan } from '../../src/scenario/prepared.ts';
import { runPlan } from '../../src/studies/run-plan.ts';
import { readWeather } from '../../src/weather/read/read-weather.ts';
import { readOnce } from '../scenario/read-once.ts';

/** A demonstration home through its whole invented year. */
export function demoRun(
  file: string,
  plan: string,
  set: readonly string[] = [],
  watchers: readonly Observer[] = [],
): { readonly measures: PlanMeasures; readonly run: Run; readonly plan: PreparedPlan } {
  const prepared = demoPlan(file, plan, set);
  const period = { start: weather.start, hours: 8760 };
  return { ...runPlan({ plan: prepared, weather, period }, watchers), plan: prepared };
}

/** One plan of a demonstration home, with settings laid on it as on the command line. */
export function demoPlan(file: string, plan: string, set: readonly string[] = []): PreparedPlan {
  const scenario = readOnce(readFileSync(`scenarios/${file}`, 'utf8'), file);
  return preparePlan(scenario, { plan, set, files: new Map() });
}

const YEAR = 'weather/saltmere-typical.csv';
const weather = readWeather(readFileSync(YEAR, 'utf8'), YEAR);
