import { readFileSync } from 'node:fs';
import { test } from 'vitest';
import { preparePlan } from '../../../src/scenario/prepare-plan.ts';
import { labelOf } from '../../../src/studies/purchase/drying-figures.ts';
import { purchaseSum } from '../../../src/studies/purchase/purchase-sum.ts';
import { runPlan } from '../../../src/studies/run-plan.ts';
import { periodOf } from '../../../src/weather/period-of.ts';
import { readWeather } from '../../../src/weather/read/read-weather.ts';
import { expectShown } from '../../reference/shown.ts';
import { readOnce } from '../../scenario/read-once.ts';

test('the sum that docs/example-report.md goes through is the one of the demonstration', () => {
  const scenario = readOnce(readFileSync('scenarios/terrace.yaml', 'utf8'), 'terrace.yaml');
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
  const [, shown = ''] = /\|---\|---\|---\|\n((?:\|.*\n)+)/.exec(table) ?? [];
  expectShown('docs/example-report.md', shown, `${lines.join('\n')}\n`);
  const [inWords = ''] = /^\d.* is [-\d.]+\.$/m.exec(table) ?? [];
  expectShown('docs/example-report.md', inWords, sayIt(sum.lines));
});

/** The sum as one line of arithmetic. */
function sayIt(lines: readonly { text: string; value: number }[]): string {
  const of = (text: string): number => lines.find((line) => line.text.startsWith(text))?.value ?? 0;
  const signed = (x: number): string => `${x < 0 ? '−' : '+'} ${Math.abs(x).toFixed(2)}`;
  const owned = of('purchase cost').toFixed(2);
  const running = of('running').toFixed(2);
  const rounding = of('rounding') === 0 ? '' : ` ${signed(of('rounding'))}`;
  return (
    `${of('price: ')} over ${of('years to divide')} is ${owned}; ` +
    `${of('electricity of the device')} times ${of('price of it')} is ${running}; ` +
    `${owned} + ${running} ${signed(of('heating by'))}${rounding} is ${of('net').toFixed(2)}.`
  );
}
