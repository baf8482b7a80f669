import { expect, test } from 'vitest';
import { simulate } from '../../../src/engine/simulate.ts';
import type { Cooler } from '../../../src/home/home.ts';
import { humidityRatioFromRelativeHumidity } from '../../../src/physics/moist-air/humidity-ratio.ts';
import { compare } from '../../reference/compare.ts';
import { coilDuty } from '../../reference/physics/cooling/coil.ts';
import { makeUpAirHeat } from '../../reference/physics/cooling/make-up-air.ts';
import { always, bareHome, bareRoom, quietHousehold } from '../homes.ts';
import { last, recordRun, runInput, total } from '../record-run.ts';
import { AIR_DENSITY } from '../reference-air.ts';
import { lastDays } from '../short-weather.ts';

const HOURS = 96;
const OUTDOORS = { temperature: 34, humidityRatio: 0.012 };
const HOT = lastDays(
  { temperature: () => OUTDOORS.temperature, humidityRatio: () => OUTDOORS.humidityRatio },
  6,
);

/** Last step, and what went through the duct, of a room that leaks, once nothing changes any more. */
function settled(more: Partial<Cooler>, setpoint: number) {
  const cooler: Cooler = {
    ...{ name: 'unit', room: 0, source: 'split', power: 1e5, exhaust: 0, radiantShare: 0 },
    ...{ eer: { outdoor: [0], value: [3] }, coil: null },
    ...more,
  };
  const home = bareHome([bareRoom('room', 50, { furnishingFactor: 10 })], {
    leakage: { how: { by: 'rate', flow: 0.05 }, share: [1], ach50: null },
    cooling: [cooler],
  });
  const household = quietHousehold(home, { cooling: [always(setpoint)] });
  const input = { ...runInput({ home, weather: HOT }, { household, hours: HOURS }), spinUpDays: 1 };
  const { room, run } = recordRun(input);
  const unit = { removed: 0, water: 0 };
  simulate(input, [
    ({ home: { coolers }, steps }) => {
      unit.removed = coolers[0]!.removed[steps - 1]!;
      unit.water = coolers[0]!.water[steps - 1]!;
    },
  ]);
  const air = {
    temperature: last(room.airTemperature[0]!),
    humidityRatio: last(room.humidityRatio[0]!),
  };
  return { air, unit, sensible: last(room.cooling[0]!), ledger: run.ledger };
}

test('a coil at full output does what its bypass factor says', () => {
  const airflow = 400 / 3600;
  const { air, unit, sensible } = settled(
    { coil: { bypassFactor: 0.15, temperature: 10, airflow } },
    5, // out of reach, so that the unit always runs at full output
  );
  const humidityRatio = humidityRatioFromRelativeHumidity(10, 100, 101_325);
  const duty = coilDuty(air, { temperature: 10, humidityRatio }, 0.15);
  const flow = AIR_DENSITY * airflow;
  const row = {
    ...{ topic: 'Cooling', source: 'handbook method of apparatus dew point and bypass factor' },
    mark: 'closed form',
  } as const;
  compare({
    ...row,
    ...{ what: 'sensible heat of a coil of 10 °C', unit: 'W' },
    ...{ expected: flow * duty.sensible, got: sensible, tolerance: { relative: 0.005 } },
    because: 'one specific heat of air for the whole home',
  });
  compare({
    ...row,
    ...{ what: 'water of a coil of 10 °C', unit: 'kg/h' },
    ...{ expected: 3600 * flow * duty.water, got: 3600 * unit.water },
    tolerance: { relative: 1e-3 },
    because: 'nearly settled',
  });
  compare({
    ...row,
    ...{ what: 'latent heat of a coil of 10 °C', unit: 'W' },
    ...{ expected: flow * duty.latent, got: unit.removed - sensible },
    tolerance: { relative: 0.045 },
    because: 'latent heat of 20 °C; that of the vapour as it comes in is 4 % more',
  });
});

test('the room air that a duct blows out is made up by outdoor air', () => {
  const exhaust = 250 / 3600;
  const { air, sensible, ledger } = settled({ source: 'single duct', power: 1500, exhaust }, 29);
  const share = sensible / 1500;
  expect(share).toBeGreaterThan(0.1);
  expect(share).toBeLessThan(1);
  const heat = makeUpAirHeat(AIR_DENSITY * exhaust * share, OUTDOORS, air);
  const booked = total(ledger.energy.extracts) / (3600 * HOURS);
  compare({
    ...{ topic: 'Cooling', what: 'sensible heat of the air that makes up for a duct', unit: 'W' },
    ...{ source: 'balance of the room air', mark: 'closed form' },
    ...{ expected: heat.sensible, got: booked, tolerance: { relative: 0.02 } },
    because: 'vapour carries 1.4 % of the heat; nearly settled',
  });
});
