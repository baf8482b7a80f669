import { expect, test } from 'vitest';
import type { Readings } from '../../src/fit/readings/readings.ts';
import type { HourlyColumns } from '../../src/fit/simulate/hourly-columns.ts';
import { type Fitted, foresee } from '../../src/fit/withheld.ts';
import type { PreparedPlan } from '../../src/scenario/prepared.ts';
import { UTC_CLOCK } from '../../src/units/local-clock.ts';

const HOURS = 24 * 20;
const WITHHELD = 24 * 16;

/** One room whose run gives 100 all the time, where `missing` more was logged in each fitted and withheld hour. */
async function foreseen(quantity: 'heating' | 'temperature', missing: number) {
  const level = () => [new Float64Array(HOURS).fill(100)];
  const columns: HourlyColumns = {
    ...{ temperature: level(), humidity: level(), heating: level(), species: [] },
  };
  // a little to and fro, so that the mean so far is not the truth itself
  const observed = Float64Array.from({ length: HOURS }, (_, k) => 100 + missing + (k % 2));
  const residuals = observed.map((x) => x - 100);
  const errors = { residuals, before: residuals };
  const within = { from: 24, split: 24 * 12, to: WITHHELD };
  const left = { rmse: missing, bias: -missing, rho: 0, unseen: missing };
  const stage = {
    group: 'heat',
    channels: [
      ...[{ quantity, name: quantity, unit: 'W', room: 'den', roomIndex: 0, observed, floor: 0.1 }],
    ],
    fit: { parameters: [], left: [{ ...left, errors: { ...errors, ...within } }] },
  };
  const division = { start: 0, hours: HOURS, release: 24, withheld: WITHHELD };
  const weather = { start: 0, step: 3600, temperature: new Float32Array(HOURS) };
  const plan = { dt: 3600, household: { clock: UTC_CLOCK } } as unknown as PreparedPlan;
  const readings = { start: 0, rooms: [], devices: {} } as unknown as Readings;
  const fitted = { division, weather, stages: [stage] } as unknown as Fitted;
  const [one] = await foresee(async () => columns, plan, readings, fitted);
  return one!;
}

test('heat that is missing at all hours is not made up for by habit, and is judged as the scenario gives it', async () => {
  const { judgement, alone, forecast, guideline14 } = await foreseen('heating', 50);
  expect(forecast.every((x) => x === 100)).toBe(true);
  expect(judgement).toEqual(alone);
  expect(judgement.skill).toBeLessThan(0);
  // 50 or 51 of 150.5 on average
  expect(guideline14!.nmbe).toBeCloseTo(50.5 / 150.5, 2);
  expect(guideline14!.cvRmse).toBeCloseTo(50.5 / 150.5, 2);
  // half the band is no narrower than what the scenario alone leaves
  expect(judgement.band).toBeGreaterThanOrEqual(1.96 * 50);
});

test('of a temperature the error of each hour of the day is added', async () => {
  const { judgement, alone, guideline14 } = await foreseen('temperature', 5);
  expect(judgement.rmse).toBeLessThan(alone.rmse / 5);
  expect(guideline14).toBeNull();
});
