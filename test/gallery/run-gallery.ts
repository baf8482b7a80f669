import { readFileSync } from 'node:fs';
import type { PlanMeasures } from '../../src/measures/plan-measures.ts';
import { createPlanSeries, type PlanSeries } from '../../src/measures/series/plan-series.ts';
import { preparePlan } from '../../src/scenario/prepare-plan.ts';
import type { PreparedPlan } from '../../src/scenario/prepared.ts';
import { runPlan } from '../../src/studies/run-plan.ts';
import { periodOf } from '../../src/weather/period-of.ts';
import { readWeather } from '../../src/weather/read/read-weather.ts';
import { readOnce } from '../scenario/read-once.ts';

/** One plan of a home of the gallery: its figures and its hours. */
export interface Shown {
  readonly name: string;
  readonly plan: PreparedPlan;
  readonly measures: PlanMeasures;
  readonly series: PlanSeries;
}

/** All plans of a home of the gallery, by name and in their order. */
export type GalleryRun = Readonly<Record<string, Shown>>;

const WEATHER = readWeather(readFileSync('weather/saltmere-typical.csv', 'utf8'), 'saltmere.csv');

export function runGallery(home: string): GalleryRun {
  const file = `scenarios/gallery/${home}.yaml`;
  const scenario = readOnce(readFileSync(file, 'utf8'), file);
  return Object.fromEntries(
    scenario.plans.map(({ name }) => {
      const plan = preparePlan(scenario, { plan: name, set: [], files: new Map() });
      const period = periodOf(WEATHER, plan.period.from, plan.period.to, plan.household.clock);
      const series = createPlanSeries({ ...plan, period, clock: plan.household.clock });
      const { measures } = runPlan({ plan, weather: WEATHER, period }, [series.observe]);
      return [name, { name, plan, measures, series: series.result() }];
    }),
  );
}
