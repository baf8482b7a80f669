import { expect, test } from 'vitest';
import { type LoggedRun, simulateLogged } from '../../../src/fit/simulate/logged-run.ts';
import { preparePlan } from '../../../src/scenario/prepare-plan.ts';
import { madeWeather, NEW_YEAR } from '../../engine/homes.ts';
import { readOnce } from '../../scenario/read-once.ts';

const HOURS = 48;
const scenario = readOnce(
  `title: One heater
weather: w.csv
site: { latitude: 54, longitude: -2, elevation: 30, timezone: Europe/London }
step: 60
home: { rooms: { den: { floor area: 14 } } }
household: { people: [], activities: [], airing: [] }
heating: { source: direct electric, setpoint: 21, season: all year }
devices: { oil radiator: { kind: heater, room: den, power: 1 kW, radiant share: 0, target: 24 } }`,
  'a.yaml',
);
const plan = preparePlan(scenario, { plan: null, set: [], files: new Map() });
const weather = madeWeather({ temperature: () => 4 }, { start: NEW_YEAR });

/** How warm the room is in the last hour, and what its emitters gave then. [°C, W] */
function ends(more: Partial<LoggedRun>) {
  const { temperature, heating } = simulateLogged(plan, weather, {
    ...{ start: NEW_YEAR, hours: HOURS, spinUpDays: 0, imposed: {}, held: null },
    ...{ devicePower: {}, metered: [] },
    ...more,
  });
  return { warm: temperature[0]!.at(-1)!, given: heating[0]!.at(-1)! };
}

test('a room whose heat was logged has that alone, and what its heaters are known to have drawn', () => {
  const heat = (power: number) => ({ den: { heat: new Float64Array(HOURS).fill(power) } });
  const drawn = { 'oil radiator': new Float64Array(HOURS).fill(400) };
  expect(ends({}).warm).toBeGreaterThan(20);
  const cold = ends({ imposed: heat(0), metered: ['den'] });
  expect(cold.given).toBe(0);
  expect(cold.warm).toBeLessThan(15);
  const byHeat = ends({ imposed: heat(400), metered: ['den'] }).warm - cold.warm;
  const byPlug = ends({ imposed: heat(0), metered: ['den'], devicePower: drawn }).warm - cold.warm;
  expect(byHeat).toBeGreaterThan(1);
  expect(byPlug / byHeat).toBeCloseTo(1, 6);
});
