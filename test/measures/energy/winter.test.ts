import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Tariff } from '../../../src/home/prices.ts';
import { createWinter } from '../../../src/measures/energy/winter.ts';
import type { MeasuresSetup } from '../../../src/measures/measures-setup.ts';
import { UTC_CLOCK } from '../../../src/units/local-clock.ts';
import { aHome } from '../../home/a-home.ts';
import { AHEAD } from '../../units/summer-time.ts';
import { BOILER, home, measure, setup } from '../hand-made.ts';

const utc = (month: number, day: number, hour = 0) => Date.UTC(2023, month - 1, day, hour) / 1000;
const { site } = aHome({});
const SOUTH = { ...site, latitude: -40 };
const FLAT: MeasuresSetup['prices'] = {
  currency: 'GBP',
  fuels: { electricity: { tariff: { by: 'flat', price: 0.2 }, standing: 0.5, carbon: 0 } },
};

describe('winter energy', () => {
  /** 1 kW all the time. */
  const bill = (start: number, hours: number, over: Partial<MeasuresSetup> = {}) =>
    measure(
      setup({ prices: FLAT, period: { start, hours }, ...over }),
      () => ({ electricity: 1000 }),
      { dt: 3600 },
    ).money;

  test('182 of the 365 days of 2023 in the north, 183 in the south', () => {
    const year = (own: MeasuresSetup['home']) => bill(utc(1, 1), 8760, { home: own });
    const [north, south] = [year(home()), year(home({ site: SOUTH }))];
    expect(north.winter_energy).toBeCloseTo(182 * (24 * 0.2 + 0.5), 6);
    expect(south.winter_energy).toBeCloseTo(183 * (24 * 0.2 + 0.5), 6);
    expect(north.winter_energy + south.winter_energy).toBeCloseTo(north.energy, 6);
    expect(south.energy).toBe(north.energy);
  });

  test('it ends at midnight by the wall clock, and its last day pays for the hours it was run', () => {
    // 22:00 UTC is midnight two hours ahead.
    const last = bill(utc(3, 31), 24, { clock: AHEAD });
    expect(last.winter_energy).toBeCloseTo(22 * 0.2 + (22 / 24) * 0.5, 9);
    expect(last.energy).toBeCloseTo(24 * 0.2 + 0.5, 9);
  });

  test('a period outside it has none of it, one inside nothing else', () => {
    expect(bill(utc(4, 1), 24 * 183).winter_energy).toBe(0);
    const inside = bill(utc(1, 1), 24 * 90);
    expect(inside.winter_energy).toBe(inside.energy);
  });

  test('the end of one winter and the beginning of the next are one sum', () => {
    const year = bill(utc(3, 30), 24 * 187); // two days, the summer, two days
    expect(year.winter_energy).toBeCloseTo(4 * (24 * 0.2 + 0.5), 9);
  });

  test('a fuel without a price is left out of it as well', () => {
    const own = setup({
      home: home({ sources: [BOILER] }),
      prices: { currency: 'GBP', fuels: {} },
    });
    expect(measure(own, () => ({ fuel: [1000] })).money.winter_energy).toBe(0);
  });
});

test('winter north and winter south make up the energy, for any period, clock, tariff and cut', () => {
  const night: Tariff = {
    by: 'blocks',
    price: 0.3,
    blocks: [{ from: 1410, to: 375, price: 0.12 }],
    clock: AHEAD,
  };
  const flat: Tariff = { by: 'flat', price: 0.07 };
  const near = fc.constantFrom(utc(3, 31), utc(9, 30), utc(1, 1), utc(10, 28), utc(3, 25));
  const clocks = fc.constantFrom(AHEAD, UTC_CLOCK, { from: [0], offset: [20_700] });
  const cuts = fc.array(fc.integer({ min: 1, max: 200 }), { minLength: 1, maxLength: 3 });
  const steps = fc.constantFrom(600, 1800, 3600);
  fc.assert(
    fc.property(
      ...[near, fc.integer({ min: 1, max: 96 }), clocks, cuts, steps],
      (start, hours, clock, cut, dt) => {
        const at = (own: MeasuresSetup['home']) =>
          measure(
            setup({
              home: own,
              clock,
              period: { start, hours },
              prices: {
                currency: 'GBP',
                fuels: {
                  electricity: { tariff: night, standing: 0.5, carbon: 0 },
                  gas: { tariff: flat, standing: 0.3, carbon: 0 },
                },
              },
            }),
            (s) => ({ electricity: 300 + 40 * (s % 7), fuel: [(s % 5) * 500] }),
            { dt, cuts: cut },
          ).money;
        const north = at(home({ sources: [BOILER] }));
        const south = at(home({ sources: [BOILER], site: SOUTH }));
        expect(north.winter_energy + south.winter_energy).toBeCloseTo(north.energy, 9);
      },
    ),
    { numRuns: 40 },
  );
});

describe('the half-year by the wall clock', () => {
  test('a step that straddles its edge counts in part', () => {
    const ahead = createWinter({ from: [0], offset: [1800] }, 50);
    expect(ahead.share(utc(9, 30, 23), 3600)).toBe(0.5);
    expect(ahead.share(utc(9, 30, 23) + 1800, 3600)).toBe(1);
    expect(ahead.share(utc(9, 30, 22), 3600)).toBe(0);
    expect(ahead.share(utc(3, 31, 23), 3600)).toBe(0.5);
  });

  test('what was asked before does not change it', () => {
    const used = createWinter(AHEAD, 50);
    const hour = fc.integer({ min: 0, max: 20_000 });
    fc.assert(
      fc.property(hour, (h) => {
        const at = utc(1, 1, h);
        expect(used.share(at, 3600)).toBe(createWinter(AHEAD, 50).share(at, 3600));
      }),
    );
  });

  test('on the equator it is that of the north', () => {
    expect(createWinter(UTC_CLOCK, 0).share(utc(1, 1), 3600)).toBe(1);
    expect(createWinter(UTC_CLOCK, -0.1).share(utc(1, 1), 3600)).toBe(0);
  });

  test('days: 25 hours of autumn are one day, and a clock that skips its first midnight loses none', () => {
    expect(createWinter(AHEAD, 50).days(utc(10, 28, 22), 25)).toBe(1);
    // Midnight of 1 October is skipped: 30 September is followed by 01:00.
    const skips = { from: [0, utc(10, 1)], offset: [0, 3600] };
    expect(createWinter(skips, 50).days(utc(9, 30), 24 + 23)).toBe(1);
    expect(createWinter(skips, -50).days(utc(9, 30), 24 + 23)).toBe(1);
    expect(createWinter(skips, 50).share(utc(10, 1), 3600)).toBe(1);
  });

  test('days over several years', () => {
    expect(createWinter(UTC_CLOCK, 50).days(utc(1, 1), 24 * (365 + 366))).toBe(182 + 183);
    expect(createWinter(UTC_CLOCK, -50).days(utc(1, 1), 24 * (365 + 366))).toBe(183 + 183);
  });
});
