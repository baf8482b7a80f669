import { expect, test } from 'vitest';
import { createLowestAir } from '../../src/measures/notices/lowest-air.ts';
import { preparePlan } from '../../src/scenario/prepare-plan.ts';
import { runPlan } from '../../src/studies/run-plan.ts';
import type { Weather } from '../../src/weather/weather.ts';
import { FILES, oneWarmRoom, WEATHER } from '../fit/one-warm-room.ts';

const scenario = oneWarmRoom('heating: { source: none }');
const plan = preparePlan(scenario, { plan: scenario.plans[0]!.name, set: [], files: FILES });
const YEAR = 8760;

/** A run under the demonstration weather, so much warmer. @param by  [K] */
function run(by: number, hours: number) {
  const temperature = WEATHER.temperature.map((t) => t + by);
  const weather: Weather = { ...WEATHER, temperature };
  const lowest = createLowestAir(1);
  const period = { start: WEATHER.start, hours };
  const { measures } = runPlan({ plan, weather, period }, [lowest.observe]);
  const isSaid = measures.cautions.some(({ id }) => id === 'frost');
  return { isSaid, lowest: lowest.result(0) };
}
/** Whether pipes that freeze are spoken of. */
const isSaid = (by: number, hours: number): boolean => run(by, hours).isSaid;

test('a room without heating that a whole year left far above freezing has no frozen pipes', () => {
  expect(plan.cautions.some(({ id }) => id === 'frost')).toBe(true);
  expect(isSaid(0, YEAR)).toBe(true);
  expect(isSaid(18, YEAR)).toBe(false);
});

test('far above is 8 °C, which is the coldest that the air of the room ever is', () => {
  // A room that nothing heats is about as much warmer as its weather is.
  const { lowest } = run(0, YEAR);
  const at = (celsius: number) => celsius - lowest;
  const [under, over] = [run(at(7.7), YEAR), run(at(8.3), YEAR)];
  expect([under.isSaid, over.isSaid]).toEqual([true, false]);
  expect(under.lowest).toBeLessThan(8);
  expect(under.lowest).toBeGreaterThan(7.5);
  expect(over.lowest).toBeLessThan(8.5);
});

test('less than a year says nothing of the rest of it', () => {
  expect(isSaid(18, 24 * 30)).toBe(true);
});
