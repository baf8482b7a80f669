import { expect, test } from 'vitest';
import { preparePlan } from '../../src/scenario/prepare-plan.ts';
import { runPlan } from '../../src/studies/run-plan.ts';
import type { Weather } from '../../src/weather/weather.ts';
import { FILES, oneWarmRoom, WEATHER } from '../fit/one-warm-room.ts';

const scenario = oneWarmRoom('heating: { source: none }');
const plan = preparePlan(scenario, { plan: scenario.plans[0]!.name, set: [], files: FILES });
const YEAR = 8760;

/** Whether pipes that freeze are spoken of under the demonstration weather, so much warmer. @param by  [K] */
function isSaid(by: number, hours: number): boolean {
  const temperature = WEATHER.temperature.map((t) => t + by);
  const weather: Weather = { ...WEATHER, temperature };
  const period = { start: WEATHER.start, hours };
  const { measures } = runPlan({ plan, weather, period });
  return measures.cautions.some(({ id }) => id === 'frost');
}

test('a room without heating that a whole year left far above freezing has no frozen pipes', () => {
  expect(plan.cautions.some(({ id }) => id === 'frost')).toBe(true);
  expect(isSaid(0, YEAR)).toBe(true);
  expect(isSaid(18, YEAR)).toBe(false);
});

test('less than a year says nothing of the rest of it', () => {
  expect(isSaid(18, 24 * 30)).toBe(true);
});
