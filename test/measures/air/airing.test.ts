import { describe, expect, test } from 'vitest';
import { saturationPressure } from '../../../src/physics/moist-air/saturation-pressure.ts';
import { vapourDensity } from '../../../src/physics/moist-air/vapour-density.ts';
import { compare } from '../../reference/compare.ts';
import { BOILER, home, type Moment, measure, room, START, setup } from '../hand-made.ts';

const pressure = (t: number, humidity: number) => (humidity / 100) * saturationPressure(t);
/** One climate indoors and out all day, and windows open in the first hour. */
const day = (indoors: Moment, outdoor: number, humidity: number) =>
  measure(setup(), (s) => ({
    ...indoors,
    outdoor,
    outdoorVapour: pressure(outdoor, humidity),
    windowOpen: s < 6 ? 1 : 0,
  })).airing;

describe('whether open windows help', () => {
  test('a hot day makes a cool cellar wetter, whatever the percentages say', () => {
    const found = day({ air: 15, humidity: 80 }, 26, 55);
    expect(found).toMatchObject({ hours_drier: 0, hours_no_difference: 0, hours_wetter: 1 });
    expect(found.hours_humidity_rule_wrong).toBe(24);
  });

  test('a mild wet day makes no difference to 20 °C and 60 %', () => {
    const found = day({ air: 20, humidity: 60 }, 12, 95);
    expect(found).toMatchObject({ hours_drier: 0, hours_no_difference: 1, hours_wetter: 0 });
    expect(found.hours_humidity_rule_wrong).toBe(0);
  });

  test('cold rain is much drier than a room: keeping shut for its 95 % is wrong', () => {
    const found = day({ air: 20, humidity: 60 }, 5, 95);
    expect(found).toMatchObject({ hours_drier: 1, hours_no_difference: 0, hours_wetter: 0 });
    expect(found.hours_humidity_rule_wrong).toBe(24);
  });

  test('a warm day of fewer percent and as much water: the rule opens for nothing, which is not wrong', () => {
    // 10.4 g/m3 indoors, 10.2 outdoors.
    expect(day({ air: 20, humidity: 60 }, 24, 47)).toMatchObject({
      hours_no_difference: 1,
      hours_humidity_rule_wrong: 0,
    });
  });

  test('a dry frost is drier by either count', () => {
    expect(day({ air: 20, humidity: 60 }, 0, 40)).toMatchObject({
      hours_drier: 1,
      hours_humidity_rule_wrong: 0,
    });
  });

  test('the humidities it goes by', () => {
    const row = {
      topic: 'Airing',
      unit: 'g/m3',
      source: 'arithmetic on everyday cases of cellars, mild rain and cold rain',
      mark: 'closed form',
      tolerance: { absolute: 0.1 },
      because: 'printed to 0.1, cases rounded',
    } as const;
    for (const [t, humidity, expected] of [
      [26, 55, 13.4],
      [5, 95, 6.5],
      [20, 60, 10.3],
    ] as const) {
      const got = vapourDensity(pressure(t, humidity), t);
      compare({ ...row, what: `water in air of ${t} °C, ${humidity} %`, expected, got });
    }
  });

  test('half a step open is half its time; hours of two rooms add up', () => {
    const own = setup({ home: home({ rooms: [room('den'), room('bath')] }) });
    const { airing } = measure(own, (s) => ({
      windowOpen: s === 40 ? 0.5 : 0,
      outdoorVapour: 300,
    }));
    expect(airing.hours_drier).toBeCloseTo(2 * (0.5 / 6), 12);
  });
});

describe('rebound', () => {
  /** Humidity of a room step by step, at an even 20 °C; aired from step 60 on for so many steps. */
  const airing = (humidity: (s: number) => number, steps = 1, share = 1) =>
    measure(setup(), (s) => ({
      humidity: humidity(s),
      windowOpen: s >= 60 && s < 60 + steps ? share : 0,
    })).airing;

  test('back at nine tenths of the drop in the third step after', () => {
    // 60 before, 40 aired, then 48, 55, 58.1: over 58 in the third step, counted to its middle.
    const after = [48, 55, 58.1, 60];
    const found = airing((s) => (s < 60 ? 60 : s === 60 ? 40 : (after[s - 61] ?? 60)));
    expect(found).toMatchObject({ short_airings: 1, rebounds: 1 });
    expect(found.rebound_minutes_mean).toBeCloseTo(25, 9);
  });

  test('the drop is counted to the driest step, also where that comes after shutting', () => {
    // Lowest 40 after shutting: 90 % is 58, not 59 as from the airing's own 50.
    const found = airing((s) => (s < 60 ? 60 : ({ 60: 50, 61: 40 }[s] ?? 58.5)));
    expect(found.rebound_minutes_mean).toBeCloseTo(15, 9);
  });

  test('five minutes of airing in a step of ten: the other five count as shut', () => {
    const found = airing((s) => (s === 60 ? 50 : 60), 1, 0.5);
    expect(found.rebound_minutes_mean).toBeCloseTo(10, 9);
  });

  test('an airing of more than an hour is none, one of an hour is', () => {
    const humid = (steps: number) => (s: number) => (s >= 60 && s < 60 + steps ? 40 : 60);
    expect(airing(humid(6), 6)).toMatchObject({ short_airings: 1, rebounds: 1 });
    expect(airing(humid(7), 7)).toMatchObject({ short_airings: 0, rebound_minutes_mean: null });
  });

  test('the mean is over all that came back', () => {
    // Aired in one step each: back in the first step after, and in the third.
    const dry = [60, 100, 101, 102];
    const { airing: found } = measure(setup(), (s) => ({
      humidity: dry.includes(s) ? 40 : 60,
      windowOpen: s === 60 || s === 100 ? 1 : 0,
    }));
    expect(found).toMatchObject({ short_airings: 2, rebounds: 2 });
    expect(found.rebound_minutes_mean).toBeCloseTo((5 + 25) / 2, 9);
  });

  test('what comes back within a day counts, what takes longer does not', () => {
    const own = setup({ period: { start: START, hours: 72 } });
    const dryFor = (steps: number) =>
      measure(own, (s) => ({
        humidity: s >= 60 && s < 61 + steps ? 40 : 60,
        windowOpen: s === 60 ? 1 : 0,
      })).airing;
    const found = dryFor(143);
    expect(found).toMatchObject({ short_airings: 1, rebounds: 1 });
    expect(found.rebound_minutes_mean).toBeCloseTo(1435, 9);
    expect(dryFor(144)).toMatchObject({ short_airings: 1, rebounds: 0 });
  });

  test('the step before the airing is the room’s own, also across midnight and at the start', () => {
    const own = setup({
      home: home({ rooms: [room('den'), room('bath'), room('hall')] }),
      period: { start: START, hours: 48 },
    });
    // Each room is 10 % damper than the one before, and loses 4 %.
    const aired = (at: number, which: number) =>
      measure(own, (s, i) => ({
        humidity: 50 + 10 * i - (s === at && i === which ? 4 : 0),
        windowOpen: s === at && i === which ? 1 : 0,
      })).airing;
    for (const i of [0, 1, 2]) {
      for (const at of [1, 144, 145]) {
        const found = aired(at, i);
        expect(found).toMatchObject({ short_airings: 1, rebounds: 1 });
        expect(found.rebound_minutes_mean).toBeCloseTo(5, 9);
      }
    }
  });

  test('air that stays dry never came back', () => {
    const found = airing((s) => (s < 60 ? 60 : 40));
    expect(found).toMatchObject({ short_airings: 1, rebounds: 0, rebound_minutes_mean: null });
  });

  test('an airing that dries nothing is not one', () => {
    expect(airing(() => 60)).toMatchObject({ short_airings: 0, rebounds: 0 });
  });

  test('a rebound that the next airing cuts short is left out of the mean', () => {
    const found = measure(setup(), (s) => ({
      humidity: s < 60 ? 60 : s < 70 ? 40 : s < 80 ? 50 : 60,
      windowOpen: s === 60 || s === 75 ? 1 : 0,
    })).airing;
    expect(found.rebounds).toBeLessThan(found.short_airings + 1);
    expect(found).toMatchObject({ short_airings: 1, rebounds: 0 });
  });
});

describe('what a litre costs', () => {
  const gas = { tariff: { by: 'flat', price: 0.07 }, standing: 0.3, carbon: 0.2 } as const;
  const priced = setup({
    home: home({ sources: [BOILER] }),
    prices: { currency: 'GBP', fuels: { gas } },
  });
  const warm = () => ({ fuel: [1000], heating: 850 });

  test('heat and water out of windows, at the mean price of heat from emitters', () => {
    const entries = {
      energy: { heating: 7e7, openings: -3.6e6 * 12 },
      water: { openings: -10 },
    };
    const { airing } = measure(priced, warm, { entries });
    expect(airing.openings_kg).toBeCloseTo(10, 12);
    expect(airing.openings_kwh).toBeCloseTo(12, 12);
    expect(airing.kwh_per_litre).toBeCloseTo(1.2, 12);
    // 24 kWh of gas at 0.07 gave 20.4 kWh of heat; standing charges are due anyway.
    expect(airing.money_per_litre).toBeCloseTo((1.2 * 0.07) / 0.85, 12);
  });

  test('windows that let more water in than out have no price by the litre', () => {
    const entries = { energy: { heating: 7e7, openings: -1e6 }, water: { openings: 3 } };
    const { airing } = measure(priced, warm, { entries });
    expect(airing).toMatchObject({ openings_kg: -3, kwh_per_litre: null, money_per_litre: null });
  });

  test('no price of the fuel, no price of the litre', () => {
    const entries = { energy: { heating: 7e7, openings: -3.6e6 }, water: { openings: -1 } };
    const own = setup({ home: home({ sources: [BOILER] }) });
    const { airing } = measure(own, warm, { entries });
    expect(airing.kwh_per_litre).toBeCloseTo(1, 12);
    expect(airing.money_per_litre).toBeNull();
  });

  test('nothing booked is 0, not -0', () => {
    expect(Object.is(measure(priced, warm).airing.openings_kg, 0)).toBe(true);
  });
});

test('heat given while a window of the room stands open', () => {
  const own = setup({ period: { start: START, hours: 24 } });
  const { heating, notices } = measure(own, (s) => ({
    heating: 1000,
    windowOpen: s === 10 ? 0.5 : s === 11 ? 1 : 0,
  }));
  expect(heating.with_window_open_kwh).toBeCloseTo(1.5 / 6, 12);
  // A hundredth of all heat is not worth a word.
  expect(notices.map(({ id }) => id)).not.toContain('heating-with-window-open');
  const half = measure(own, (s) => ({ heating: 1000, windowOpen: s < 72 ? 1 : 0 }));
  expect(half.notices).toContainEqual({
    id: 'heating-with-window-open',
    text: 'Emitters gave 12 kWh to rooms while a window of theirs stood open, 50 % of all their heat.',
  });
});
