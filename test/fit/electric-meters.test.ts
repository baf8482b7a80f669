import { expect, test } from 'vitest';
import { fitHome } from '../../src/fit/fit-home.ts';
import { runHere } from './here.ts';
import { type MadeLog, madeLog } from './made-log.ts';
import { FILES, oneWarmRoom, TRUTH, WEATHER } from './one-warm-room.ts';

/** The heat loss factor that a fit finds, with what it was compared with and what it said first. */
async function found(heating: string, more: Partial<MadeLog>, truth: readonly string[]) {
  const scenario = oneWarmRoom(heating);
  const made = madeLog({
    ...{ scenario, files: FILES, weather: WEATHER, truth: [...TRUTH, ...truth], seed: 3 },
    ...{ start: Date.UTC(2023, 0, 9) / 1000, days: 21, every: 3600, rooms: ['living'] },
    noise: { temperature: 0.1, humidity: 0.8, rho: 0.8 },
    ...more,
  });
  // temperature and meters alone: water has tests of its own
  const series = made.series.filter(({ quantity }) => quantity !== 'relative humidity');
  const fit = await fitHome({
    ...{ scenario, files: FILES, plan: scenario.plans[0]!.name, set: [] },
    ...{ log: { ...made, series }, weather: WEATHER, startRuns: runHere },
  });
  const [stage] = fit.stages;
  const loss = stage!.fit.parameters.find(
    ({ adjustable: { name } }) => name === 'heat loss factor',
  );
  return { loss: loss!, channels: stage!.channels, cautions: fit.cautions };
}

// A quarter more, within the range of 95 % and within the tenth that heat records are good for.
function expectQuarterMore({ value, low, high }: Awaited<ReturnType<typeof found>>['loss']): void {
  expect(low).toBeLessThanOrEqual(1.25);
  expect(high).toBeGreaterThanOrEqual(1.25);
  expect(Math.abs(value / 1.25 - 1)).toBeLessThan(0.1);
}

test('the electricity of a heat pump, read every day, tells the heat that a home loses', async () => {
  const heating = `heating: { source: heat pump, setpoint: 20, hours: ["06:00-22:00"], setback: 16 }
log: { electricity beside heating: 0 }`;
  const { loss, channels, cautions } = await found(heating, { heatingMeter: true }, []);
  expect(channels.map(({ name, stretches }) => [name, stretches !== undefined])).toEqual([
    ['temperature', false],
    ['heating', true],
  ]);
  expect(cautions[0]).toBe(
    'Heat to rooms is taken from the electricity of the heating, day by day: times the COP of the scenario at the temperature outdoors.',
  );
  expectQuarterMore(loss);
}, 60_000);

test('a plug-in heater whose power was logged heats as it did, not as the scenario has it', async () => {
  // In the home it keeps 19 °C; the scenario knows of no rule by which it would run.
  const heating = `heating: { source: none }
devices: { oil radiator: { kind: heater, room: living, power: 2 kW, runs: by rules } }`;
  const truth = ['/devices/oil radiator/runs=by temperature', '/devices/oil radiator/target=19'];
  const { loss, cautions } = await found(heating, { device: 'oil radiator' }, truth);
  expectQuarterMore(loss);
  expect(cautions.filter((said) => said.startsWith('Not used'))).toEqual([]);
}, 60_000);
