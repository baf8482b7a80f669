import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { preparePlan } from '../../../src/scenario/prepare-plan.ts';
import { readScenario } from '../../../src/scenario/read-scenario.ts';
import { labelOf } from '../../../src/studies/purchase/drying-figures.ts';
import { purchaseSum } from '../../../src/studies/purchase/purchase-sum.ts';
import { runPlan } from '../../../src/studies/run-plan.ts';
import { periodOf } from '../../../src/weather/period-of.ts';
import { readWeather } from '../../../src/weather/read/read-weather.ts';

test('the sum that docs/example-report.md goes through is the one of the demonstration', () => {
  const scenario = readScenario(readFileSync('scenarios/terrace.yaml', 'utf8'), 'terrace.yaml');
  const weather = readWeather(readFileSync('weather/saltmere-typical.csv', 'utf8'), 'saltmere.csv');
  const run = (name: string) => {
    const plan = preparePlan(scenario, { plan: name, set: [], files: new Map() });
    const period = periodOf(weather, null, null, plan.household.clock);
    return { plan, measures: runPlan({ plan, weather, period }).measures };
  };
  const { plan, measures } = run('dry-bedroom');
  const sum = purchaseSum({
    ...{ baseline: run('as-lived').measures, plan: measures, device: 'dehumidifier' },
    ...{ purchases: plan.purchases, discountRate: plan.discountRate, prices: plan.prices },
    label: labelOf(plan, 'dehumidifier'),
  });
  const lines = sum.lines.map(({ text, value, unit }) => `| ${text} | ${value} | ${unit} |`);

  const page = readFileSync('docs/example-report.md', 'utf8');
  const [, table = ''] = page.split('<!-- the sum of scenarios/terrace.yaml, dry-bedroom -->');
  const printed = table.split('\n').filter((line) => line.startsWith('|'));
  expect(printed.slice(2, 2 + lines.length)).toEqual(lines);
});
