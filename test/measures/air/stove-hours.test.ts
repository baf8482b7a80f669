import { expect, test } from 'vitest';
import { simulate } from '../../../src/engine/simulate.ts';
import type { DeviceAction } from '../../../src/home/devices.ts';
import { createStoveHours } from '../../../src/measures/air/stove-hours.ts';
import { noAutomation } from '../../control/no-automation.ts';
import {
  always,
  bareHome,
  bareRoom,
  ideallyHeated,
  madeWeather,
  NEW_YEAR,
  quietHousehold,
  runAlways,
} from '../../engine/homes.ts';

/**
 * Hours of two days in which a stove that draws 5 L/s stands more than 4 Pa below outdoors, beside a fan,
 * as warm indoors as out and without wind.
 */
function hoursBeside(fan: number, roomAir = 0.005): number | null {
  const does: DeviceAction[] = [
    {
      ...{ kind: 'stove', batch: 1, interval: 3600, energy: 1, efficiency: 0.7 },
      ...{ radiantShare: 0.5, lag: 0, perRefuelling: [], roomAir },
    },
    { kind: 'extract fan', flow: fan, power: 0 },
  ];
  const crack = { height: 1.25, azimuth: null, pressureCoefficient: 0 };
  const home = ideallyHeated(
    bareHome([bareRoom('room', 60)], {
      leakage: {
        // What a blower door finds at 4 Pa is 24.6 L/s: 10 L/s at 1 Pa, exponent 0.65.
        how: {
          by: 'pressure',
          cracks: [{ ...crack, room: 0, flowAt1: 0.01, flowAt10: 0.01 * 10 ** 0.65 }],
        },
        ...{ share: [1], ach50: null },
      },
      devices: does.map((own, d) => ({ name: `device ${d}`, room: 0, does: own })),
    }),
  );
  const stoves = createStoveHours(home);
  simulate(
    {
      home,
      household: quietHousehold(home, { setpoints: [always(20)] }),
      automation: { ...noAutomation(1), deviceControls: [runAlways(0), runAlways(1)] },
      weather: madeWeather({ temperature: () => 20, wind: () => 0 }),
      ...{ dt: 600, start: NEW_YEAR, hours: 48, spinUpDays: 1 },
    },
    [stoves.observe],
  );
  return stoves.hours()[0]!;
}

test('a fan that takes with the stove what the cracks pass at 4 Pa goes beyond it, a weaker one does not', () => {
  // 24.6 L/s by the power law; the straight-and-square law in its place is within 2 % of it at 4 Pa.
  expect(hoursBeside(0.0246 - 0.005 - 0.0015)).toBe(0);
  expect(hoursBeside(0.0246 - 0.005 + 0.0015)).toBe(48);
});

test('the draught of the stove itself counts, and air from outdoors does not draw on the room', () => {
  expect(hoursBeside(0, 0.023)).toBe(0);
  expect(hoursBeside(0, 0.0265)).toBe(48);
  expect(hoursBeside(0.05, 0)).toBeNull();
});
