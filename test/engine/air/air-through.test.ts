import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Automation, OPEN_GATE } from '../../../src/control/automation.ts';
import { simulate } from '../../../src/engine/simulate.ts';
import type { Device } from '../../../src/home/devices.ts';
import type { Home } from '../../../src/home/home.ts';
import { noAutomation } from '../../control/no-automation.ts';
import {
  always,
  bareHome,
  bareRoom,
  madeWeather,
  NEW_YEAR,
  quietHousehold,
  runAlways,
} from '../homes.ts';
import { randomHome, randomHousehold, randomNumbers, swingingWeather } from '../random-home.ts';
import { last, recordRun, runInput } from '../record-run.ts';

/** Devices of every kind, drawn at random and run by the clock. */
function withDevices(home: Home, seed: number): { home: Home; automation: Automation } {
  const random = randomNumbers(seed + 77);
  const room = (): number =>
    Math.min(home.rooms.length - 1, Math.floor(random() * home.rooms.length));
  const flow = (): number => 0.005 + 0.03 * random();
  const balanced = flow();
  const does: Device['does'][] = [
    { kind: 'extract fan', flow: flow(), power: 20 },
    { kind: 'extract fan', flow: flow(), power: 20 },
    {
      kind: 'balanced ventilation',
      supplies: [{ room: room(), flow: balanced }],
      extracts: [{ room: room(), flow: balanced }],
      heatRecovery: random(),
      moistureRecovery: random(),
      power: 40,
    },
    { kind: 'purifier', cleanAir: [0, 0.06], power: 30 },
    { kind: 'heater', power: 800, radiantShare: 0.3 },
    { kind: 'humidifier', water: 5e-5, power: 20 },
    {
      kind: 'dehumidifier',
      type: random() < 0.5 ? 'compressor' : 'desiccant',
      ratedWater: 12 / 86_400,
      ratedPower: 250,
      ratedTemperature: 27,
      ratedHumidity: 60,
      standby: 1,
      tank: 3,
    },
    {
      kind: 'stove',
      batch: 1,
      interval: 2700,
      energy: 15e6,
      efficiency: 0.7,
      radiantShare: 0.5,
      lag: 1500,
      perRefuelling: [0, 3000],
      roomAir: 0.01,
    },
  ];
  return {
    home: {
      ...home,
      devices: does.map((d, k) => ({ name: `device ${k}`, room: room(), does: d })),
    },
    automation: {
      ...noAutomation(home.rooms.length),
      deviceControls: does.map((_, device) => ({
        device,
        by: {
          kind: 'clock',
          schedule: {
            base: 0,
            spells: [{ days: 127, from: 300 + 60 * device, to: 900, value: 1 }],
          },
        },
        gate: OPEN_GATE,
        permitted: always(1),
        leastRun: 0,
        leastRest: 0,
        drierBy: null,
        mostRun: Number.POSITIVE_INFINITY,
        emptiedByPeople: false,
      })),
    },
  };
}

test('heat, water, air and species close with every device at work', () => {
  const weather = swingingWeather();
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 8 }), fc.integer({ min: 1, max: 1e6 }), (rooms, seed) => {
      const drawn = withDevices(randomHome(rooms, seed), seed);
      const { ledger } = simulate(
        {
          ...drawn,
          household: randomHousehold(drawn.home, seed),
          weather,
          dt: 600,
          start: NEW_YEAR,
          hours: 24 * 14,
          spinUpDays: 1,
        },
        [],
      );
      const { energy, water, air, species } = ledger.residual;
      for (const residual of [energy, water, air, ...species]) expect(residual).toBeLessThan(1e-9);
    }),
    { numRuns: 25, seed: 3 },
  );
});

describe('two open windows', () => {
  const WIND = 5;
  /** Two rooms in a row, a window on each end, doors open or shut. */
  const exchangeOf = (azimuths: readonly [number, number], doors: number): number => {
    const home = bareHome([bareRoom('front', 40), bareRoom('back', 40)], {
      openings: azimuths.map((azimuth, room) => ({
        name: 'w',
        room,
        area: 0.5,
        height: 1,
        azimuth,
      })),
      doorways: [{ name: 'd', rooms: [0, 1], width: 0.8, height: 2, mixing: 0.01, shut: 0.001 }],
    });
    const household = quietHousehold(home, {
      openings: home.openings.map(() => always(1)),
      doorways: [always(doors)],
    });
    const weather = {
      ...madeWeather({ temperature: () => 10, humidityRatio: () => 0.004, wind: () => WIND }),
    };
    weather.windDirection.fill(180);
    const tracer = { name: 'co2', unit: 'ppm', outdoor: 0, penetration: 1 } as const;
    const traced = {
      ...home,
      species: [tracer],
      rooms: home.rooms.map((r) => ({ ...r, deposition: [0] })),
    };
    const source = {
      name: 'source',
      room: 0,
      when: [{ days: 127, from: 0, to: 1440 }],
      heat: 0,
      electricity: 0,
      vapour: 0,
      drying: 0,
      species: [1],
    };
    let level = 0;
    simulate(
      {
        home: traced,
        household: { ...household, activities: [source] },
        weather,
        dt: 600,
        start: NEW_YEAR,
        hours: 48,
        spinUpDays: 0,
      },
      [
        ({ room, steps, rooms }) => {
          level = room.species[0]![(steps - 1) * rooms]!;
        },
      ],
    );
    return 1 / level; // m3/s that the front room is flushed with
  };

  test('on opposite sides with the door open flush more than with it shut', () => {
    expect(exchangeOf([180, 0], 1)).toBeGreaterThan(2 * exchangeOf([180, 0], 0));
  });

  test('on the same side do not', () => {
    expect(exchangeOf([180, 180], 1)).toBeLessThan(1.5 * exchangeOf([180, 180], 0));
  });
});

test('an extract fan draws make-up air through the doorway into its room', () => {
  const home = bareHome([bareRoom('kitchen', 30), bareRoom('hall', 30)], {
    leakage: { how: { by: 'rate', flow: 0.01 }, share: [0, 1], ach50: null },
    doorways: [{ name: 'd', rooms: [1, 0], width: 0.8, height: 2, mixing: 0, shut: 0 }],
    species: [{ name: 'co2', unit: 'ppm', outdoor: 100, penetration: 1 }],
    devices: [{ name: 'fan', room: 0, does: { kind: 'extract fan', flow: 0.03, power: 0 } }],
  });
  const household = quietHousehold(home, { doorways: [always(0)] });
  const automation: Automation = {
    ...noAutomation(2),
    deviceControls: [runAlways(0)],
  };
  let level = 0;
  const { ledger } = simulate(
    {
      home: { ...home, rooms: home.rooms.map((r) => ({ ...r, deposition: [0] })) },
      household: {
        ...household,
        activities: [
          {
            name: 's',
            room: 0,
            when: [{ days: 127, from: 0, to: 1440 }],
            heat: 0,
            electricity: 0,
            vapour: 0,
            drying: 0,
            species: [3],
          },
        ],
      },
      automation,
      weather: madeWeather({ temperature: () => 10, humidityRatio: () => 0.004 }),
      dt: 600,
      start: NEW_YEAR,
      hours: 24,
      spinUpDays: 2,
    },
    [
      ({ room, steps, rooms }) => {
        level = room.species[0]![(steps - 1) * rooms]!;
      },
    ],
  );
  // All 30 L/s reach the kitchen through its shut door: 3 ppm m3/s over 0.03 m3/s above outdoors.
  expect(level).toBeCloseTo(200, 3);
  expect(ledger.residual.air).toBeLessThan(1e-12);
});

test('air takes the ways in by their open area, and a shut door leaves 100 cm2', () => {
  // The kitchen's fan draws from the leaky hall: through its own door, shut, and by way of the bath,
  // through two doors that stand open by a little more. Two holes of 141 cm2 in a row pass as much as
  // one of 100 cm2 (1/141.4^2 twice is 1/100^2), so half of the air comes by way of the bath.
  const door = (from: number, to: number) =>
    ({ name: 'd', rooms: [from, to], width: 0.8, height: 2, mixing: 0, shut: 0 }) as const;
  const rooms = ['kitchen', 'hall', 'bath'].map((n) => bareRoom(n, 30, { deposition: [0] }));
  const home = bareHome(rooms, {
    leakage: { how: { by: 'rate', flow: 0 }, share: [0, 1, 0], ach50: null },
    doorways: [door(1, 0), door(1, 2), door(2, 0)],
    species: [{ name: 'co2', unit: 'ppm', outdoor: 100, penetration: 1 }],
    devices: [{ name: 'fan', room: 0, does: { kind: 'extract fan', flow: 0.03, power: 0 } }],
  });
  const ajar = (0.01 * (Math.SQRT2 - 1)) / (0.8 * 2);
  const source = {
    ...{ name: 's', room: 2, when: [{ days: 127, from: 0, to: 1440 }], heat: 0, electricity: 0 },
    ...{ vapour: 0, drying: 0, species: [3] },
  };
  const { species } = recordRun(
    runInput(
      { home, weather: madeWeather({ temperature: () => 10, humidityRatio: () => 0.004 }) },
      {
        household: quietHousehold(home, {
          doorways: [always(0), always(ajar), always(ajar)],
          activities: [source],
        }),
        automation: { ...noAutomation(3), deviceControls: [runAlways(0)] },
        spinUpDays: 2,
      },
    ),
  );
  // 3 ppm m3/s into half of 0.03 m3/s, then into all of it. Holes are straight lines below a millionth
  // of a pascal, which at 2 Pa takes the root of 1e-6/2 off them, less than a thousandth.
  expect(Math.abs(last(species[0]![2]!) - 300)).toBeLessThan(0.001 * 200);
  expect(last(species[0]![0]!) - 100).toBeCloseTo(100, 3);
});
