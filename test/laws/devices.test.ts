import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type Automation,
  type DeviceControl,
  OPEN_GATE,
  PERFECT_SENSOR,
  PLAIN_THERMOSTAT,
} from '../../src/control/automation.ts';
import { simulate } from '../../src/engine/simulate.ts';
import type { DeviceAction } from '../../src/home/devices.ts';
import type { Home } from '../../src/home/home.ts';
import { noAutomation } from '../control/no-automation.ts';
import { always, NEW_YEAR } from '../engine/homes.ts';
import { randomHome, randomHousehold, swingingWeather } from '../engine/random-home.ts';

const weather = swingingWeather();
const DRYER: DeviceAction = {
  kind: 'dehumidifier',
  type: 'compressor',
  ratedWater: 12 / 86_400,
  ratedPower: 260,
  ratedTemperature: 27,
  ratedHumidity: 60,
  standby: 0,
  tank: Number.POSITIVE_INFINITY,
};

function control(device: number, more: Partial<DeviceControl> = {}): DeviceControl {
  return {
    device,
    by: { kind: 'always' },
    gate: OPEN_GATE,
    permitted: always(1),
    leastRun: 0,
    leastRest: 0,
    drierBy: null,
    mostRun: Number.POSITIVE_INFINITY,
    emptiedByPeople: false,
    ...more,
  };
}

function withDevice(home: Home, does: DeviceAction): Home {
  return { ...home, devices: [{ name: 'device', room: 0, does }] };
}

/** Every room's temperatures, humidities and levels, and the heat given while a window stood open. */
function follow(home: Home, seed: number, automation: Automation, days = 6) {
  const values: number[] = [];
  const highest = home.species.map(() => 0);
  let heatedOpen = 0;
  simulate(
    {
      home,
      household: randomHousehold(home, seed),
      automation,
      weather,
      dt: 600,
      start: NEW_YEAR,
      hours: 24 * days,
      spinUpDays: 1,
    },
    [
      ({ room, steps, rooms }) => {
        for (let k = 0; k < steps * rooms; k++) {
          values.push(room.airTemperature[k]!, room.relativeHumidity[k]!);
          for (let q = 0; q < room.species.length; q++) {
            values.push(room.species[q]![k]!);
            highest[q] = Math.max(highest[q]!, room.species[q]![k]!);
          }
          heatedOpen += room.heating[k]! * room.windowOpen[k]!;
        }
      },
    ],
  );
  return { values, highest, heatedOpen };
}

const seeds = fc.integer({ min: 1, max: 1e6 });

test('a gate that never opens is the same as no device', () => {
  fc.assert(
    fc.property(seeds, (seed) => {
      const home = randomHome(3, seed);
      const dry = withDevice(home, DRYER);
      const never = { ...noAutomation(3), deviceControls: [control(0, { permitted: always(0) })] };
      const empty = {
        ...noAutomation(3),
        // No presence sensor anywhere: nobody is ever seen.
        deviceControls: [control(0, { gate: { present: 'at home', windowsShut: false } })],
      };
      const without = follow(home, seed, noAutomation(3)).values;
      expect(follow(dry, seed, never).values).toEqual(without);
      expect(follow(dry, seed, empty).values).toEqual(without);
    }),
    { numRuns: 6, seed: 5 },
  );
});

test('a gate that is always open is the same as none', () => {
  const sensor = { holdOn: 1e9, delay: 0, missesAwake: 0, missesAsleep: 0 };
  fc.assert(
    fc.property(seeds, (seed) => {
      const home = withDevice(randomHome(3, seed), DRYER);
      const gated = control(0, { gate: { present: 'at home', windowsShut: false } });
      const seen = { ...noAutomation(3), presenceSensors: [sensor, sensor, sensor] };
      // After the first sign of life the sensors never let go, and the spin-up has seen one.
      const open = follow(home, seed, { ...seen, deviceControls: [gated] }).values;
      const plain = follow(home, seed, { ...seen, deviceControls: [control(0)] }).values;
      const differing = open.filter((v, k) => Math.abs(v - plain[k]!) > 1e-6 * Math.abs(v) + 1);
      expect(differing.length).toBeLessThan(0.02 * open.length);
    }),
    { numRuns: 4, seed: 5 },
  );
});

test('more clean air never raises fine particles', () => {
  fc.assert(
    fc.property(seeds, fc.double({ min: 0.005, max: 0.1, noNaN: true }), (seed, flow) => {
      const home = randomHome(3, seed);
      const cleaned = (cleanAir: number): number =>
        follow(
          withDevice(home, { kind: 'purifier', cleanAir: [0, cleanAir], power: 0 }),
          seed,
          { ...noAutomation(3), deviceControls: [control(0)] },
          3,
        ).highest[1]!;
      expect(cleaned(2 * flow)).toBeLessThanOrEqual(cleaned(flow) * (1 + 1e-9));
      expect(cleaned(flow)).toBeLessThanOrEqual(cleaned(0) * (1 + 1e-9));
    }),
    { numRuns: 8, seed: 9 },
  );
});

describe('lock-out', () => {
  const locked = (windowDelay: number | null): Automation => ({
    ...noAutomation(4),
    thermostats: Array.from({ length: 4 }, () => ({ ...PLAIN_THERMOSTAT, windowDelay })),
  });

  test('no heat flows while a window stands open and heating is locked out at once', () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        const drawn = randomHome(4, seed);
        const home = { ...drawn, emitters: drawn.emitters.map((e) => ({ ...e, lag: 0 })) };
        expect(follow(home, seed, locked(0)).heatedOpen).toBe(0);
      }),
      { numRuns: 8, seed: 2 },
    );
  });

  test('without it some does', () => {
    const home = randomHome(4, 3);
    expect(follow(home, 3, locked(null)).heatedOpen).toBeGreaterThan(0);
  });
});

test('a rule without on delay and with a perfect sensor acts exactly beyond its threshold', () => {
  const home = withDevice(randomHome(2, 4), { kind: 'heater', power: 0, radiantShare: 0 });
  // Windows stay shut: an airing makes the air moister at its end than in any step's mean.
  const household = {
    ...randomHousehold(home, 4),
    openings: home.openings.map(() => always(0)),
  };
  const watch = (automation: Automation): { ran: number[]; humid: number[] } => {
    const ran: number[] = [];
    const humid: number[] = [];
    simulate(
      {
        home,
        household,
        automation,
        weather,
        dt: 600,
        start: NEW_YEAR,
        hours: 24 * 20,
        spinUpDays: 1,
      },
      [
        ({ room, home: whole, steps, rooms }) => {
          for (let s = 0; s < steps; s++) {
            ran.push(whole.devices[0]!.share[s]!);
            humid.push(room.relativeHumidity[s * rooms]!);
          }
        },
      ],
    );
    return { ran, humid };
  };
  const typical = watch(noAutomation(2)).humid.sort((a, b) => a - b);
  const value = typical[typical.length >> 1]!;
  const above = {
    quantity: 'relative humidity',
    room: 0,
    is: 'above',
    value,
    clear: value,
  } as const;
  const { ran, humid } = watch({
    ...noAutomation(2),
    deviceControls: [control(0, { by: { kind: 'rule' } })],
    rules: [
      {
        name: 'damp',
        all: [{ ...above, sensor: PERFECT_SENSOR }],
        onDelay: 0,
        gate: OPEN_GATE,
        actions: [{ do: 'device', device: 0, on: true }],
      },
    ],
  });
  // The decision looks at the start of a step, the trace at its mean: where both this step and the
  // one before lie well on the same side of the line, so does the start between them.
  let clear = 0;
  for (let k = 1; k < ran.length; k++) {
    const [a, b] = [humid[k - 1]! > value, humid[k]! > value];
    const near = Math.min(Math.abs(humid[k - 1]! - value), Math.abs(humid[k]! - value));
    if (a !== b || near < 1) continue;
    clear++;
    expect(ran[k]).toBe(b ? 1 : 0);
  }
  expect(clear).toBeGreaterThan(0.5 * ran.length);
});
