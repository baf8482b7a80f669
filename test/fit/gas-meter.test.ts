import { mean } from 'simple-statistics';
import { expect, test } from 'vitest';
import { fitHome } from '../../src/fit/fit-home.ts';
import { runHere } from './here.ts';
import { madeLog } from './made-log.ts';
import { FILES, oneWarmRoom, TRUTH, WEATHER } from './one-warm-room.ts';

const home = (log: string) =>
  oneWarmRoom(
    `heating: { source: boiler, setpoint: 20, hours: ["06:00-22:00"], setback: 16 }\n${log}`,
  );
const START = Date.UTC(2023, 0, 9) / 1000;

test('the gas meter of a boiler tells heat: its share of hot water is stated, the loss is found', async () => {
  const made = madeLog({
    ...{ scenario: home(''), files: FILES, weather: WEATHER, truth: TRUTH, seed: 3, start: START },
    ...{ days: 21, every: 3600, rooms: ['living'], gasBeside: BESIDE },
    noise: { temperature: 0.1, humidity: 0.8, rho: 0.8 },
  });
  const gas = made.series.find(({ quantity }) => quantity === 'gas')!;
  const share = (BESIDE / mean([...gas.values.slice(1)])).toFixed(2);
  const scenario = home(`log: { gas beside heating: ${share} }`);
  // temperature and gas alone: water has tests of its own
  const series = made.series.filter(({ quantity }) => quantity !== 'relative humidity');
  const fit = await fitHome({
    ...{ scenario, files: FILES, plan: scenario.plans[0]!.name, set: [] },
    ...{ log: { ...made, series }, weather: WEATHER, startRuns: runHere },
  });
  const [stage] = fit.stages;
  expect(stage!.channels.map(({ name, stretches }) => [name, stretches !== undefined])).toEqual([
    ['temperature', false],
    ['heating', true],
  ]);
  expect(fit.cautions[0]).toMatch(
    /^Heat to rooms is taken from the gas meter, day by day: less \d+ % of its mean for hot water and cooking \(as the scenario says\), times an efficiency of 0\.\d\d\.$/,
  );
  const loss = stage!.fit.parameters.find(
    ({ adjustable }) => adjustable.name === 'heat loss factor',
  )!;
  // a quarter more, within the range of 95 % and within the tenth that heat records are good for
  expect(loss.low).toBeLessThanOrEqual(1.25);
  expect(loss.high).toBeGreaterThanOrEqual(1.25);
  expect(Math.abs(loss.value / 1.25 - 1)).toBeLessThan(0.1);
  expect(stage!.fit.runs).toBeLessThanOrEqual(400);
  expect(
    fit.foreseen.find(({ channel }) => channel.name === 'heating')!.guideline14,
  ).not.toBeNull();
}, 60_000);

/** [W] */
const BESIDE = 150;
