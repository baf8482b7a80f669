import { describe, expect, test } from 'vitest';
import type { Activity } from '../../../src/control/household.ts';
import { simulate } from '../../../src/engine/simulate.ts';
import type { Home } from '../../../src/home/home.ts';
import { createMeasures } from '../../../src/measures/create-measures.ts';
import {
  humidityRatioFromRelativeHumidity,
  humidityRatioFromVapourPressure,
} from '../../../src/physics/moist-air/humidity-ratio.ts';
import { relativeHumidity } from '../../../src/physics/moist-air/relative-humidity.ts';
import { saturationPressureOverWater } from '../../../src/physics/moist-air/saturation-pressure.ts';
import { vapourDensity } from '../../../src/physics/moist-air/vapour-density.ts';
import { surfaceTemperature } from '../../../src/physics/moisture/surface-temperature.ts';
import { UTC_CLOCK } from '../../../src/units/local-clock.ts';
import { type Comparison, compare } from '../../reference/compare.ts';
import { heatPerLitreAired } from '../../reference/physics/moisture/heat-per-litre-aired.ts';
import {
  always,
  bareHome,
  bareRoom,
  ideallyHeated,
  madeWeather,
  NEW_YEAR,
  quietHousehold,
} from '../homes.ts';
import { last, recordRun, runInput, total } from '../record-run.ts';

const TOPIC = 'Everyday damp, through the simulator';
const SEA_LEVEL = 101_325;
const KWH = 3.6e6;
const BY_HAND = 'worked out apart with a Magnus formula, as householders do';

type Air = readonly [temperature: number, humidity: number];

/** As weather services mean it: over water also in frost. [kg/kg] */
const outdoorRatio = ([t, rh]: Air): number =>
  humidityRatioFromVapourPressure((rh / 100) * saturationPressureOverWater(t), SEA_LEVEL);

/**
 * A room kept for days at a temperature by heating, and at a humidity by a source of vapour that
 * makes up for what an open window takes; nothing where the humidity is left to fresh air.
 */
function kept(inside: number, humidity: number | null, outside: Air, factor = 0.7) {
  const home: Home = ideallyHeated(
    bareHome([bareRoom('room', 40, { coldSpotFactor: factor })], {
      openings: [{ name: 'window', room: 0, area: 0.05, height: 1, azimuth: 180 }],
    }),
  );
  const [outdoor] = outside;
  const moist = outdoorRatio(outside);
  const weather = madeWeather({ temperature: () => outdoor, humidityRatio: () => moist });
  const run = (vapour: number) => {
    const source: Activity = {
      ...{ name: 'vapour', room: 0, heat: 0, electricity: 0, drying: 0, species: [] },
      when: [{ days: 127, from: 0, to: 1440 }],
      vapour,
    };
    const household = quietHousehold(home, {
      setpoints: [always(inside)],
      openings: [always(1)],
      activities: vapour > 0 ? [source] : [],
    });
    const input = runInput({ home, weather }, { household, spinUpDays: 2 });
    return { home, weather, input, ...recordRun(input) };
  };
  if (humidity === null) return run(0);
  // First dry, to see how much air the window passes.
  const dry = run(0).run.ledger.energy.openings;
  const cp = 1006 + 1860 * humidityRatioFromRelativeHumidity(20, 50, SEA_LEVEL);
  const air = -total(dry) / 86_400 / (inside - outdoor) / cp; // kg/s
  const wanted = humidityRatioFromRelativeHumidity(inside, humidity, SEA_LEVEL);
  const recording = run(air * (wanted - moist));
  expect(last(recording.room.airTemperature[0]!)).toBeCloseTo(inside, 6);
  expect(last(recording.room.relativeHumidity[0]!)).toBeCloseTo(humidity, 3);
  return recording;
}

const worked = (
  row: Pick<Comparison, 'what' | 'unit' | 'expected' | 'got'>,
  absolute: number,
): void =>
  compare({
    topic: TOPIC,
    source: BY_HAND,
    mark: 'closed form',
    tolerance: { absolute },
    because: 'the last digit printed, and 0.3 % between formulas of saturation',
    ...row,
  });

describe('water in a cubic metre of a room', () => {
  test.each([
    [20, 60, 10.3],
    [18, 65, 10.0],
  ])('kept at %s °C and %s %%', (inside, humidity, expected) => {
    const { room } = kept(inside, humidity, [2, 80]);
    const got = vapourDensity(last(room.vapourPressure[0]!), last(room.airTemperature[0]!));
    worked({ what: `a room at ${inside} °C and ${humidity} %`, unit: 'g/m3', expected, got }, 0.1);
  });
});

describe('outdoor air, aired into a room of 20 °C', () => {
  test.each([
    [5, 85, 5.8, 32],
    [0, 80, 3.9, 21],
    [-5, 80, 2.7, 14],
    [10, 90, 8.4, 47],
  ])('%s °C and %s %%', (outdoor, humidity, grams, expected) => {
    const { room, outdoorVapourPressure } = kept(20, null, [outdoor, humidity]);
    worked(
      {
        what: `outdoors at ${outdoor} °C and ${humidity} %`,
        unit: 'g/m3',
        expected: grams,
        got: vapourDensity(last(outdoorVapourPressure), outdoor),
      },
      0.1,
    );
    worked(
      {
        what: `an empty room of 20 °C with its window open, ${outdoor} °C and ${humidity} % outdoors`,
        unit: '%',
        expected,
        got: last(room.relativeHumidity[0]!),
      },
      0.6,
    );
  });
});

describe.each([
  { inside: 20, humidity: 55, outdoor: 0, at: [92, 80, 75, 71, 62] },
  { inside: 18, humidity: 65, outdoor: 5, at: [91, 83, 80, 77, 71] },
])('the cold spot of a room at $inside °C and $humidity %, $outdoor °C outdoors', (given) => {
  const { inside, humidity, outdoor, at } = given;

  test.each([
    [0.6, at[0]!],
    [0.7, at[1]!],
    [0.75, at[2]!],
    [0.8, at[3]!],
    [0.9, at[4]!],
  ])('factor %s', (factor, expected) => {
    const { home, weather, input, room } = kept(inside, humidity, [outdoor, 80], factor);
    const [air, vapour] = [last(room.airTemperature[0]!), last(room.vapourPressure[0]!)];
    const got = relativeHumidity(vapour, surfaceTemperature(factor, air, outdoor));
    worked(
      {
        what: `humidity at a spot of factor ${factor}, room at ${inside} °C and ${humidity} %, ${outdoor} °C outdoors`,
        unit: '%',
        expected,
        got,
      },
      0.8,
    );
    // The figures of a plan count the same: all of the day's hours or none.
    const measures = createMeasures({
      ...{ scenario: 's', plan: 'p', home, weather, clock: UTC_CLOCK },
      bands: [{ temperature: ANY, humidity: ANY, species: {} }],
      mouldClasses: ['sensitive'],
      prices: { currency: 'GBP', fuels: {} },
      ...{ period: { start: NEW_YEAR, hours: 24 }, purchases: [], discountRate: 0 },
      ...{ assumed: [], cautions: [] },
    });
    const { rooms } = measures.finish(simulate(input, [measures.observe]));
    expect(rooms['room']!.cold_spot_hours_above_80_pct).toBe(got > 80 ? 24 : 0);
  });
});

describe('the cold spot of a room at 18 °C and 65 %, 5 °C outdoors, factor 0.70', () => {
  const spot = (inside: number, humidity: number) => {
    const { room } = kept(inside, humidity, [5, 80], 0.7);
    const [air, vapour] = [last(room.airTemperature[0]!), last(room.vapourPressure[0]!)];
    return { vapour, humidity: relativeHumidity(vapour, surfaceTemperature(0.7, air, 5)) };
  };

  test('warmed to 20 °C with the same vapour', () => {
    const same = relativeHumidity(spot(18, 65).vapour, 20);
    const what = 'warmed from 18 °C and 65 % to 20 °C with the same vapour';
    worked({ what: `a room ${what}`, unit: '%', expected: 57, got: same }, 0.6);
    const got = spot(20, same).humidity;
    worked({ what: `a spot of factor 0.7, ${what}`, unit: '%', expected: 76, got }, 0.7);
  });

  test('dried to 55 %', () => {
    const what = 'a spot of factor 0.7, dried from 65 to 55 % at 18 °C';
    worked({ what, unit: '%', expected: 71, got: spot(18, 55).humidity }, 0.7);
  });
});

describe('heat for a litre aired, room at 20 °C', () => {
  test.each([
    [60, 0, 85, 1.08],
    [60, 5, 85, 1.1],
    [60, 8, 90, 1.38],
    [60, 10, 90, 1.76],
    [70, 0, 85, 0.84],
    [70, 5, 85, 0.8],
    [70, 8, 90, 0.87],
    [70, 10, 90, 0.92],
    [70, 12, 95, 1.37],
    [70, 14, 90, 1.63],
  ])('%s %% inside, %s °C and %s %% outside', (humidity, outdoor, rh, shortcut) => {
    const { run } = kept(20, humidity, [outdoor, rh]);
    const { energy, water } = run.ledger;
    const got = total(energy.openings) / total(water.openings) / KWH;
    const inside = humidityRatioFromRelativeHumidity(20, humidity, SEA_LEVEL);
    const what = `heat a litre aired, 20 °C ${humidity} % inside, ${outdoor} °C ${rh} % outside`;
    compare({
      topic: TOPIC,
      what,
      unit: 'kWh/L',
      source: 'kilograms of dry air, each warmed from outdoors, over what water they carry off',
      mark: 'closed form',
      expected: heatPerLitreAired(20, inside, outdoor, outdoorRatio([outdoor, rh])) / KWH,
      got,
      tolerance: { relative: 0.01 },
      because: 'a run reckons with one heat capacity of air, that of 20 °C and 50 %',
    });
    // Grams a cubic metre, each at its own temperature, make it more.
    expect(got).toBeLessThan(shortcut);
  });
});

describe('a sensor warmer than the room of 18 °C and 65 %', () => {
  test.each([
    [1, 61],
    [2, 57],
    [3, 54],
    [5, 48],
  ])('by %s K', (bias, expected) => {
    const { room } = kept(18, 65, [5, 85]);
    const got = relativeHumidity(
      last(room.vapourPressure[0]!),
      last(room.airTemperature[0]!) + bias,
    );
    worked({ what: `a sensor warmer by ${bias} K than its room`, unit: '%', expected, got }, 0.6);
  });
});

const ANY = { low: Number.NEGATIVE_INFINITY, high: Number.POSITIVE_INFINITY, reason: 'none' };
