import { describe, expect, test } from 'vitest';
import { simulate } from '../../../src/engine/simulate.ts';
import type { Cooler, Home } from '../../../src/home/home.ts';
import { humidityRatioFromRelativeHumidity } from '../../../src/physics/moist-air/humidity-ratio.ts';
import { noAutomation } from '../../control/no-automation.ts';
import { always, bareHome, bareRoom, ideallyHeated, NEW_YEAR, quietHousehold } from '../homes.ts';
import { randomHome, randomHousehold, swingingWeather } from '../random-home.ts';
import { last, recordRun, runInput, total } from '../record-run.ts';
import { AIR_DENSITY, AIR_HEAT } from '../reference-air.ts';
import { lastDays } from '../short-weather.ts';

const LOSS = 50; // [W/K]
const MIDSUMMER = 170 * 86_400; // [s] into the year

/** A room that exchanges 50 W/K with outdoors, by air. */
function roomWith(cooler: Partial<Cooler>, more: Partial<Home> = {}): Home {
  return bareHome([bareRoom('room', 50, { furnishingFactor: 5 })], {
    leakage: { how: { by: 'rate', flow: LOSS / AIR_HEAT }, share: [1], ach50: null },
    cooling: [aCooler(cooler)],
    ...more,
  });
}

function aCooler(more: Partial<Cooler> = {}): Cooler {
  return {
    ...{ name: 'unit', room: 0, source: 'ideal', power: Number.POSITIVE_INFINITY },
    eer: { outdoor: [25, 35], value: [4, 3] },
    ...{ coil: null, exhaust: 0, radiantShare: 0 },
    ...more,
  };
}

const HOT = lastDays({ temperature: () => 34, humidityRatio: () => 0.012 }, 5);

function settled(home: Home, setpoint = 26) {
  const household = quietHousehold(home, { cooling: home.rooms.map(() => always(setpoint)) });
  const coolers = { removed: 0, water: 0, electricity: 0 };
  const input = runInput({ home, weather: HOT }, { household, hours: 96 });
  const { room, run } = recordRun(input);
  simulate(input, [
    ({ home: whole, steps }) => {
      for (const what of ['removed', 'water', 'electricity'] as const) {
        coolers[what] = whole.coolers[0]![what][steps - 1]!;
      }
    },
  ]);
  return { room, run, coolers };
}

test('an ideal cooler holds its setpoint and removes what comes in', () => {
  const { room, run, coolers } = settled(roomWith({}));
  expect(last(room.airTemperature[0]!)).toBeCloseTo(26, 9);
  expect(last(room.cooling[0]!)).toBeCloseTo(8 * LOSS, 6);
  expect(coolers.removed).toBeCloseTo(8 * LOSS, 6);
  // EER on its line: 4 at 25 °C, 3 at 35 °C.
  expect(coolers.electricity).toBeCloseTo((8 * LOSS) / 3.1, 6);
  expect(total(run.ledger.energy.cooling)).toBeLessThan(0);
});

test('a cooled ceiling in a room without surfaces cools its air', () => {
  const { room, run, coolers } = settled(roomWith({ radiantShare: 0.5 }));
  expect(last(room.airTemperature[0]!)).toBeCloseTo(26, 9);
  expect(coolers.removed).toBeCloseTo(8 * LOSS, 6);
  expect(run.ledger.residual.energy).toBeLessThan(1e-9);
});

test('nothing cools below the setpoint, or where cooling is off', () => {
  expect(Math.max(...settled(roomWith({}), 40).room.cooling[0]!)).toBe(0);
  const off = settled(roomWith({}), Number.POSITIVE_INFINITY);
  expect(Math.max(...off.room.cooling[0]!)).toBe(0);
  expect(last(off.room.airTemperature[0]!)).toBeCloseTo(34, 3);
});

test('a unit that is too small removes all it can', () => {
  const { room, coolers } = settled(roomWith({ source: 'split', power: 200 }));
  expect(coolers.removed).toBeCloseTo(200, 9);
  expect(last(room.airTemperature[0]!)).toBeCloseTo(34 - 200 / LOSS, 3);
});

describe('a coil', () => {
  const coil = { bypassFactor: 0.15, temperature: 10, airflow: 400 / 3600 };
  const saturated = humidityRatioFromRelativeHumidity(10, 100, 101_325);

  test('takes sensible heat and water in the proportion of what bypasses it', () => {
    const { room, coolers } = settled(roomWith({ source: 'split', power: 4000, coil }));
    const [t, w] = [last(room.airTemperature[0]!), last(room.humidityRatio[0]!)];
    expect(t).toBeCloseTo(26, 9);
    const sensible = last(room.cooling[0]!);
    expect(sensible).toBeCloseTo(8 * LOSS, 6);
    // Of the air that meets the coil both follow the same share.
    const share = sensible / (AIR_HEAT * coil.airflow * (1 - coil.bypassFactor) * (t - 10));
    const water = share * AIR_DENSITY * coil.airflow * (1 - coil.bypassFactor) * (w - saturated);
    expect(coolers.water / water).toBeCloseTo(1, 6);
    // What leaves by the drain is what leakage brings in.
    const brought = (LOSS / AIR_HEAT) * AIR_DENSITY * (0.012 - w);
    expect(coolers.water / brought).toBeCloseTo(1, 3);
    expect(coolers.removed).toBeCloseTo(sensible + 2.4537e6 * coolers.water, -1);
  });

  test('removes no more than its power, sensible and latent together', () => {
    // So little air that sensible heat less latent heat would be within the power.
    const small = { ...coil, airflow: 0.06 };
    const { room, coolers } = settled(roomWith({ source: 'split', power: 700, coil: small }), 15);
    expect(last(room.airTemperature[0]!)).toBeGreaterThan(20);
    // What is left to the step: its limit goes by the air at the start of it.
    expect(coolers.removed / 700).toBeGreaterThan(0.98);
    expect(coolers.removed / 700).toBeLessThan(1.02);
    expect(coolers.water).toBeGreaterThan(0);
  });

  test('never dries air below saturation at its own temperature', () => {
    const { room } = settled(roomWith({ source: 'split', power: 50_000, coil }), 12);
    expect(Math.min(...room.humidityRatio[0]!)).toBeGreaterThan(0.99 * Math.min(0.004, saturated));
  });

  test('leaves air alone that is drier than it would make it', () => {
    const dry = lastDays({ temperature: () => 34, humidityRatio: () => 0.005 }, 5);
    const home = roomWith({ source: 'split', power: 4000, coil });
    const household = quietHousehold(home, { cooling: [always(26)] });
    const input = runInput({ home, weather: dry }, { household, hours: 96 });
    // The air of the start is moister; after two days none of it is left.
    const { run } = recordRun({ ...input, start: NEW_YEAR + 2 * 86_400, hours: 48, spinUpDays: 2 });
    expect(Math.abs(total(run.ledger.water.cooling))).toBe(0);
    expect(total(run.ledger.energy.cooling)).toBeLessThan(-1e6);
  });
});

test('a unit with one duct draws in the hot air it has to cool', () => {
  const split = settled(roomWith({ source: 'split', power: 1500 }));
  const duct = settled(roomWith({ source: 'single duct', power: 1500, exhaust: 0.1 }));
  expect(last(duct.room.cooling[0]!)).toBeGreaterThan(1.05 * last(split.room.cooling[0]!));
  expect(last(duct.room.airTemperature[0]!)).toBeCloseTo(26, 9);
  expect(total(duct.run.ledger.energy.extracts)).toBeGreaterThan(0);
});

test('heating and cooling hold a room between their setpoints, never both at once', () => {
  const home = ideallyHeated(roomWith({}), 2000);
  const swinging = lastDays({ temperature: (t) => 22 + 18 * Math.sin(t / 86_400) }, 12);
  const household = quietHousehold(home, { setpoints: [always(20)], cooling: [always(25)] });
  const { room } = recordRun(runInput({ home, weather: swinging }, { household, hours: 240 }));
  const [heats, cools] = [room.heating[0]!, room.cooling[0]!];
  expect(Math.max(...heats)).toBeGreaterThan(100);
  expect(Math.max(...cools)).toBeGreaterThan(100);
  room.airTemperature[0]!.forEach((t, s) => {
    expect(Math.min(heats[s]!, cools[s]!)).toBe(0);
    expect(t).toBeGreaterThan(20 - 1e-6);
    expect(t).toBeLessThan(25 + 0.2); // the mean of a step in which it is reached
  });
});

test('what the thermostat feels is held, radiant share and all', () => {
  const home = {
    ...roomWith({ radiantShare: 0.5 }),
    elements: randomHome(1, 3).elements.slice(0, 3),
  };
  const thermostats = [{ ...noAutomation(1).thermostats[0]!, radiantShare: 0.4 }];
  const automation = { ...noAutomation(1), thermostats };
  const household = quietHousehold(home, { cooling: [always(24)] });
  const { room } = recordRun(
    runInput({ home, weather: HOT }, { household, automation, hours: 96 }),
  );
  const felt = 0.6 * last(room.airTemperature[0]!) + 0.4 * last(room.radiantTemperature[0]!);
  expect(last(room.cooling[0]!)).toBeGreaterThan(0);
  expect(felt).toBeCloseTo(24, 3);
});

test.each([1, 2, 3, 4])('balances close with coolers and heating in a random home (%d)', (seed) => {
  const drawn = randomHome(4, seed);
  const coil = { bypassFactor: 0.2, temperature: 8, airflow: 0.1 };
  const home: Home = {
    ...drawn,
    cooling: [
      aCooler({ room: 0, source: 'split', power: 2500, coil }),
      aCooler({ room: 1, source: 'single duct', power: 2000, coil, exhaust: 0.09 }),
      aCooler({ room: 2, radiantShare: 0.4, power: 800, source: 'reversible heat pump' }),
      aCooler({ room: 2, source: 'split', power: 500 }),
      aCooler({ room: 3 }),
    ],
  };
  const household = {
    ...randomHousehold(home, seed),
    setpoints: home.rooms.map(() => always(15)),
    cooling: [always(18), always(17.5), always(17), always(18.5)],
  };
  const input = {
    ...{ home, household, weather: swingingWeather(), dt: 600, start: NEW_YEAR + MIDSUMMER },
    ...{ hours: 24 * 60, spinUpDays: 2 },
  };
  const { ledger } = simulate(input, []);
  expect(total(ledger.energy.cooling)).toBeLessThan(-1e6);
  expect(total(ledger.water.cooling)).toBeLessThanOrEqual(0);
  expect(ledger.residual.energy).toBeLessThan(1e-9);
  expect(ledger.residual.water).toBeLessThan(1e-9);
  expect(ledger.residual.air).toBeLessThan(1e-9);
});
