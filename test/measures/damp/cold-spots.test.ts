import { describe, expect, test } from 'vitest';
import { createColdSpots } from '../../../src/measures/damp/cold-spots.ts';
import { createHourlyMeans } from '../../../src/measures/hourly-means.ts';
import { compare } from '../../reference/compare.ts';
import { home, measure, room, START, setup, stretches } from '../hand-made.ts';

const spotFactor = (coldSpotFactor: number) => home({ rooms: [room('den', { coldSpotFactor })] });

describe('mould index at a spot as warm as the room', () => {
  const row = {
    topic: 'Mould index',
    unit: 'd',
    source: 'Hukka and Viitanen 1999, growth equations integrated hourly',
    mark: 'closed form',
    tolerance: { absolute: 0.05 + 1 / 24 },
    because: 'days printed to a tenth, and the hour that passes 1 counted whole',
  } as const;

  test.each([
    { air: 20, humidity: 90, days: 29.5 },
    { air: 20, humidity: 97, days: 10.4 },
    { air: 10, humidity: 95, days: 22.3 },
  ])('$air °C and $humidity % reach index 1 after $days days', ({ air, humidity, days }) => {
    const got = daysToIndexOne(air, humidity);
    compare({
      ...row,
      what: `index 1 through measures, ${air} °C ${humidity} %`,
      expected: days,
      got,
    });
  });

  function daysToIndexOne(air: number, humidity: number): number {
    const own = spotFactor(1);
    const spots = createColdSpots(own, ['very sensitive']);
    const means = createHourlyMeans(1, [spots.observe]);
    let hours = 0;
    const year = stretches(own, START, 3600, 8760, [1], () => ({ air, humidity, outdoor: -5 }));
    for (const hour of year) {
      means.observe(hour);
      hours++;
      if (spots.result(0).mouldEnd >= 1) return hours / 24;
    }
    return Number.NaN;
  }

  test('a resistant class grows less; 79.9 % never grows', () => {
    const own = (mould: 'sensitive' | 'resistant') =>
      setup({
        home: spotFactor(1),
        mouldClasses: [mould],
        period: { start: START, hours: 60 * 24 },
      });
    const peak = (mould: 'sensitive' | 'resistant', humidity: number) =>
      measure(own(mould), () => ({ humidity }), { dt: 3600 }).rooms['den']!.mould_index_peak;
    expect(peak('resistant', 97)).toBeGreaterThan(0);
    expect(peak('resistant', 97)).toBeLessThan(peak('sensitive', 97));
    expect(peak('sensitive', 79.9)).toBe(0);
  });

  test('a dry spell after growth: the end is below the peak', () => {
    const own = setup({ home: spotFactor(1), period: { start: START, hours: 20 * 24 } });
    const dryAfter = 15 * 24;
    const den = measure(own, (s) => ({ humidity: s < dryAfter ? 97 : 50 }), { dt: 3600 }).rooms[
      'den'
    ]!;
    // 6 h at 0.032 a day, then rest to the 24th hour, then 0.016 a day for 4 days.
    const lost = (0.032 * 6) / 24 + 0.016 * 4;
    expect(den.mould_index_peak - den.mould_index_end).toBeCloseTo(lost, 9);
  });
});

describe('hours above 80 % at the cold spot', () => {
  test.each([
    { factor: 0.6, hours: 24 },
    { factor: 0.75, hours: 0 },
  ])('20 °C, 55 %, 0 °C outdoors, factor $factor: $hours of 24', ({ factor, hours }) => {
    const own = setup({ home: spotFactor(factor) });
    const den = measure(own, () => ({ humidity: 55, outdoor: 0 })).rooms['den']!;
    expect(den.cold_spot_hours_above_80_pct).toBe(hours);
  });

  test('the spot follows the mean outdoors of 24 hours, not the minute', () => {
    // 20 °C and 50 %: 80 % is reached at 12.6 °C. With factor 0.5 the wall's outdoors must be below
    // 5.25 °C; after a fall from 20 to 0 °C the mean is there in the 18th hour.
    const own = setup({ home: spotFactor(0.5), period: { start: START, hours: 48 } });
    const den = measure(own, (s) => ({ outdoor: s < 144 ? 20 : 0 })).rooms['den']!;
    expect(den.cold_spot_hours_above_80_pct).toBe(24 - 17);
  });

  test('hourly means decide: ten damp minutes of an hour are not an hour', () => {
    const own = setup({ home: spotFactor(1) });
    const den = measure(own, (s) => ({ humidity: s % 6 === 0 ? 95 : 60 })).rooms['den']!;
    expect(den.cold_spot_hours_above_80_pct).toBe(0);
  });
});
