import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Activity } from '../../../src/control/household.ts';
import type { Element, Home } from '../../../src/home/home.ts';
import { humidityRatioFromRelativeHumidity } from '../../../src/physics/moist-air/humidity-ratio.ts';
import { saturationPressure } from '../../../src/physics/moist-air/saturation-pressure.ts';
import { filmTransfer } from '../../../src/physics/moisture/film-transfer.ts';
import { compare } from '../../reference/compare.ts';
import { always, bareHome, bareRoom, ideallyHeated, NEW_YEAR, quietHousehold } from '../homes.ts';
import { randomHome, randomHousehold, swingingWeather } from '../random-home.ts';
import { last, recordRun, runInput } from '../record-run.ts';
import { AIR_DENSITY } from '../reference-air.ts';
import { lastDays } from '../short-weather.ts';
import { element } from '../worked-house.ts';

const TOPIC = 'Water on walls and tiles, through the simulator';
const PRESSURE = 101_325;
const EVERY_DAY = 127;

/** Steam from a minute of the day on, for some minutes. [kg/s] */
const steam = (vapour: number, from: number, to: number): Activity => ({
  ...{ name: 'steam', room: 0, when: [{ days: EVERY_DAY, from, to }], heat: 0, electricity: 0 },
  ...{ vapour, drying: 0, species: [] },
});

const wallTo = (far: Element['far'], area: number, uValue: number): Element => ({
  ...element('wall', 0, 'wall', area, uValue),
  far,
});

const sumOf = (values: Float64Array): number => values.reduce((sum, x) => sum + x, 0);

describe('tiles', () => {
  test('take water by the film law at the temperature of the surfaces, and let go what they cannot hold', () => {
    const home = ideallyHeated(
      bareHome([bareRoom('bath', 30, { tiledArea: 10 })], {
        elements: [wallTo({ to: 'neighbour', temperature: 5 }, 30, 1.5)],
        leakage: { how: { by: 'rate', flow: 0.01 }, share: [1], ach50: null },
      }),
    );
    const weather = lastDays({ temperature: () => 20, humidityRatio: () => 0.012 }, 6);
    const household = quietHousehold(home, {
      setpoints: [always(24)],
      activities: [steam(5e-5, 0, 1440)],
    });
    const { room, run } = recordRun(runInput({ home, weather }, { household, hours: 144 }));
    const flow = last(room.wallCondensation[0]!);
    const tile = last(room.radiantTemperature[0]!);
    const over = last(room.vapourPressure[0]!) - saturationPressure(tile);
    expect(last(room.relativeHumidity[0]!)).toBeLessThan(99);
    compare({
      topic: TOPIC,
      what: '10 m2 of tiles in the air of a heated bathroom with cold walls',
      unit: 'g/h',
      source: 'film law with 2.5 W/(m2 K) of convection (Lewis relation)',
      mark: 'closed form',
      expected: filmTransfer(2.5) * 10 * over * 3.6e6,
      got: flow * 3.6e6,
      tolerance: { relative: 0.01 },
      because: 'vapour pressure is linear in humidity over a step',
    });
    // Well mixed: what steam and outdoor air bring is what air and tiles take.
    const mass = AIR_DENSITY * 0.01;
    const carried = mass * (last(room.humidityRatio[0]!) - 0.012);
    expect(Math.abs(5e-5 - carried - flow)).toBeLessThan(1e-4 * 5e-5);
    // Full at 75 g/m2: from then on all of it runs off.
    const condensed = sumOf(room.wallCondensation[0]!) * 600;
    expect(condensed).toBeGreaterThan(1);
    expect(-sumOf(run.ledger.water.runoff)).toBeCloseTo(condensed - 0.75, 6);
  });

  test('after a shower in a shut bathroom hold what its air cannot', () => {
    const home = ideallyHeated(
      bareHome([bareRoom('bath', 15, { tiledArea: 12, furnishingFactor: 5 })], {
        elements: [wallTo({ to: 'neighbour', temperature: 15 }, 40, 2)],
      }),
    );
    const weather = lastDays({ temperature: () => 15 }, 3);
    const household = quietHousehold(home, {
      setpoints: [always(20)],
      activities: [steam(2e-4, 480, 505)],
    });
    const input = runInput({ home, weather }, { household, hours: 24 });
    const { room, run } = recordRun(input);
    const given = 2e-4 * 25 * 60;
    const start = humidityRatioFromRelativeHumidity(20, 50, PRESSURE);
    const end = last(room.humidityRatio[0]!);
    compare({
      topic: TOPIC,
      what: 'water on tiles a day after 300 g of steam in a shut bathroom of 15 m3',
      unit: 'g',
      source: 'what was given, less what the air holds more than before',
      mark: 'closed form',
      expected: 1000 * (given - AIR_DENSITY * 15 * (end - start)),
      got: 1000 * sumOf(room.wallCondensation[0]!) * 600,
      tolerance: { relative: 0.001 },
      because: 'no air leaves; settled to a thousandth',
    });
    expect(sumOf(run.ledger.water.runoff)).toBeCloseTo(0, 12);
    expect(Math.max(...room.relativeHumidity[0]!)).toBeLessThan(100 + 1e-9);
    expect(Math.max(...room.relativeHumidity[0]!)).toBeGreaterThan(100 - 1e-9);
  });
});

test.each([
  { humidity: 55, wet: false },
  { humidity: 70, wet: true },
])(
  'a corner of factor 0.6 at 0 °C outdoors, room of 20 °C and $humidity %',
  ({ humidity, wet }) => {
    const home = ideallyHeated(
      bareHome([bareRoom('room', 50, { coldSpotFactor: 0.6 })], {
        elements: [wallTo({ to: 'outdoors', azimuth: 0, tilt: 90, absorptance: 0 }, 40, 1)],
        leakage: { how: { by: 'rate', flow: 0.5 }, share: [1], ach50: null },
      }),
    );
    const humid = humidityRatioFromRelativeHumidity(20, humidity, PRESSURE);
    const weather = lastDays({ temperature: () => 0, humidityRatio: () => humid }, 4);
    const household = quietHousehold(home, { setpoints: [always(20)] });
    const { room } = recordRun(runInput({ home, weather }, { household, hours: 96 }));
    const flow = last(room.wallCondensation[0]!);
    if (!wet) {
      // Dew point 10.7 °C, corner 12 °C.
      expect(flow).toBe(0);
      return;
    }
    const beta = filmTransfer(2.5);
    const slowed = beta / (1 + beta * 2.4775e6 * 82 * 0.13 * 0.6);
    const over = last(room.vapourPressure[0]!) - saturationPressure(12);
    compare({
      topic: TOPIC,
      what: 'a tenth of 40 m2 of wall, its corner at 12 °C, room of 20 °C and 70 %',
      unit: 'g/h',
      source: 'film law, slowed by the heat of condensation that warms the corner',
      mark: 'closed form',
      expected: slowed * 4 * over * 3.6e6,
      got: flow * 3.6e6,
      tolerance: { relative: 0.01 },
      because: 'vapour pressure is linear in humidity over a step',
    });
  },
);

describe('air is never above saturation', () => {
  test('in homes drawn at random, with far too much steam, at any step', () => {
    const weather = swingingWeather();
    let saturated = 0;
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 6 }),
        fc.integer({ min: 1, max: 1e6 }),
        fc.constantFrom(60, 600, 1800, 3600),
        fc.double({ min: 1e-4, max: 5e-3, noNaN: true }),
        (rooms, seed, dt, vapour) => {
          const home = randomHome(rooms, seed);
          const household = randomHousehold(home, seed);
          const activities = [...household.activities, steam(vapour, 420, 480)];
          const { room, run } = recordRun(
            runInput({ home, weather }, { household: { ...household, activities }, dt, hours: 24 }),
          );
          for (const humidity of room.relativeHumidity) {
            expect(Math.min(...humidity)).toBeGreaterThanOrEqual(0);
            expect(Math.max(...humidity)).toBeLessThanOrEqual(100 + 1e-9);
            saturated += humidity.filter((value) => value > 100 - 1e-9).length;
          }
          expect(Math.max(...room.airTemperature.flatMap((t) => [...t]))).toBeLessThan(60);
          expect(run.ledger.residual.water).toBeLessThan(1e-9);
          expect(run.ledger.residual.energy).toBeLessThan(1e-9);
        },
      ),
      { numRuns: 15, seed: 3 },
    );
    expect(saturated).toBeGreaterThan(0);
  });

  test('in a shut room of steam that cools, whose latent heat is most of its heat', () => {
    const home: Home = bareHome([bareRoom('sauna', 30)], {
      elements: [wallTo({ to: 'neighbour', temperature: 10 }, 60, 1)],
    });
    const weather = lastDays({ temperature: () => 10 }, 3);
    const household = quietHousehold(home, { activities: [steam(0.001, 60, 120)] });
    for (const dt of [60, 600, 3600]) {
      const { room, run } = recordRun(
        runInput({ home, weather }, { household, dt, hours: 24, start: NEW_YEAR }),
      );
      expect(Math.max(...room.relativeHumidity[0]!)).toBeLessThanOrEqual(100 + 1e-9);
      // All latent heat through the wall, for ever: 10 °C and 2454 W over 60 W/K.
      expect(Math.max(...room.airTemperature[0]!)).toBeLessThan(10 + 2454 / 60);
      expect(Math.min(...room.airTemperature[0]!)).toBeGreaterThan(9);
      expect(run.ledger.residual.water).toBeLessThan(1e-9);
    }
  });
});
