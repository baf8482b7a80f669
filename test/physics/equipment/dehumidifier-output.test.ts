import { describe, expect, test } from 'vitest';
import {
  compressorDrying,
  compressorWorkingShare,
} from '../../../src/physics/equipment/compressor-drying.ts';
import {
  dehumidifierDrying,
  dehumidifierPower,
  waterPerDrying,
} from '../../../src/physics/equipment/dehumidifier-output.ts';
import { desiccantDrying } from '../../../src/physics/equipment/desiccant-drying.ts';
import { humidityRatioFromRelativeHumidity } from '../../../src/physics/moist-air/humidity-ratio.ts';
import { saturationTable } from '../../../src/physics/moist-air/saturation-table.ts';
import { type BandComparison, compare, compareBand } from '../../reference/compare.ts';
import { wetBulb } from '../../reference/physics/moist-air/wet-bulb.ts';

const TOPIC = 'Dehumidifiers';
const NAN = Number.NaN;
const DAY = 86_400;
const TYPES = ['compressor', 'desiccant'] as const;
type Air = readonly [temperature: number, humidity: number];

/** Water taken from a room as a run computes it. [kg/s] */
const dehumidifierWater = (
  type: (typeof TYPES)[number],
  ratedWater: number,
  ...[ratedTemperature, ratedHumidity, temperature, humidity]: [number, number, number, number]
): number =>
  waterPerDrying(type, ratedWater, ratedTemperature, ratedHumidity) *
  dehumidifierDrying(type, temperature, humidity);

/** Litres a day. */
const litres = (
  type: (typeof TYPES)[number],
  rated: number,
  at: Air,
  [temperature, humidity]: Air,
): number => DAY * dehumidifierWater(type, rated / DAY, at[0], at[1], temperature, humidity);

const power = (at: Air, [temperature, humidity]: Air, rated = 200): number =>
  dehumidifierPower('compressor', rated, at[0], at[1], temperature, humidity);

describe('water of a compressor', () => {
  const LABEL = 'US energy label, dehumidifier testing and capacity (energystar.gov)';
  const TRADE = 'trade guides to compressor dehumidifiers';
  const FITTED = 'the unit is not named; two figures of the formula were fitted to this and others';
  test.each<Omit<BandComparison, 'topic' | 'mark'>>([
    {
      what: 'capacity at 18.3 °C beside 26.7 °C, 60 %',
      unit: '-',
      source: LABEL,
      low: 0.6,
      high: 0.71,
      got: litres('compressor', 1, [26.7, 60], [18.3, 60]),
      because: '30, 50 and 70 US pints became 20, 30 and 50: factors 0.67, 0.60 and 0.71',
    },
    {
      what: 'capacity at 27 °C, 60 % beside 30 °C, 80 %',
      unit: '-',
      source: TRADE,
      low: 0.5,
      high: 0.6,
      got: litres('compressor', 1, [30, 80], [27, 60]),
      because: `10, 16 and 50 L became 5.6, 8 and 30; ${FITTED}`,
    },
    {
      what: 'a unit of 60 L/day at 35 °C, 100 %, working at 20 °C, 70 %',
      unit: 'L/day',
      source: TRADE,
      low: 17.5,
      high: 22.5,
      got: litres('compressor', 60, [35, 100], [20, 70]),
      because: 'printed as "around 20", taken as rounded to five',
    },
    {
      what: 'a unit of 12 L/day at 30 °C, 80 %, working at 15 °C, 80 %',
      unit: 'L/day',
      source: TRADE,
      low: 4,
      high: 5,
      got: litres('compressor', 12, [30, 80], [15, 80]),
      because: `printed as 4 to 5; ${FITTED}`,
    },
  ])('$what', (row) => compareBand({ topic: TOPIC, mark: 'published', ...row }));

  test('falls with temperature and with humidity, never below nothing', () => {
    for (let rh = 10; rh <= 100; rh += 5) {
      for (let t = -10; t <= 40; t++) {
        const here = compressorDrying(t, rh);
        expect(compressorDrying(t + 1, rh)).toBeGreaterThanOrEqual(here);
        expect(compressorDrying(t, rh - 10)).toBeLessThanOrEqual(here);
        expect(here).toBeGreaterThanOrEqual(0);
      }
    }
    expect(litres('compressor', 10, [30, 80], [20, 50])).toBeLessThan(
      litres('compressor', 10, [30, 80], [20, 60]),
    );
  });

  test('takes nothing from air of 20 % and less', () => {
    expect(litres('compressor', 12, [30, 80], [20, 20])).toBe(0);
    expect(litres('compressor', 12, [30, 80], [20, 21])).toBeGreaterThan(0);
    expect(compressorDrying(20, 0)).toBe(0);
    expect(compressorDrying(20, 30)).toBeCloseTo(compressorDrying(20, 40) / 2, 12); // half way to 40 %
    expect(compressorDrying(20, 130)).toBe(compressorDrying(20, 100));
  });

  test('melts ice below 16 °C and does nothing else from 4 °C down', () => {
    expect(compressorWorkingShare(16)).toBe(1);
    expect(compressorWorkingShare(30)).toBe(1);
    expect(compressorWorkingShare(10)).toBeCloseTo(0.5, 12);
    expect(compressorWorkingShare(4)).toBe(0);
    expect(litres('compressor', 12, [30, 80], [4, 90])).toBe(0);
    expect(litres('compressor', 12, [30, 80], [-10, 90])).toBe(0);
    for (let t = 4; t < 16; t++) {
      expect(compressorWorkingShare(t + 1)).toBeGreaterThan(compressorWorkingShare(t));
    }
  });
});

describe('water of a desiccant', () => {
  test.each([5, 10, 15, 27])('changes little at %s °C', (t) => {
    compareBand({
      topic: TOPIC,
      what: `desiccant at ${t} °C beside 20 °C, 60 %`,
      unit: '-',
      source: 'trade guides: not affected by temperature',
      mark: 'published',
      low: 0.85,
      high: 1.15,
      got: litres('desiccant', 1, [20, 60], [t, 60]),
      because: 'no figure is printed; "not affected" is taken as 15 % either way',
    });
  });

  test('beats a compressor of the same rating in a cold room, not in a warm one', () => {
    const rated = litres('compressor', 12, [30, 80], [20, 60]);
    for (const t of [5, 10, 15]) {
      expect(litres('desiccant', rated, [20, 60], [t, 60])).toBeGreaterThan(
        litres('compressor', rated, [20, 60], [t, 60]),
      );
    }
    expect(litres('desiccant', rated, [20, 60], [27, 60])).toBeLessThan(
      litres('compressor', rated, [20, 60], [27, 60]),
    );
  });

  test.each([
    [10, 60, 0.92], // 8 % for ten kelvins
    [30, 60, 1.08],
    [1, 60, 0.424], // half stopped by frost, of 1 - 0.008 x 19
    [20, 40, 0.7529], // (2/3)^0.7
    [20, 80, 1.2231], // (4/3)^0.7
  ])('at %s °C and %s %% dries as its formula gives by hand', (t, rh, share) => {
    expect(desiccantDrying(t, rh)).toBeCloseTo(share, 4);
  });

  test('dries more in damper air, nothing in frost or in dry air', () => {
    expect(desiccantDrying(20, 60)).toBe(1);
    expect(desiccantDrying(20, 80)).toBeGreaterThan(1);
    expect(desiccantDrying(20, 40)).toBeLessThan(1);
    expect(desiccantDrying(20, 0)).toBe(0);
    expect(desiccantDrying(0, 60)).toBe(0);
    expect(desiccantDrying(-5, 60)).toBe(0);
  });
});

describe('the rating', () => {
  const RATINGS: readonly Air[] = [
    [27, 60],
    [30, 80],
    [20, 60],
    [18.3, 60],
    [12, 70],
  ];

  test.each(RATINGS)('gives itself, but for the last bit, at %s °C and %s percent', (t, rh) => {
    for (const type of TYPES) {
      const water = dehumidifierWater(type, 1.234e-4, t, rh, t, rh);
      expect(Math.abs(water / 1.234e-4 - 1)).toBeLessThanOrEqual(Number.EPSILON);
      expect(dehumidifierPower(type, 187.3, t, rh, t, rh)).toBe(187.3);
    }
  });

  test('one unit may be rated anywhere: by way of another rating it dries the same', () => {
    for (const type of TYPES) {
      const direct = litres(type, 12, [30, 80], [16, 70]);
      const between = litres(type, 12, [30, 80], [20, 60]);
      expect(litres(type, between, [20, 60], [16, 70])).toBeCloseTo(direct, 12);
      const ratio = dehumidifierDrying(type, 16, 70) / dehumidifierDrying(type, 30, 80);
      expect(direct).toBeCloseTo(12 * ratio, 12);
    }
    const warm = power([30, 80], [20, 60]);
    expect(power([20, 60], [9, 70], warm)).toBeCloseTo(power([30, 80], [9, 70]), 10);
  });

  test('a table of saturation gives the same to a millionth', () => {
    const table = saturationTable();
    for (const [t, rh] of RATINGS) {
      const here = dehumidifierDrying('compressor', t, rh);
      expect(Math.abs(dehumidifierDrying('compressor', t, rh, table) / here - 1)).toBeLessThan(
        1e-6,
      );
    }
  });

  test('twice the unit dries twice as much', () => {
    const one = litres('compressor', 10, [27, 60], [19, 55]);
    expect(litres('compressor', 20, [27, 60], [19, 55])).toBeCloseTo(2 * one, 12);
    expect(litres('compressor', 0, [27, 60], [19, 55])).toBe(0);
  });

  test.each([
    [65, 56.6, 'US federal test procedure for dehumidifiers', 'from memory'],
    [73, 63.6, 'US federal test procedure for whole-home dehumidifiers', 'from memory'],
    [80, 69.6, 'AHAM DH-1 as quoted at atmoswater.com', 'published'],
  ] as const)('a rating at %s °F is a wet bulb of %s °F', (dry, wet, source, mark) => {
    const t = (dry - 32) / 1.8;
    const bulb = wetBulb(t, humidityRatioFromRelativeHumidity(t, 60, 101_325), 101_325);
    compare({
      topic: TOPIC,
      what: `wet bulb of the US rating at ${dry} °F and 60 %`,
      unit: '°F',
      source,
      mark,
      expected: wet,
      got: 32 + 1.8 * bulb,
      tolerance: { absolute: 0.1 },
      because: 'printed to a tenth, of a humidity printed to a percent',
    });
  });
});

describe('dehumidifierPower', () => {
  test('of a compressor rises slightly with temperature, less than its water', () => {
    for (let t = 16; t < 45; t++) {
      const [here, next] = [power([27, 60], [t, 60]), power([27, 60], [t + 1, 60])];
      expect(next / here).toBeGreaterThan(1);
      expect(next / here).toBeLessThan(1.02);
      expect(next / here).toBeLessThan(compressorDrying(t + 1, 60) / compressorDrying(t, 60));
    }
    expect(power([27, 60], [20, 30])).toBe(power([27, 60], [20, 90]));
  });

  test('of a compressor that only melts ice is its fan, a fifth', () => {
    // 1.5 % less for each kelvin below 20 °C, of which a fifth; half of the time at 10 °C.
    expect(power([20, 60], [0, 80])).toBeCloseTo(0.2 * (1 - 20 * 0.015) * 200, 9);
    expect(power([20, 60], [-10, 80])).toBeCloseTo(0.2 * (1 - 20 * 0.015) * 200, 9);
    expect(power([20, 60], [10, 80])).toBeCloseTo((0.5 + 0.5 * 0.2) * (1 - 10 * 0.015) * 200, 9);
    const iced = power([27, 60], [3, 80]);
    expect(iced).toBeGreaterThan(0.1 * 200);
    expect(iced).toBeLessThan(0.25 * 200);
  });

  test('of a desiccant is the same everywhere', () => {
    for (const t of [-5, 5, 35])
      expect(dehumidifierPower('desiccant', 500, 20, 60, t, 50)).toBe(500);
  });

  test('efficiency carried from one US rating to the other is that of units on sale', () => {
    const at: Air = [18.3, 60];
    const perDay = litres('compressor', 24, [26.7, 60], at);
    compareBand({
      topic: TOPIC,
      what: 'efficiency at 18.3 °C, 60 % of a unit with 2.0 L/kWh at 26.7 °C',
      unit: 'L/kWh',
      source: 'US rule of 13 June 2019 (ul.com) and energy label, version 5 (energystar.gov)',
      mark: 'published',
      low: 1.3,
      high: 1.8,
      got: perDay / (0.024 * power([26.7, 60], at, 500)),
      because:
        'least efficiency up to 25 US pints a day, and what the label asks for up to 50; the label ' +
        'asked for 2.0 at 26.7 °C before (from memory)',
    });
  });
});

describe('refuses', () => {
  test.each([
    ['no water', () => dehumidifierWater('compressor', NAN, 27, 60, 20, 60)],
    ['litres a day', () => dehumidifierWater('compressor', 12, 27, 60, 20, 60)],
    ['no rated temperature', () => dehumidifierWater('compressor', 1e-4, NAN, 60, 20, 60)],
    ['no rated humidity', () => dehumidifierWater('desiccant', 1e-4, 27, NAN, 20, 60)],
    ['a share for percent', () => dehumidifierWater('desiccant', 1e-4, 27, 0.6, 20, 60)],
    ['kelvins', () => dehumidifierWater('compressor', 1e-4, 27, 60, 293, 60)],
    ['no temperature', () => dehumidifierWater('desiccant', 1e-4, 27, 60, NAN, 60)],
    ['no humidity', () => dehumidifierWater('compressor', 1e-4, 27, 60, 20, NAN)],
    ['no humidity of a desiccant', () => dehumidifierWater('desiccant', 1e-4, 27, 60, 20, NAN)],
    ['no power', () => dehumidifierPower('compressor', NAN, 27, 60, 20, 60)],
    ['a negative power', () => dehumidifierPower('desiccant', -1, 27, 60, 20, 60)],
    ['no temperature for power', () => dehumidifierPower('desiccant', 1, 27, 60, NAN, 60)],
    ['no humidity for power', () => dehumidifierPower('compressor', 1, 27, 60, 20, NAN)],
    ['no working share', () => compressorWorkingShare(NAN)],
  ])('%s', (_what, attempt) => expect(attempt).toThrow(RangeError));

  test('a rating at which nothing could be rated, in words', () => {
    expect(() => dehumidifierWater('compressor', 1e-4, 20, 10, 20, 60)).toThrow(
      'dehumidifier: the rating must be in air that it can dry; at 20 °C and 10 % a compressor takes nothing',
    );
    expect(() => dehumidifierPower('compressor', 200, 2, 60, 20, 60)).toThrow(
      'dehumidifier: rated temperature must be between 5 and 60 °C, got 2 °C',
    );
  });
});
