import { expect, test } from 'vitest';
import type { PlanMeasures } from '../../../src/measures/plan-measures.ts';
import { bargainOf } from '../../../src/studies/sweep/frontier.ts';
import { setpointBargain } from '../../../src/studies/sweep/setpoint-bargain.ts';
import { AIRED, DRY, linearScenario, linearWorld } from '../linear-world.ts';
import { somePlan } from '../some-plan.ts';

const PLANS = ['as-lived: { change: {} }', DRY, AIRED];
const { named, run } = linearWorld(linearScenario({ plans: PLANS }));
const options = ['as-lived', 'dry', 'aired'].map(named);

test('options as they stand, and two of them with other thermostats', async () => {
  const { curves, front, tried } = (await setpointBargain(options, options.slice(0, 2), run))!;
  expect(tried).toBe(3 + 2 * 5);
  const [lived, dry] = curves;
  expect(lived!.points.map(({ setpoint }) => setpoint)).toEqual([15, 16, 17, 18, 19, 20]);
  expect(lived!.points.map(({ money }) => money)).toEqual([820, 880, 940, 1000, 1060, 1120]);
  expect(dry!.points[3]).toMatchObject({
    plan: 'dry',
    kelvin: 0,
    ...bargainOf(options[1]!.measures),
  });
  // No hour of these is outside a band, so that nothing beats the cheapest.
  expect(front).toMatchObject([{ plan: 'as-lived', setpoint: 15, money: 820, hours: 0 }]);
});

test('the room in which somebody is cold for hours is named with the usual caution', async () => {
  const text = 'Settings fall below 18 °C in den: ask for more.';
  const cold = (hours: number, id = 'low-setpoint') => ({
    ...somePlan('x', { den: { over: { winter_cold_hours_per_day: hours } } }),
    cautions: [{ id, text }],
  });
  const found = async (measures: PlanMeasures) =>
    (await setpointBargain(options, options.slice(0, 1), async () => measures))!.curves[0]!.points;
  expect((await found(cold(3)))[0]!.cold).toEqual({ room: 'den', hours: 3, caution: text });
  expect((await found(cold(1.1)))[0]!.cold).not.toBeNull();
  expect((await found(cold(0.9)))[0]!.cold).toBeNull();
  expect((await found(cold(3, 'frail')))[0]!.cold).toBeNull();
});

test('settings that make no home are left out, and where nothing is heated there is nothing', async () => {
  const cold = linearWorld(linearScenario({ setpoint: 7 })).named('as-lived');
  const frosty = linearWorld(linearScenario({ setpoint: 7 }));
  const found = (await setpointBargain([cold], [cold], frosty.run))!;
  // below 5 °C the frost guard heats
  expect(found.curves[0]!.points.map(({ setpoint }) => setpoint)).toEqual([5, 6, 7, 8, 9]);
  const off = { ...cold, raw: { heating: { source: 'none' } } };
  expect(await setpointBargain([off], [off], frosty.run)).toBeNull();
});
