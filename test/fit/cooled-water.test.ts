import { expect, test } from 'vitest';
import { fitHome } from '../../src/fit/fit-home.ts';
import { runHere } from './here.ts';
import { madeLog } from './made-log.ts';
import { FILES, oneWarmRoom, WEATHER } from './one-warm-room.ts';

test('the water of people is found in a room that an air conditioner dries', async () => {
  const scenario = oneWarmRoom(
    `heating: { source: none }\ncooling: { source: split, power: 2500, setpoint: 21, rooms: all }`,
  );
  const made = madeLog({
    ...{ scenario, files: FILES, weather: WEATHER, seed: 2 },
    truth: ['/household/moisture factor=1.3'],
    ...{ start: Date.UTC(2023, 6, 1) / 1000, days: 28, every: 3600, rooms: ['living'] },
    noise: { temperature: 0.1, humidity: 0.8, rho: 0.8 },
  });
  const fit = await fitHome({
    ...{ scenario, files: FILES, plan: scenario.plans[0]!.name, set: [] },
    ...{ log: made, weather: WEATHER, startRuns: runHere },
  });
  const { parameters } = fit.stages.find(({ group }) => group === 'water')!.fit;
  const factor = parameters.find(({ adjustable }) => adjustable.name === 'moisture factor')!;
  expect(factor.low).toBeLessThan(1.3);
  expect(factor.high).toBeGreaterThan(1.3);
  const known = fit.foreseen.filter(({ from }) => from === 'logged temperature');
  expect(known.length).toBe(1);
  // Three points: what loggers of humidity are sold to be right to.
  expect(known[0]!.alone.rmse).toBeLessThan(3);
}, 60_000);
