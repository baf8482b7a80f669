import { describe, expect, test } from 'vitest';
import type { AirTerm } from '../../../src/engine/ledger/ledger.ts';
import { simulate } from '../../../src/engine/simulate.ts';
import type { DeviceAction } from '../../../src/home/devices.ts';
import type { Home } from '../../../src/home/home.ts';
import { quadraticFlow, quadraticLaw } from '../../../src/physics/airflow/quadratic-law.ts';
import { humidityRatioFromRelativeHumidity } from '../../../src/physics/moist-air/humidity-ratio.ts';
import { dryAirDensity } from '../../../src/physics/moist-air/moist-air-volume.ts';
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
} from '../homes.ts';
import { randomHome, randomHousehold, swingingWeather } from '../random-home.ts';

test('months are booked by the wall clock of the household', () => {
  const home = randomHome(6, 5);
  const household = randomHousehold(home, 5);
  const months = (offset: number) =>
    simulate(
      {
        ...{ home, weather: swingingWeather(), dt: 3600, hours: 24 * 31, spinUpDays: 1 },
        ...{
          automation: noAutomation(home.rooms.length),
          household: { ...household, clock: { from: [0], offset: [offset] } },
        },
        start: NEW_YEAR - offset,
      },
      [],
    ).ledger.months;
  expect(months(-3600)).toEqual([0]); // from 01:00 UTC to 01:00 UTC
  expect(months(0)).toEqual([0]);
});

describe('the air that a run books', () => {
  const { home, automation } = withFans(randomHome(6, 5));
  let outdoorAir = 0; // m3
  const { ledger } = simulate(
    {
      ...{ home, automation, household: randomHousehold(home, 5), weather: swingingWeather() },
      ...{ dt: 600, start: NEW_YEAR, hours: 24 * 45, spinUpDays: 1 },
    },
    [
      ({ room, steps, rooms, dt }) => {
        for (let k = 0; k < steps * rooms; k++) outdoorAir += room.outdoorAir[k]! * dt;
      },
    ],
  );
  const ways = (terms: readonly AirTerm[], k: number): number =>
    terms.reduce((sum, term) => sum + ledger.air[term][k]!, 0);

  test('comes out of each room in each month as it went in, outdoors and doorways together', () => {
    expect(ledger.months).toEqual([0, 1]);
    ledger.months.forEach((_, month) => {
      const into = home.rooms.map((_, i) => ways(IN, month * home.rooms.length + i));
      const out = home.rooms.map((_, i) => ways(OUT, month * home.rooms.length + i));
      home.doorways.forEach(({ rooms: [a, b] }, d) => {
        const at = month * home.doorways.length + d;
        const [forth, back] = [ledger.doorways.forth[at]!, ledger.doorways.back[at]!];
        expect(forth + back).toBeGreaterThan(0);
        into[b]! += forth;
        out[a]! += forth;
        into[a]! += back;
        out[b]! += back;
      });
      home.rooms.forEach((_, i) => {
        expect(into[i]).toBeGreaterThan(0);
        expect(Math.abs(into[i]! - out[i]!)).toBeLessThan(1e-9 * into[i]!);
      });
    });
  });

  test('is what the trace shows, step by step', () => {
    const all = ledger.air.leaksIn.map((_, k) => ways(IN, k)).reduce((sum, x) => sum + x, 0);
    expect(Math.abs(outdoorAir - all)).toBeLessThan(1e-9 * all);
  });
});

test('a fan in a leaky house brings what root finding says, and half of it where it is weak', () => {
  // Two cracks, at 0.6 and 1.9 m, 20 °C inside and 0 outside, no wind.
  const heights = [0.625, 1.875];
  for (const fan of [0, 0.004, 0.01, 0.03]) {
    const { pressure, outdoorAir } = leakyHouse(fan, 0, heights);
    const known = byBisection(fan, 0, heights);
    // A ten-thousandth of all air is what the network leaves unsolved.
    expect(Math.abs(outdoorAir - known.outdoorAir)).toBeLessThan(2e-4 * known.outdoorAir);
    expect(Math.abs(pressure - known.pressure)).toBeLessThan(
      1e-3 * Math.abs(known.pressure) + 1e-4,
    );
  }
  const rise = leakyHouse(0.002, 0, heights).outdoorAir - leakyHouse(0, 0, heights).outdoorAir;
  expect(rise / 0.002).toBeGreaterThan(0.4);
  expect(rise / 0.002).toBeLessThan(0.6);
});

test('as warm inside as out, all that a fan takes comes in, at the pressure of the law of its cracks', () => {
  for (const fan of [0.005, 0.02, 0.04]) {
    const { pressure, outdoorAir } = leakyHouse(fan, 20, [1.25]);
    expect(outdoorAir).toBeCloseTo(fan, 9);
    const low = outdoorDensity(20) / REFERENCE;
    // dp = a q + b q2 for the flow by volume of the outdoor air, heavier than what b was measured with.
    const flow = fan / low;
    expect(-pressure).toBeCloseTo(LAW.a * flow + LAW.b * low * flow * flow, 4);
  }
});

test('a rate of leakage takes up half of a weak fan, and nothing of one beyond twice the rate', () => {
  // By hand: max(N, S + N/2) of what goes with the fan, N less of it against; S 0.01 m3/s.
  for (const [fan, expected] of [
    [0, 0.01],
    [0.004, 0.012],
    [0.02, 0.02],
    [0.03, 0.03],
  ] as const) {
    const how = { by: 'rate', flow: 0.01 } as const;
    const { outdoorAir } = houseWith({ how, share: [1], ach50: null }, fan, 20);
    expect(outdoorAir).toBeCloseTo(expected, 9);
  }
});

/** Mean pressure at half its height [Pa] and outdoor air [m3/s] of a house of 100 m2 at 20 °C. */
function leakyHouse(fan: number, outdoors: number, heights: readonly number[]) {
  const cracks = heights.map((height) => ({
    ...{ room: 0, height, azimuth: null, pressureCoefficient: 0 },
    ...{ flowAt1: FLOW_AT_1 / heights.length, flowAt10: FLOW_AT_10 / heights.length },
  }));
  return houseWith({ how: { by: 'pressure', cracks }, share: [1], ach50: null }, fan, outdoors);
}

function houseWith(leakage: Home['leakage'], fan: number, outdoors: number) {
  const home = ideallyHeated(
    bareHome([bareRoom('house', 250)], {
      leakage,
      devices: [{ name: 'fan', room: 0, does: { kind: 'extract fan', flow: fan, power: 0 } }],
    }),
  );
  let [pressure, outdoorAir] = [Number.NaN, Number.NaN];
  simulate(
    {
      home,
      household: quietHousehold(home, { setpoints: [always(20)] }),
      automation: { ...noAutomation(1), deviceControls: [runAlways(0)] },
      weather: madeWeather({ temperature: () => outdoors, wind: () => 0 }),
      ...{ dt: 600, start: NEW_YEAR, hours: 24, spinUpDays: 2 },
    },
    [
      ({ room, steps }) => {
        pressure = room.pressureDifference[steps - 1]!;
        outdoorAir = room.outdoorAir[steps - 1]!;
      },
    ],
  );
  return { pressure, outdoorAir };
}

/** The same by halving the range of pressures in which the house balances, for 20 °C inside. */
function byBisection(fan: number, outdoors: number, heights: readonly number[]) {
  const [outside, inside] = [outdoorDensity(outdoors), outdoorDensity(20)];
  const lift = 9.80665 * (outside - inside);
  /** Mass into the house through one crack. [kg/s] */
  const through = (atFloor: number, height: number): number => {
    const drop = -atFloor - lift * height;
    const density = drop > 0 ? outside : inside;
    const law = {
      a: LAW.a * heights.length,
      b: LAW.b * heights.length ** 2 * (density / REFERENCE),
    };
    return Math.sign(drop) * density * quadraticFlow(law, Math.abs(drop));
  };
  let [low, high] = [-200, 200];
  for (let k = 0; k < 100; k++) {
    const middle = 0.5 * (low + high);
    const net = heights.reduce((sum, z) => sum + through(middle, z), -REFERENCE * fan);
    if (net > 0) low = middle;
    else high = middle;
  }
  const into = heights.reduce((sum, z) => sum + Math.max(0, through(low, z)), 0);
  return { pressure: low + lift * 1.25, outdoorAir: into / REFERENCE };
}

/** Fans of both kinds and a stove, at work all the time. */
function withFans(home: Home) {
  const last = home.rooms.length - 1;
  const does: DeviceAction[] = [
    { kind: 'extract fan', flow: 0.02, power: 15 },
    {
      ...{ kind: 'balanced ventilation', heatRecovery: 0.7, moistureRecovery: 0.2, power: 30 },
      supplies: [{ room: 0, flow: 0.02 }],
      extracts: [{ room: last, flow: 0.015 }],
    },
    {
      ...{ kind: 'stove', batch: 1.5, interval: 3600, energy: 15e6, efficiency: 0.75 },
      ...{ radiantShare: 0.5, lag: 1200, perRefuelling: [0, 5000], roomAir: 0.01 },
    },
  ];
  const devices = does.map((d, k) => ({ name: `device ${k}`, room: k === 0 ? last : 0, does: d }));
  const deviceControls = devices.map((_, device) => runAlways(device));
  return {
    home: { ...home, devices },
    automation: { ...noAutomation(home.rooms.length), deviceControls },
  };
}

/** Of dry air, and of the dry part of room air at 20 °C and 50 %. [kg/m3] */
const outdoorDensity = (temperature: number): number => dryAirDensity(temperature, 0, 101_325);
const REFERENCE = dryAirDensity(20, humidityRatioFromRelativeHumidity(20, 50, 101_325), 101_325);
const FLOW_AT_1 = 0.01;
const FLOW_AT_10 = FLOW_AT_1 * 10 ** 0.65;
const LAW = quadraticLaw({ pressure: 1, flow: FLOW_AT_1 }, { pressure: 10, flow: FLOW_AT_10 });
const IN = ['leaksIn', 'windowsIn', 'fansIn'] as const;
const OUT = ['leaksOut', 'windowsOut', 'extracts', 'draught'] as const;
