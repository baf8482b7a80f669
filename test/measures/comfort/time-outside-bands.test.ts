import { describe, expect, test } from 'vitest';
import type { RoomBands } from '../../../src/home/bands.ts';
import { compare } from '../../reference/compare.ts';
import { BANDS, home, measure, room, START, setup } from '../hand-made.ts';

describe('long-term evaluation', () => {
  const bands: RoomBands = { ...BANDS, temperature: { low: 20, high: 26, reason: 'test' } };
  const operative = [19, 18.5, 21, 27];
  const own = setup({ bands: [bands], period: { start: START, hours: 4 } });
  const den = () =>
    measure(own, (s) => ({ operative: operative[Math.floor(s / 6)]!, occupants: 1 })).rooms['den']!;
  const row = {
    topic: 'Hours outside bands',
    source: 'ISO 7730 annex H, methods A and B; limits 20 to 26 °C, hours 19, 18.5, 21, 27 °C',
    mark: 'closed form',
    tolerance: { absolute: 1e-9 },
    because: 'rounding',
  } as const;

  test('share of occupied hours outside, and degree-hours cold and warm', () => {
    const { outside_band_occupied_hours: out, ...rest } = den();
    const outside = out.temperature_low + out.temperature_high;
    compare({ ...row, what: 'hours outside', unit: '%', expected: 75, got: (100 * outside) / 4 });
    compare({ ...row, what: 'cold', unit: 'K h', expected: 2.5, got: rest.degree_hours_below });
    compare({ ...row, what: 'warm', unit: 'K h', expected: 1, got: rest.degree_hours_above });
  });
});

describe('hours outside bands', () => {
  test('a room at 17 °C and 65 % for 5 hours of a day is outside for exactly those', () => {
    const low = (s: number) => s >= 12 && s < 42;
    const den = measure(setup(), (s) => (low(s) ? { air: 17, humidity: 65 } : {})).rooms['den']!;
    expect(den.outside_band_hours).toEqual({
      temperature_low: 5,
      temperature_high: 0,
      humidity_low: 0,
      humidity_high: 5,
      co2_high: 0,
      tvoc_high: 0,
      pollen_high: 0,
      no2_high: 0,
      pm25_high: 0,
    });
    expect(Object.values(den.outside_band_occupied_hours)).toEqual([0, 0, 0, 0, 0, 0, 0, 0, 0]);
    expect(den.degree_hours_below).toBeCloseTo(5, 12);
  });

  test('on the edge is inside', () => {
    const den = (operative: number, humidity: number) =>
      measure(setup(), () => ({ operative, humidity })).rooms['den']!.outside_band_hours;
    expect(Object.values(den(18, 40)).every((h) => h === 0)).toBe(true);
    expect(Object.values(den(26, 60)).every((h) => h === 0)).toBe(true);
    expect(den(26.001, 39.999)).toMatchObject({ temperature_high: 24, humidity_low: 24 });
  });

  test('where an infant sleeps, the edge of 20 °C holds while it is cold outdoors, another when mild', () => {
    const mild = { high: 26, from: 12, hours: 3 };
    const bands = [{ ...BANDS, temperature: { low: 16, high: 20, reason: 'test', mild } }];
    const den = (outdoor: (s: number) => number, operative: number) =>
      measure(setup({ bands }), (s) => ({ operative, outdoor: outdoor(s), occupants: 1 })).rooms[
        'den'
      ]!.outside_band_hours.temperature_high;
    expect(den(() => 11.9, 22)).toBe(24);
    expect(den(() => 12, 22)).toBe(0);
    expect(den(() => 20, 26.5)).toBe(24);
    // From 0 to 18 °C at noon: the mean of three hours is 12 after two of them.
    expect(den((s) => (s < 72 ? 0 : 18), 22)).toBeCloseTo(12 + 2 - 1 / 6, 9);
    // And below 12 °C again as soon as more than an hour is cold.
    expect(den((s) => (s < 72 ? 18 : 0), 22)).toBeCloseTo(12 - 1, 9);
  });

  test('temperature is operative: cold walls make a room too cold', () => {
    const den = measure(setup(), () => ({ air: 20, operative: 17.5 })).rooms['den']!;
    expect(den.outside_band_hours.temperature_low).toBe(24);
    expect(den.mean_temperature_c).toBeCloseTo(20, 12);
  });

  test('somebody in for half of each step counts half; a crowd counts once', () => {
    const cold = (occupants: number) =>
      measure(setup(), () => ({ air: 15, occupants })).rooms['den']!.outside_band_occupied_hours;
    expect(cold(0.5).temperature_low).toBe(12);
    expect(cold(3).temperature_low).toBe(24);
    expect(cold(0).temperature_low).toBe(0);
    const hot = (occupants: number) =>
      measure(setup(), () => ({ air: 30, occupants })).rooms['den']!.outside_band_occupied_hours;
    expect([0.5, 3].map((occupants) => hot(occupants).temperature_high)).toEqual([12, 24]);
  });

  test('rooms are kept apart, in the order of the home', () => {
    const own = setup({ home: home({ rooms: [room('warm'), room('cold'), room('damp')] }) });
    const rooms = measure(own, (_, i) => [{}, { air: 10 }, { humidity: 90 }][i]!).rooms;
    expect(rooms['warm']!.outside_band_hours).toMatchObject({ temperature_low: 0 });
    expect(rooms['cold']!.outside_band_hours).toMatchObject({ temperature_low: 24 });
    expect(rooms['damp']!.outside_band_hours).toMatchObject({
      temperature_low: 0,
      humidity_high: 24,
    });
  });
});

describe('species', () => {
  const species = [
    { name: 'CO2', unit: 'ppm', outdoor: 420, penetration: 1 },
    { name: 'PM2.5', unit: 'µg/m3', outdoor: 8, penetration: 0.8 },
  ] as const;
  const band = (high: number, hours: number) => ({
    low: Number.NEGATIVE_INFINITY,
    high,
    reason: 'test',
    hours,
  });
  const own = (pmHours: number) =>
    setup({
      home: home({ species }),
      bands: [{ ...BANDS, species: { co2: band(1000, 0), 'PM2.5': band(15, pmHours) } }],
      period: { start: START, hours: 72 },
    });

  test('CO2 counts by the moment, whatever the spelling of its name', () => {
    const den = measure(own(24), (s) => ({ species: [s < 18 ? 1001 : 1000, 0] })).rooms['den']!;
    expect(den.outside_band_hours.co2_high).toBe(3);
  });

  test('a 24-hour mean forgets a short peak and remembers a long one', () => {
    // 24 h at 12, then 12 h at 20, then clean: the trailing mean passes 15 when 9 of 24 h are at 20,
    // and falls back below when, of the last 24 h, clean ones weigh enough.
    const level = (s: number) => (s < 144 ? 12 : s < 216 ? 20 : 0);
    const den = measure(own(24), (s) => ({ species: [0, level(s)] })).rooms['den']!;
    // Rising: 12 + 8 k/24 > 15 needs more than 9 h: 12 h - 9 h = 3 h of the peak count.
    // Falling: with k clean hours the mean is (12 (12 - k) + 20 12) / 24 > 15 for k < 2: 2 h less
    // the step whose mean is exactly 15.
    expect(den.outside_band_hours.pm25_high).toBeCloseTo(3 + 2 - 1 / 6, 9);
  });

  test('without an averaging time the same series counts by the moment', () => {
    const level = (s: number) => (s < 144 ? 12 : s < 216 ? 20 : 0);
    const den = measure(own(0), (s) => ({ species: [0, level(s)] })).rooms['den']!;
    expect(den.outside_band_hours.pm25_high).toBe(12);
  });

  test('before the averaging time has passed nothing counts', () => {
    const den = measure(own(24), () => ({ species: [0, 50] })).rooms['den']!;
    expect(den.outside_band_hours.pm25_high).toBeCloseTo(72 - 24 + 1 / 6, 9);
  });

  test('each room has its own edge, average and level of each species; one that has no band has none', () => {
    const both = setup({
      home: home({
        species: [...species, { name: 'PM10', unit: 'µg/m3', outdoor: 5, penetration: 1 }],
        rooms: [room('den'), room('bath'), room('hall')],
      }),
      bands: [
        { ...BANDS, species: { co2: band(1000, 0), 'PM2.5': band(15, 24) } },
        { ...BANDS, species: { co2: band(800, 2), 'PM2.5': band(15, 0) } },
        BANDS,
      ],
      period: { start: START, hours: 48 },
    });
    // CO2 is 900 everywhere, particles are 20 in the bath alone for six hours; PM10 has no figure.
    const { rooms } = measure(both, (s, i) => ({
      operative: [17, 20, 28][i]!,
      species: [900, i === 1 && s < 36 ? 20 : 12, 400],
    }));
    const of = (name: string) => {
      const { co2_high, pm25_high, tvoc_high } = rooms[name]!.outside_band_hours;
      return [co2_high, pm25_high, tvoc_high];
    };
    expect(of('den')).toEqual([0, 0, 0]);
    expect(of('bath')[0]).toBeCloseTo(48 - 2 + 1 / 6, 9);
    expect(of('bath').slice(1)).toEqual([6, 0]);
    expect(of('hall')).toEqual([0, 0, 0]);
    // K h below 18 and above 26 °C.
    const depth = ({ degree_hours_below, degree_hours_above }: (typeof rooms)[string]) => [
      degree_hours_below,
      degree_hours_above,
    ];
    expect(['den', 'bath', 'hall'].map((name) => depth(rooms[name]!))).toEqual([
      [48, 0],
      [0, 0],
      [0, 96],
    ]);
  });

  test('a species the home does not carry stays at 0', () => {
    const den = measure(own(24), () => ({ species: [0, 0] })).rooms['den']!;
    expect(den.outside_band_hours.tvoc_high).toBe(0);
  });
});

describe('bedroom at night', () => {
  /** How many steps of nights, 22:00 to 07:00, have gone before this one; Infinity by day. */
  const nightStep = (s: number) => {
    const k = s % 144;
    if (k >= 42 && k < 132) return Number.POSITIVE_INFINITY;
    return 54 * Math.floor(s / 144) + (k < 42 ? k : k - 90);
  };
  const own = setup({ period: { start: START, hours: 8760 } });
  const row = {
    topic: 'Hours outside bands',
    mark: 'closed form',
    tolerance: { absolute: 1e-6 },
    because: 'rounding',
  } as const;
  /** A year of nights in which so many hours, all within 22:00 to 07:00, are above 26 °C. */
  const hot = (hours: number) =>
    measure(own, (s) => ({
      occupants: Number.isFinite(nightStep(s)) ? 1 : 0,
      // Hot afternoons are not hot nights.
      operative: nightStep(s) < hours * 6 || s % 144 === 90 ? 27 : 22,
    })).rooms['den']!;

  test('a year has 3285 of them; above 26 °C, 32 are under one in a hundred and 33 are not', () => {
    const some = hot(32);
    const more = hot(33);
    const source = '22 to 07 h, at most 1 % of the year above 26 °C (CIBSE TM59, as quoted)';
    const share = (room: typeof some) =>
      (100 * room.outside_band_occupied_hours.temperature_high) / room.occupied_hours;
    const got = some.occupied_hours;
    compare({ ...row, what: 'nights of a year', unit: 'h', source, expected: 3285, got });
    const above = some.outside_band_occupied_hours.temperature_high;
    compare({ ...row, what: 'above 26 °C', unit: 'h', source, expected: 32, got: above });
    expect(share(some)).toBeLessThan(1);
    expect(share(more)).toBeGreaterThan(1);
    expect(some.outside_band_hours.temperature_high).toBeCloseTo(32 + 365 / 6, 6);
  });
});
