import { describe, expect, test } from 'vitest';
import { type Automation, OPEN_GATE } from '../../../src/control/automation.ts';
import { simulate } from '../../../src/engine/simulate.ts';
import type { Device, DeviceAction } from '../../../src/home/devices.ts';
import type { Home } from '../../../src/home/home.ts';
import { noAutomation } from '../../control/no-automation.ts';
import {
  always,
  bareHome,
  bareRoom,
  ideallyHeated,
  madeWeather,
  NEW_YEAR,
  quietHousehold,
} from '../homes.ts';
import { AIR_HEAT } from '../reference-air.ts';

const CO2 = { name: 'co2', unit: 'ppm', outdoor: 400, penetration: 1 } as const;
const PM = { name: 'pm25', unit: 'µg/m3', outdoor: 10, penetration: 1 } as const;

/** Two rooms with a door, at 20 °C, and whatever devices. */
function twoRooms(devices: readonly DeviceAction[], more: Partial<Home> = {}): Home {
  const rooms = [
    bareRoom('a', 50, { deposition: [0, 0] }),
    bareRoom('b', 30, { deposition: [0, 0] }),
  ];
  return ideallyHeated(
    bareHome(rooms, {
      leakage: { how: { by: 'rate', flow: 0.01 }, share: [0.5, 0.5], ach50: null },
      doorways: [{ name: 'door', rooms: [0, 1], width: 0.8, height: 2, mixing: 0.01, shut: 0.002 }],
      species: [CO2, PM],
      devices: devices.map((does, d): Device => ({ name: `device ${d + 1}`, room: 0, does })),
      ...more,
    }),
  );
}

function runningAlways(home: Home, share = 1, emptiedByPeople = false): Automation {
  return {
    ...noAutomation(home.rooms.length),
    deviceControls: home.devices.map((_, device) => ({
      device,
      by: { kind: 'clock', schedule: always(share) },
      gate: OPEN_GATE,
      permitted: always(1),
      leastRun: 0,
      leastRest: 0,
      drierBy: null,
      mostRun: Number.POSITIVE_INFINITY,
      emptiedByPeople,
    })),
  };
}

function run(
  home: Home,
  automation: Automation,
  days = 3,
  household = quietHousehold(home, { setpoints: home.rooms.map(() => always(20)) }),
) {
  const last = {
    air: [0, 0],
    level: [
      [0, 0],
      [0, 0],
    ],
    device: [] as {
      water: number;
      heat: number;
      electricity: number;
      share: number;
      fuel: number;
    }[],
  };
  const sums = home.devices.map(() => ({ water: 0, heat: 0, electricity: 0, fuel: 0, ran: 0 }));
  const result = simulate(
    {
      home,
      household,
      automation,
      weather: madeWeather({ temperature: () => 5, humidityRatio: () => 0.004 }),
      dt: 600,
      start: NEW_YEAR,
      hours: 24 * days,
      spinUpDays: 2,
    },
    [
      (trace) => {
        const at = (trace.steps - 1) * trace.rooms;
        last.air = [0, 1].map((i) => trace.room.airTemperature[at + i]!);
        last.level = trace.room.species.map((c) => [c[at]!, c[at + 1]!]);
        trace.home.devices.forEach((d, k) => {
          for (let s = 0; s < trace.steps; s++) {
            sums[k]!.water += d.water[s]! * trace.dt;
            sums[k]!.heat += d.heat[s]! * trace.dt;
            sums[k]!.electricity += d.electricity[s]! * trace.dt;
            sums[k]!.fuel += d.fuel[s]! * trace.dt;
            sums[k]!.ran += d.share[s]! * trace.dt;
          }
        });
      },
    ],
  );
  const { energy, water, air, species } = result.ledger.residual;
  for (const residual of [energy, water, air, ...species]) expect(residual).toBeLessThan(1e-9);
  return { last, sums, result };
}

const sumOf = (values: Float64Array, room: number): number =>
  values.reduce((sum, v, k) => (k % 2 === room ? sum + v : sum), 0);

describe('an extract fan', () => {
  const fan: DeviceAction = { kind: 'extract fan', flow: 0.02, power: 15 };

  test('adds half of itself to a steady leakage, and draws its air through the doorway and the leaks', () => {
    const home = twoRooms([{ ...fan, flow: 0.012 }]);
    const { result } = run(home, runningAlways(home));
    const { leakage, extracts, doorways } = result.ledger.energy;
    const flow = (values: Float64Array, room: number): number =>
      sumOf(values, room) / -15 / (3 * 86_400) / AIR_HEAT;
    // 12 L/s of fan and 10 L/s of leaks: 16 L/s come in and 4 leave, half in each room, all at 15 K.
    expect(flow(leakage, 0) + flow(leakage, 1)).toBeCloseTo(0.004, 4);
    expect(flow(extracts, 0)).toBeCloseTo(0.012, 12);
    expect(Math.abs(flow(extracts, 1))).toBe(0);
    // What comes in at the other room beyond what leaves there by leaks passes the doorway.
    expect(flow(doorways, 1)).toBeCloseTo(0.006, 4);
  });

  test('stronger than twice the leaks stops all that would leave by them', () => {
    const home = { ...twoRooms([fan]), doorways: [] };
    const { result } = run(home, runningAlways(home));
    const { leakage } = result.ledger.energy;
    const share = (room: number): number => sumOf(leakage, room) / -15 / (3 * 86_400) / AIR_HEAT;
    expect(share(0)).toBeCloseTo(0, 4);
    expect(share(1)).toBeCloseTo(0.005, 5);
  });

  test('at a quarter of its share takes a quarter of the air', () => {
    const home = { ...twoRooms([fan]), doorways: [] };
    const { result } = run(home, runningAlways(home, 0.25));
    const { leakage, extracts } = result.ledger.energy;
    const flow = (values: Float64Array): number => sumOf(values, 0) / -15 / (3 * 86_400) / AIR_HEAT;
    // 5 L/s of fan and 5 L/s of leaks: 2.5 leave by these.
    expect(flow(leakage)).toBeCloseTo(0.0025, 4);
    expect(flow(extracts)).toBeCloseTo(0.005, 12);
  });
});

test('balanced ventilation hands back the share of the heat it promises', () => {
  const flow = 0.02;
  const ventilation: DeviceAction = {
    kind: 'balanced ventilation',
    supplies: [{ room: 0, flow }],
    extracts: [{ room: 1, flow }],
    heatRecovery: 0.8,
    moistureRecovery: 0,
    power: 0,
  };
  const home = twoRooms([ventilation]);
  const { result } = run(home, runningAlways(home));
  const { fans, extracts } = result.ledger.energy;
  const lost = (fans[0]! + fans[1]! + extracts[0]! + extracts[1]!) / (3 * 86_400);
  expect(lost).toBeCloseTo(-0.2 * 15 * flow * AIR_HEAT, -0.5);
});

test('half of what the fans of a ventilation unit draw warms its supply air', () => {
  // Two alike fans: the one in the supply heats the supply, the other blows its heat outdoors.
  const fansTake = (power: number): number => {
    const home = twoRooms([
      {
        kind: 'balanced ventilation',
        supplies: [{ room: 0, flow: 0.02 }],
        extracts: [{ room: 1, flow: 0.02 }],
        ...{ heatRecovery: 0.8, moistureRecovery: 0, power },
      },
    ]);
    const { fans } = run(home, runningAlways(home)).result.ledger.energy;
    return (fans[0]! + fans[1]!) / (3 * 86_400);
  };
  expect(fansTake(60) - fansTake(0)).toBeCloseTo(30, 6);
});

test.each([0, 0.65, 1])(
  'a filter in the supply air that holds %d brings in that much less',
  (held) => {
    // Supply of 20 L/s into a, extract of as much from b, leaks of 5 L/s each: what rests is of outdoors
    // the share of (unfiltered leaks + filtered supply) over all air that comes in.
    const flow = 0.02;
    const ventilation: DeviceAction = {
      kind: 'balanced ventilation',
      supplies: [{ room: 0, flow }],
      extracts: [{ room: 1, flow }],
      ...{ heatRecovery: 0.8, moistureRecovery: 0, power: 0, held: [0, held] },
    };
    const one = twoRooms([ventilation]);
    const home = {
      ...one,
      doorways: [],
      devices: [{ ...one.devices[0]!, does: { ...ventilation, extracts: [{ room: 0, flow }] } }],
    };
    const { last, result } = run(home, runningAlways(home), 3);
    expect(last.level[1]![0]).toBeCloseTo((10 * (0.005 + (1 - held) * flow)) / (0.005 + flow), 6);
    expect(last.level[1]![1]).toBeCloseTo(10, 9);
    expect(last.level[0]).toEqual([expect.closeTo(400, 9), expect.closeTo(400, 9)]);
    const kept = result.ledger.species[1]!.devices;
    expect(sumOf(kept, 0)).toBeCloseTo(-held * flow * 10 * 3 * 86_400, 3);
  },
);

test('a filter holds its share of what is supplied to each room, at half flow half as much', () => {
  const [small, large, held] = [0.01, 0.03, 0.4];
  const flows = [
    { room: 0, flow: small },
    { room: 1, flow: large },
  ];
  const ventilation: DeviceAction = {
    ...{ kind: 'balanced ventilation', supplies: flows, extracts: flows },
    ...{ heatRecovery: 0.8, moistureRecovery: 0, power: 0, held: [0, held] },
  };
  const home = { ...twoRooms([ventilation]), doorways: [] };
  const { last, result } = run(home, runningAlways(home, 0.5), 3);
  [small / 2, large / 2].forEach((flow, room) => {
    const outdoors = (0.005 + (1 - held) * flow) / (0.005 + flow);
    expect(last.level[1]![room]).toBeCloseTo(10 * outdoors, 6);
    const kept = sumOf(result.ledger.species[1]!.devices, room);
    expect(kept).toBeCloseTo(-held * flow * 10 * 3 * 86_400, 3);
  });
});

describe('a dehumidifier', () => {
  const does: DeviceAction = {
    kind: 'dehumidifier',
    type: 'desiccant',
    ratedWater: 7 / 86_400,
    ratedPower: 600,
    ratedTemperature: 20,
    ratedHumidity: 60,
    standby: 1,
    tank: Number.POSITIVE_INFINITY,
  };

  test('gives the room its electricity and the latent heat of its litres, exactly', () => {
    const home = twoRooms([does]);
    const { sums, result } = run(home, runningAlways(home));
    const [d] = sums;
    const latent = (2501 - 2.361 * 20) * 1e3; // J/kg at 20 °C
    expect(d!.heat).toBeCloseTo(d!.electricity - d!.water * latent, 3);
    expect(d!.water).toBeLessThan(0);
    expect(sumOf(result.ledger.water.devices, 0)).toBeCloseTo(d!.water, 9);
    expect(sumOf(result.ledger.energy.devices, 0)).toBeCloseTo(d!.heat, 3);
  });

  test('stops when its tank is full', () => {
    const home = twoRooms([{ ...does, tank: 2 } as DeviceAction]);
    const { sums } = run(home, runningAlways(home, 1, true), 8); // nobody home to empty it
    expect(-sums[0]!.water).toBeLessThanOrEqual(2 + 1e-9);
  });
});

test('a purifier divides a steady level by 1 + clean air over air exchange', () => {
  const cleanAir = 0.05;
  const purifier: DeviceAction = { kind: 'purifier', cleanAir: [0, cleanAir], power: 30 };
  const home = { ...twoRooms([purifier]), doorways: [] };
  const { last, sums } = run(home, runningAlways(home));
  expect(last.level[1]![0]).toBeCloseTo((10 * 0.005) / (0.005 + cleanAir), 3);
  expect(last.level[1]![1]).toBeCloseTo(10, 3);
  expect(last.level[0]![0]).toBeCloseTo(400, 6);
  expect(sums[0]!.heat).toBeCloseTo(sums[0]!.electricity, 6);
});

test('a plug-in heater takes over from the emitters watt for watt', () => {
  const heater: DeviceAction = { kind: 'heater', power: 50, radiantShare: 0.4 };
  const with_ = twoRooms([heater]);
  const without = twoRooms([]);
  const heatOf = (home: Home) => {
    const { heating } = run(home, runningAlways(home)).result.ledger.energy;
    return heating.reduce((sum, v) => sum + v, 0);
  };
  expect(heatOf(without) - heatOf(with_)).toBeCloseTo(50 * 3 * 86_400, 0);
});

test('a stove gives the heat of its wood, and smoke with each refuelling', () => {
  const stove: DeviceAction = {
    kind: 'stove',
    batch: 1.5,
    interval: 3600,
    energy: 15e6,
    efficiency: 0.75,
    radiantShare: 0.5,
    lag: 1200,
    perRefuelling: [0, 5000],
    roomAir: 0.01,
  };
  const leaky = { how: { by: 'rate', flow: 0.4 }, share: [0.5, 0.5], ach50: null } as const;
  const home = twoRooms([stove], { leakage: leaky });
  const { sums, result } = run(home, runningAlways(home));
  const batches = 3 * 24;
  expect(sums[0]!.fuel).toBeCloseTo(batches * 1.5 * 15e6, -3);
  // What is still in the stove at the end was in it at the start: it burns without a break.
  expect(sums[0]!.heat / (batches * 1.5 * 15e6 * 0.75)).toBeCloseTo(1, 3);
  expect(sumOf(result.ledger.species[1]!.devices, 0)).toBeCloseTo(batches * 5000, 3);
});

describe('a device whose power is known', () => {
  const heater: DeviceAction = { kind: 'heater', power: 1000, radiantShare: 0.4 };
  const drier: DeviceAction = {
    ...{ kind: 'dehumidifier', type: 'desiccant', ratedWater: 7 / 86_400, ratedPower: 600 },
    ...{ ratedTemperature: 20, ratedHumidity: 60, standby: 2, tank: 0.5 },
  };
  const HOURS = 48;
  const steps = HOURS * 6;
  /** What each device drew, gave and took over two days [J, J, kg], with the power of the first known. */
  const ran = (
    does: DeviceAction,
    power: (k: number) => number,
    controlled = 1,
    more: readonly Device[] = [],
  ) => {
    const one = twoRooms([does]);
    const home = { ...one, devices: [...one.devices, ...more] };
    const sums = { electricity: 0, heat: 0, water: 0, share: 0 };
    const devicePower = { 'device 1': Float64Array.from({ length: steps }, (_, k) => power(k)) };
    const result = simulate(
      {
        home,
        household: quietHousehold(home, { setpoints: home.rooms.map(() => always(20)) }),
        automation: runningAlways(home, controlled),
        weather: madeWeather({ temperature: () => 5, humidityRatio: () => 0.004 }),
        ...{ dt: 600, start: NEW_YEAR, hours: HOURS, spinUpDays: 2, devicePower },
      },
      [
        ({ home: { devices }, steps: many, dt }) => {
          const [d] = devices;
          for (let s = 0; s < many; s++) {
            sums.electricity += d!.electricity[s]! * dt;
            sums.heat += d!.heat[s]! * dt;
            sums.water += d!.water[s]! * dt;
            sums.share += d!.share[s]! / steps;
          }
        },
      ],
    );
    const { energy, water } = result.ledger.residual;
    for (const residual of [energy, water]) expect(residual).toBeLessThan(1e-9);
    return sums;
  };

  test('draws it, whatever its control commands: a heater beyond its rating too', () => {
    const pattern = (k: number): number => (k % 3 === 0 ? 1500 : k % 3 === 1 ? 250 : 0);
    const energy =
      600 * Array.from({ length: steps }, (_, k) => pattern(k)).reduce((a, b) => a + b);
    for (const controlled of [0, 1]) {
      const sums = ran(heater, pattern, controlled);
      expect(sums.electricity / energy).toBeCloseTo(1, 12);
      expect(sums.heat / energy).toBeCloseTo(1, 12);
    }
  });

  test('a dehumidifier runs for the share of the step that its power tells, and its tank stops nothing', () => {
    // 301 of 600 W beside 2 W while it waits is half of the time; 7 L a day and less fill half a litre in hours
    const half = ran(drier, () => 301);
    expect(half.share).toBeCloseTo(0.5, 9);
    expect(half.electricity / (HOURS * 3600)).toBeCloseTo(301, 6);
    expect(-half.water).toBeGreaterThan(2 * 0.5);
    expect(ran(drier, () => 0).share).toBe(0);
    expect(ran(drier, () => 900).share).toBeCloseTo(1, 9);
  });

  test('a fan blows as much as its power says, and no more than all it can', () => {
    const fan: DeviceAction = { kind: 'extract fan', flow: 0.02, power: 20 };
    expect(ran(fan, () => 5).share).toBeCloseTo(0.25, 9);
    expect(ran(fan, () => 50).share).toBeCloseTo(1, 9);
  });

  test('leaves others to their control, whatever they are called', () => {
    const other = { name: 'constructor', room: 0, does: heater };
    expect(ran(heater, () => 250, 1, [other])).toMatchObject({ share: expect.closeTo(0.25, 9) });
  });

  test('is left to its control in the spin-up', () => {
    const home = twoRooms([heater]);
    /** After the first minute of the period. [°C] */
    const begins = (devicePower: Readonly<Record<string, Float64Array>>): number => {
      let first = Number.NaN;
      simulate(
        {
          ...{ home, weather: madeWeather({ temperature: () => 5 }), devicePower },
          household: quietHousehold(home, { setpoints: home.rooms.map(() => always(-50)) }),
          automation: runningAlways(home, 0),
          ...{ dt: 60, start: NEW_YEAR, hours: 1, spinUpDays: 2 },
        },
        [
          ({ room }) => {
            if (Number.isNaN(first)) first = room.airTemperature[0]!;
          },
        ],
      );
      return first;
    };
    const known = begins({ 'device 1': new Float64Array(60).fill(1000) });
    // 60 kJ in 50 m3 of air are 1 K; two days of 1 kW would be ten times as much.
    expect(known - begins({})).toBeGreaterThan(0.3);
    expect(known - begins({})).toBeLessThan(1);
  });
});
