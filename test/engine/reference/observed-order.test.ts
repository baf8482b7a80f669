import { describe, expect, test } from 'vitest';
import type { Home } from '../../../src/home/home.ts';
import { leaky } from '../../home/leaky.ts';
import { compare } from '../../reference/compare.ts';
import { integrateHome } from '../../reference/integrate-home.ts';
import { always, bareHome, bareRoom, ideallyHeated, NEW_YEAR, quietHousehold } from '../homes.ts';
import { lumpedRoom } from '../lumped-room.ts';
import { recordRun, runInput } from '../record-run.ts';
import { AIR_DENSITY, AIR_HEAT } from '../reference-air.ts';
import { lastDays, steadyDay } from '../short-weather.ts';
import { type Complex, distance, over, plus, times, waveIn } from '../wave.ts';

const DAY = 86_400;
const W = (2 * Math.PI) / DAY;
const MINUTES = [60, 30, 20, 10, 5];
const cosine = (mean: number, swing: number) => (t: number) => mean + swing * Math.cos(W * t);

/** Slope of log(error) over log(step), least squares. */
function slope(errors: readonly number[]): number {
  const x = MINUTES.map(Math.log);
  const y = errors.map(Math.log);
  const mean = (list: readonly number[]): number => list.reduce((s, v) => s + v, 0) / list.length;
  const [mx, my] = [mean(x), mean(y)];
  const xy = x.reduce((s, v, k) => s + (v - mx) * (y[k]! - my), 0);
  return xy / x.reduce((s, v) => s + (v - mx) ** 2, 0);
}

function expectSecondOrder(what: string, errors: readonly number[]): void {
  compare({
    topic: 'Numerics',
    what: `observed order of the scheme, ${what}, steps of 60 to 5 min`,
    unit: '-',
    source: 'theory of one-step methods; the scheme is meant to be of second order',
    mark: 'closed form',
    expected: 2,
    got: slope(errors),
    tolerance: { absolute: 0.2 },
    because: 'steps of an hour are not yet in the limit of small steps',
  });
}

/** Distance of the wave in a run from the exact one, for every step. */
function waveErrors(
  run: (dt: number) => Float64Array | undefined,
  exact: Complex,
): readonly number[] {
  return MINUTES.map((m) => distance(waveIn(run(m * 60)!, m * 60, DAY), exact));
}

const lagged = { spinUpDays: 12 };

describe('a daily wave with a known answer', () => {
  test('heat: one capacity', () => {
    const home = lumpedRoom(5);
    const weather = steadyDay({ temperature: cosine(10, 5) });
    const run = (dt: number) =>
      recordRun(runInput({ home, weather }, { dt, ...lagged })).room.airTemperature[0];
    expectSecondOrder('heat of a lumped room', waveErrors(run, over([5, 0], [1, W * 5 * 3600])));
  });

  test('heat: air and a wall of two nodes', () => {
    // Per square metre and in one second: air - r0 - C0 - r1 - C1 - r2 - outdoors, air leaks g.
    const [r0, r1, r2] = [0.13, 0.4, 0.3];
    const [c0, c1] = [6e4, 1.2e5];
    const [area, g, factor] = [20, 20, 6];
    const home = bareHome([bareRoom('room', 50, { furnishingFactor: factor })], {
      longWave: 0,
      elements: [
        {
          ...{ name: 'wall', room: 0, kind: 'wall', area },
          chain: { resistance: [r0, r1, r2], capacity: [c0, c1] },
          far: { to: 'outdoors', azimuth: 0, tilt: 180, absorptance: 0 },
        },
      ],
      leakage: { how: { by: 'rate', flow: g / AIR_HEAT }, share: [1], ach50: null },
    });
    // Backwards from outdoors: y1 at C1 = (a1 + b1 T0), and so on; solved as continued fractions.
    const node1: Complex = [1 / r1 + 1 / r2, W * c1];
    const drive1 = over([1 / r2, 0], node1);
    const pull1 = over([1 / r1, 0], node1);
    const node0 = plus([1 / r0 + 1 / r1, W * c0], times([-1 / r1, 0], pull1));
    const drive0 = over(times([1 / r1, 0], drive1), node0);
    const pull0 = over([1 / r0, 0], node0);
    const ca = factor * 50 * AIR_HEAT;
    const air = plus([g + area / r0, W * ca], times([-area / r0, 0], pull0));
    const exact = over(times([5, 0], plus([g, 0], times([area / r0, 0], drive0))), air);
    const weather = steadyDay({ temperature: cosine(10, 5) });
    const run = (dt: number) =>
      recordRun(runInput({ home, weather }, { dt, ...lagged })).room.airTemperature[0];
    expectSecondOrder('heat of air and wall', waveErrors(run, exact));
  });

  test('water: air and a buffer', () => {
    const [ach, volume] = [0.3, 50];
    const buffer = { capacity: 2, conductance: 1e-7, deep: { capacity: 0, conductance: 0 } };
    const leakage = {
      how: { by: 'rate', flow: (ach * volume) / 3600 },
      share: [1],
      ach50: null,
    } as const;
    const home = ideallyHeated(bareHome([bareRoom('room', volume, { buffer })], { leakage }));
    const [mean, swing] = [0.007, 1e-5];
    const weather = steadyDay({ temperature: () => 5, humidityRatio: cosine(mean, swing) });
    const household = quietHousehold(home, { setpoints: [always(20)] });
    const run = (dt: number) =>
      recordRun(runInput({ home, weather }, { household, dt, ...lagged })).room.humidityRatio[0];
    const flow = (AIR_DENSITY * ach * volume) / 3600;
    const saturation = 2338.8; // at 20 °C [Pa]
    const perRatio = (101_325 * 0.621945) / (0.621945 + mean) ** 2;
    const series = plus(
      [1 / buffer.conductance, 0],
      over([saturation, 0], [0, W * buffer.capacity]),
    );
    const uptake = over([perRatio, 0], series);
    const exact = over([flow * swing, 0], plus([flow, W * AIR_DENSITY * volume], uptake));
    expectSecondOrder('water of air and buffer', waveErrors(run, exact));
  });

  test('carbon dioxide: two rooms with a door', () => {
    const door = 0.01; // [m3/s] each way, shut
    // Renews less than half of the room in an hour: such steps are taken whole.
    const flow = 0.005;
    const home: Home = bareHome([bareRoom('first', 40), bareRoom('second', 30)], {
      leakage: { how: { by: 'rate', flow }, share: [1, 0], ach50: null },
      doorways: [{ name: 'door', rooms: [0, 1], width: 0.8, height: 2, mixing: 0, shut: door }],
      species: [{ name: 'co2', unit: 'ppm', outdoor: 400, penetration: 1 }],
    });
    const weather = steadyDay({ temperature: () => 15, species: { co2: cosine(450, 50) } });
    const household = quietHousehold(home, { doorways: [always(0)] });
    const run = (dt: number) =>
      recordRun(runInput({ home, weather }, { household, dt, ...lagged })).species[0]![1];
    const follows = over([door, 0], [door, W * 30]);
    const first = over([50 * flow, 0], plus([flow + door, W * 40], times([-door, 0], follows)));
    expectSecondOrder('carbon dioxide of two rooms', waveErrors(run, times(follows, first)));
  });
});

// Slow rooms, so that an hour is short beside them; and nothing that takes up moisture, because
// heat of sorption reaches the air one step late.
test('flows that depend on what they change: two rooms, stack, wind and an open door', () => {
  const home = bareHome(
    [
      bareRoom('warm', 50, { furnishingFactor: 20, mass: { capacity: 3e6, area: 20 } }),
      bareRoom('cold', 40, { furnishingFactor: 20, mass: { capacity: 3e6, area: 20 } }),
    ],
    {
      leakage: {
        how: leaky([0.3, 0.7], 0.03),
        share: [0.3, 0.7],
        ach50: null,
      },
      doorways: [{ name: 'door', rooms: [0, 1], width: 0.8, height: 2, mixing: 0, shut: 0 }],
    },
  );
  const household = quietHousehold(home, {
    activities: [
      {
        ...{ name: 'fire', room: 0, heat: 2000, electricity: 0, vapour: 0, drying: 0, species: [] },
        when: [{ days: 0b1111111, from: 0, to: 1440 }],
      },
    ],
  });
  const weather = lastDays(
    {
      temperature: cosine(5, 5),
      humidityRatio: () => 0.004,
      wind: (t) => 4 + 2 * Math.sin(W * t),
    },
    4,
  );
  const hours = 72;
  const exact = integrateHome(home, household, weather, {
    ...{ start: NEW_YEAR, hours, stretch: 3600 },
    tolerance: 1e-8, // the errors of short steps are small
  });
  const errors = MINUTES.map((m) => {
    const got = recordRun(runInput({ home, weather }, { household, hours, dt: m * 60 }));
    const perHour = 60 / m;
    let sum = 0;
    // From the second day on: the start is a jump, and a jump shows no order.
    for (let s = 24; s < hours; s++) {
      let mean = 0;
      for (let k = 0; k < perHour; k++)
        mean += got.room.airTemperature[0]![s * perHour + k]! / perHour;
      sum += (mean - exact.air[0]![s]!) ** 2;
    }
    return Math.sqrt(sum / (hours - 24));
  });
  expectSecondOrder('heat with flows by warmth and wind', errors);
  expect(errors.at(-1)).toBeLessThan(errors[0]! / 100);
});
