import { describe, expect, test } from 'vitest';
import { PLAIN_THERMOSTAT } from '../../../src/control/automation.ts';
import type { Element, Home } from '../../../src/home/home.ts';
import { noAutomation } from '../../control/no-automation.ts';
import { compare } from '../../reference/compare.ts';
import { always, bareHome, bareRoom, ideallyHeated, quietHousehold } from '../homes.ts';
import { last, recordRun, runInput } from '../record-run.ts';
import { AIR_HEAT } from '../reference-air.ts';
import { lastDays } from '../short-weather.ts';

const RADIATIVE = 5.13; // [W/(m2 K)]

/** Two surfaces without mass about a room's air: one that loses heat, and an adiabatic one. */
interface Case {
  readonly areas: readonly [number, number];
  /** Convective coefficient of the surface that loses heat; that of the other is 2.5. [W/(m2 K)] */
  readonly convective: number;
  /** From the surface outwards. [W/(m2 K)] */
  readonly loss: number;
  readonly outdoors: number;
  readonly heat: number;
  readonly convectiveShare: number;
  /** By air. [W/K] */
  readonly ventilation: number;
  readonly air: number;
  readonly meanRadiant: number;
  readonly operative: number;
}

const WALL = {
  ...{ areas: [12, 60] as const, convective: 2.5, loss: 2, outdoors: 0, heat: 480 },
};
const COLD_FLOOR = {
  ...{ areas: [20, 52] as const, convective: 0.7, loss: 1, outdoors: 5, heat: 400 },
};

const CASES: readonly Case[] = [
  {
    ...{ ...WALL, convectiveShare: 1, ventilation: 0 },
    ...{ air: 27.0354, meanRadiant: 24.3687, operative: 25.7021 },
  },
  {
    ...{ ...WALL, convectiveShare: 0.4, ventilation: 0 },
    ...{ air: 25.4354, meanRadiant: 24.3687, operative: 24.9021 },
  },
  {
    ...{ ...WALL, convectiveShare: 0, ventilation: 0 },
    ...{ air: 24.3687, meanRadiant: 24.3687, operative: 24.3687 },
  },
  {
    ...{ ...WALL, convectiveShare: 0.4, ventilation: 15 },
    ...{ air: 13.7872, meanRadiant: 13.8695, operative: 13.8283 },
  },
  {
    ...{ ...COLD_FLOOR, convectiveShare: 0.4, ventilation: 0 },
    ...{ air: 29.4185, meanRadiant: 27.6459, operative: 28.5322 },
  },
];

function homeOf({ areas, convective, loss, outdoors, heat, convectiveShare, ventilation }: Case) {
  const surface = (k: 0 | 1, hc: number, behind: number, far: Element['far']): Element => ({
    ...{ name: `surface ${k}`, room: 0, kind: 'wall', area: areas[k], far },
    chain: { resistance: [1 / (hc + RADIATIVE), behind], capacity: [100] },
  });
  const heated = ideallyHeated(
    bareHome([bareRoom('room', 50)], {
      elements: [
        surface(0, convective, 1 / loss, { to: 'neighbour', temperature: outdoors }),
        surface(1, 2.5, 1, { to: 'nothing' }),
      ],
      leakage: { how: { by: 'rate', flow: ventilation / AIR_HEAT }, share: [1], ach50: null },
    }),
    heat,
  );
  const emitters = heated.emitters.map((e) => ({ ...e, radiantShare: 1 - convectiveShare }));
  return { ...heated, emitters } satisfies Home;
}

describe('a room of two surfaces, settled', () => {
  test.each(CASES)('$areas m2, convective $convectiveShare, $ventilation W/K by air', (c) => {
    const home = homeOf(c);
    const weather = lastDays({ temperature: () => c.outdoors }, 3);
    const household = quietHousehold(home, { setpoints: [always(100)] });
    const { room } = recordRun(runInput({ home, weather }, { household, hours: 48 }));
    const got = {
      air: last(room.airTemperature[0]!),
      meanRadiant: last(room.radiantTemperature[0]!),
      operative: last(room.operativeTemperature[0]!),
    };
    for (const what of ['air', 'meanRadiant', 'operative'] as const) {
      compare({
        topic: 'Radiant exchange, through the simulator',
        what: `${what}, ${c.areas.join(' and ')} m2, convective share ${c.convectiveShare}, ${c.ventilation} W/K by air`,
        unit: '°C',
        source:
          'closed form of two surfaces with the balances of ISO 52016-1:2017, 6.5.6 (from memory)',
        mark: 'closed form',
        expected: c[what],
        got: got[what],
        tolerance: { absolute: 6e-5 },
        because: 'given to 0.0001 K',
      });
    }
  });

  test('with equal convection the convective share moves the air and no surface', () => {
    const of = (convectiveShare: number) => {
      const home = homeOf({ ...CASES[0]!, convectiveShare });
      const weather = lastDays({ temperature: () => 0 }, 3);
      const household = quietHousehold(home, { setpoints: [always(100)] });
      return recordRun(runInput({ home, weather }, { household, hours: 48 })).room;
    };
    const [all, none] = [of(1), of(0)];
    const surfaces = ({ radiantTemperature }: typeof all) => last(radiantTemperature[0]!);
    expect(surfaces(all)).toBeCloseTo(surfaces(none), 8);
    expect(last(all.airTemperature[0]!) - last(none.airTemperature[0]!)).toBeGreaterThan(2);
  });
});

describe('what a thermostat feels', () => {
  test.each([0, 0.3, 0.5, 1])(
    'settles at the setpoint with a share of %s of the surfaces',
    (share) => {
      const home = homeOf({ ...CASES[3]!, heat: 5000 });
      const weather = lastDays({ temperature: () => 0 }, 3);
      const household = quietHousehold(home, { setpoints: [always(20)] });
      const thermostats = [{ ...PLAIN_THERMOSTAT, radiantShare: share }];
      const automation = { ...noAutomation(1), thermostats };
      const { room } = recordRun(runInput({ home, weather }, { household, automation, hours: 48 }));
      const [air, surfaces] = [last(room.airTemperature[0]!), last(room.radiantTemperature[0]!)];
      expect((1 - share) * air + share * surfaces).toBeCloseTo(20, 6);
      expect(Math.abs(air - surfaces)).toBeGreaterThan(0.05);
    },
  );
});

describe('a proportional valve', () => {
  const lossless = 1e-4;
  test.each([
    { minutes: 1, lag: 0 },
    { minutes: 5, lag: 900 },
    { minutes: 10, lag: 900 },
    { minutes: 10, lag: 0 },
    { minutes: 30, lag: 900 },
    { minutes: 30, lag: 3600 },
  ])('droops by band times load over capacity: steps of $minutes min, lag $lag s', (c) => {
    // 60 W/K at 20 K below: 1200 W of 3000 W, so 0.4 of a band of 2 K.
    const band = 2;
    const loss = 60;
    const plain = ideallyHeated(
      bareHome([bareRoom('room', 100, { furnishingFactor: 5 })], {
        leakage: { how: { by: 'rate', flow: loss / AIR_HEAT }, share: [1], ach50: null },
      }),
      3000,
    );
    const home = { ...plain, emitters: plain.emitters.map((e) => ({ ...e, lag: c.lag })) };
    const weather = lastDays({ temperature: () => 0 }, 4);
    const household = quietHousehold(home, { setpoints: [always(20)] });
    const thermostats = [{ ...PLAIN_THERMOSTAT, proportionalBand: band }];
    const automation = { ...noAutomation(1), thermostats };
    const { room } = recordRun(
      runInput({ home, weather }, { household, automation, hours: 72, dt: 60 * c.minutes }),
    );
    // S - T = band loss T / capacity
    const settled = 20 / (1 + (band * loss) / 3000);
    expect(Math.abs(last(room.airTemperature[0]!) - settled)).toBeLessThan(lossless);
  });
});

test('a deadband goes by what is felt, surfaces included', () => {
  const share = 0.4;
  const band = 1;
  const home = homeOf({ ...CASES[3]!, heat: 3000 });
  const weather = lastDays({ temperature: () => 0 }, 3);
  const household = quietHousehold(home, { setpoints: [always(20)] });
  const thermostats = [{ ...PLAIN_THERMOSTAT, radiantShare: share, deadband: band }];
  const automation = { ...noAutomation(1), thermostats };
  const { room } = recordRun(
    runInput({ home, weather }, { household, automation, hours: 48, dt: 60 }),
  );
  const [air, surfaces] = [room.airTemperature[0]!, room.radiantTemperature[0]!];
  const felt = air.map((t, s) => (1 - share) * t + share * surfaces[s]!).subarray(air.length / 2);
  // Means of a minute do not quite reach the edges at which it switches.
  expect(Math.max(...felt)).toBeLessThan(20 + band / 2 + 1e-6);
  expect(Math.max(...felt)).toBeGreaterThan(20 + 0.1 * band);
  expect(Math.min(...felt)).toBeLessThan(20 - 0.1 * band);
});
