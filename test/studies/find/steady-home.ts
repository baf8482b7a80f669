import { createPlanSeries } from '../../../src/measures/series/plan-series.ts';
import type { FindSetup } from '../../../src/studies/find/finding.ts';
import {
  type PlanVariant,
  prepareVariant,
  variantScenario,
} from '../../../src/studies/plan-variant.ts';
import type { WatchedRun } from '../../../src/studies/report-study.ts';
import { runPlan } from '../../../src/studies/run-plan.ts';
import { periodOf } from '../../../src/weather/period-of.ts';
import { readWeather } from '../../../src/weather/read/read-weather.ts';
import { readOnce } from '../../scenario/read-once.ts';

/** Outdoors all the time. [°C], [%] */
const OUTDOORS = { temperature: 5, humidity: 95 };

/** Sixty days of one temperature and humidity, without sun and wind. */
function steadyWeather(): string {
  const rows = Array.from({ length: 60 * 24 }, (_, hour) => {
    const time = new Date(Date.UTC(2023, 0, 1, hour)).toISOString().slice(0, 16);
    return `${time}Z,${OUTDOORS.temperature},${OUTDOORS.humidity},101325,0,0,0,0`;
  });
  const head =
    'time,temperature,relative humidity,pressure,wind speed,wind direction,direct normal,diffuse horizontal';
  return `# latitude: 54\n# longitude: -2\n# elevation: 0\n${head}\n${rows.join('\n')}\n`;
}

/**
 * A home, ready to be asked about.
 *
 * @param text  all of it but title, weather and place
 * @param outdoors  an outdoor file; steady where not given
 */
export function steadyHome(
  text: string,
  outdoors = steadyWeather(),
): FindSetup & { runs: () => number } {
  const scenario = readOnce(
    `title: Steady home\nweather: w.csv\nsite: { latitude: 54, longitude: -2, elevation: 0, timezone: UTC }\n${text}`,
    'steady.yaml',
  );
  const weather = readWeather(outdoors, 'w.csv');
  const variant: PlanVariant = { plan: scenario.plans[0]!.name, set: [] };
  let runs = 0;
  const watch = (one: PlanVariant): WatchedRun => {
    runs++;
    const plan = prepareVariant(scenario, new Map(), one);
    const { from, to } = plan.period;
    const period = periodOf(weather, from, to, plan.household.clock);
    const series = createPlanSeries({ ...plan, period, clock: plan.household.clock });
    const { measures, run } = runPlan({ plan, weather, period }, [series.observe]);
    return { measures, series: series.result(), ledger: run.ledger };
  };
  return {
    variant,
    prepared: prepareVariant(scenario, new Map(), variant),
    raw: variantScenario(scenario, variant),
    run: (one) => watch(one).measures,
    watch,
    runs: () => runs,
  };
}
