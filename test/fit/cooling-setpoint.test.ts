import { expect, test } from 'vitest';
import { fitHome } from '../../src/fit/fit-home.ts';
import { runHere } from './here.ts';
import { madeLog } from './made-log.ts';
import { FILES, oneWarmRoom, WEATHER } from './one-warm-room.ts';

test('what rooms are cooled to in truth is found where the scenario states another setpoint', async () => {
  // A setpoint that the invented summer reaches on most days.
  const scenario = oneWarmRoom(
    `heating: { source: none }\ncooling: { source: ideal, setpoint: 21, rooms: all }`,
  );
  const made = madeLog({
    ...{ scenario, files: FILES, weather: WEATHER, truth: ['/cooling/setpoint=22.5'], seed: 3 },
    ...{ start: Date.UTC(2023, 6, 1) / 1000, days: 21, every: 3600, rooms: ['living'] },
    noise: { temperature: 0.1, humidity: 0.8, rho: 0.8 },
  });
  const series = made.series.filter(({ quantity }) => quantity !== 'relative humidity');
  const fit = await fitHome({
    ...{ scenario, files: FILES, plan: scenario.plans[0]!.name, set: [] },
    ...{ log: { ...made, series }, weather: WEATHER, startRuns: runHere },
  });
  const { parameters } = fit.stages[0]!.fit;
  const error = parameters.find(({ adjustable }) => /cooling/.test(adjustable.name))!;
  expect(error.adjustable.name).toBe('thermostat error of cooling');
  // 1.5 K warmer than set, as closely as a thermostat's error is claimed at best
  expect(Math.abs(error.value + 1.5)).toBeLessThan(0.2);
  expect(error.low).toBeLessThanOrEqual(-1.5);
  expect(error.high).toBeGreaterThanOrEqual(-1.5);
  const [setting] = fit.settings.filter((one) => one.startsWith('/cooling/setpoint='));
  expect(Number(setting!.split('=')[1])).toBeCloseTo(21 - error.value, 2);
  expect(fit.cautions.join()).toContain('no error there: the hours and power of cooling.');
}, 60_000);
