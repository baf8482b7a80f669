import { describe, expect, test } from 'vitest';
import { criticalHumidity } from '../../../src/physics/mould/critical-humidity.ts';
import { MOULD_CLASSES, type MouldKind, PINE } from '../../../src/physics/mould/mould-kind.ts';
import {
  dryHoursAfter,
  mouldGrowth,
  mouldIndexLimit,
  mouldStep,
  weeksToFirstGrowth,
} from '../../../src/physics/mould/mould-step.ts';
import { compare } from '../../reference/compare.ts';

const MODEL = 'Hukka and Viitanen 1999, Wood Science and Technology 33, 475-485';
const row = { topic: 'Mould index', source: MODEL, mark: 'closed form' } as const;

test.each([
  [1, 97.03],
  [5, 88.02],
  [10, 82.03],
  [15, 80.04],
  [20, 80.04],
])('critical humidity at %s °C', (temperature, expected) => {
  compare({
    ...row,
    what: `critical humidity at ${temperature} °C`,
    unit: '%',
    expected,
    got: criticalHumidity(temperature),
    tolerance: { absolute: 0.006 },
    because: 'worked out to two places',
  });
});

test.each([
  [80, 21.6],
  [85, 9.3],
  [90, 4.2],
  [95, 1.98],
  [97, 1.48],
  [100, 0.97],
])('weeks to first growth at 20 °C and %s %%', (humidity, expected) => {
  compare({
    ...row,
    what: `weeks to first growth on pine, 20 °C and ${humidity} %`,
    unit: 'weeks',
    expected,
    got: weeksToFirstGrowth(20, humidity, PINE),
    tolerance: { relative: 0.005 },
    because: 'worked out to three figures',
  });
});

test.each([
  [85, 2.616],
  [90, 3.995],
  [95, 5.123],
  [97, 5.504],
  [100, 6],
])('highest index at 20 °C and %s %%', (humidity, expected) => {
  compare({
    ...row,
    what: `highest index of pine, 20 °C and ${humidity} %`,
    unit: '-',
    ...(humidity === 100
      ? ({ mark: 'published', source: `${MODEL}: 6 is the top of the scale` } as const)
      : {}),
    expected,
    got: mouldIndexLimit(20, humidity, PINE),
    tolerance: { absolute: 0.001 },
    because: 'worked out to three places',
  });
});

describe.each([
  [20, 90, 1, 29.5],
  [20, 90, 2, 41.9],
  [20, 90, 3, 54.8],
  [20, 97, 1, 10.4],
  [20, 97, 3, 20.9],
  [20, 97, 5, 32.3],
  [10, 95, 1, 22.3],
])('pine at a steady %s °C and %s %%', (temperature, humidity, index, days) => {
  test(`reaches index ${index}`, () => {
    compare({
      ...row,
      what: `days to index ${index} on pine, ${temperature} °C and ${humidity} %`,
      unit: 'd',
      source: `${MODEL}, integrated apart in hourly steps`,
      expected: days,
      got: hoursTo(index, temperature, humidity, PINE) / 24,
      tolerance: { absolute: 0.05 + 1 / 24 },
      because: 'worked out to a tenth of a day, in steps of an hour',
    });
  });
});

test('never a trace below the critical humidity', () => {
  let index = 0;
  for (let hour = 0; hour < 20_000; hour++) index = mouldStep(index, hour, 20, 79.9, PINE, 1);
  expect(index).toBe(0);
});

test('a dry day takes 0.008 from the index, every later one 0.016', () => {
  let index = 2;
  let dry = 0;
  const days: number[] = [];
  for (let hour = 1; hour <= 72; hour++) {
    index = mouldStep(index, dry, 20, 50, PINE, 1);
    dry = dryHoursAfter(dry, 20, 50, PINE, 1);
    if (hour % 24 === 0) days.push(index);
  }
  const expected = [1.992, 1.976, 1.96];
  days.forEach((got, k) => {
    compare({
      ...row,
      what: `index after ${k + 1} dry days from 2`,
      unit: '-',
      mark: 'published arithmetic',
      expected: expected[k]!,
      got,
      tolerance: { absolute: 1e-9 },
      because: 'the published rates, 0.032/d for 6 h, none to 24 h, 0.016/d after',
    });
  });
});

test('decline does not depend on how it is cut into steps', () => {
  const whole = mouldStep(3, 2, 20, 50, PINE, 40);
  let index = 3;
  let dry = 2;
  for (let k = 0; k < 240; k++) {
    index = mouldStep(index, dry, 20, 50, PINE, 1 / 6);
    dry = dryHoursAfter(dry, 20, 50, PINE, 1 / 6);
  }
  expect(index).toBeCloseTo(whole, 9);
  expect(dry).toBeCloseTo(42, 9);
});

test('a damp hour ends the dry spell, so the next one bites again', () => {
  expect(dryHoursAfter(30, 20, 95, PINE, 1)).toBe(0);
  expect(mouldStep(2, 0, 20, 50, PINE, 6)).toBeCloseTo(2 - 0.008, 12);
  expect(mouldStep(2, 6, 20, 50, PINE, 18)).toBe(2);
  expect(mouldStep(0.001, 0, 20, 50, PINE, 6)).toBe(0);
});

test('materials that keep their mould longer lose less', () => {
  const slow: MouldKind = { ...PINE, decline: 0.1 };
  expect(2 - mouldStep(2, 0, 20, 50, slow, 24)).toBeCloseTo(0.0008, 12);
});

test('the classes order as their names say, and each stops at its own limit', () => {
  const classes = [
    MOULD_CLASSES['very sensitive'],
    MOULD_CLASSES.sensitive,
    MOULD_CLASSES['medium resistant'],
    MOULD_CLASSES.resistant,
  ];
  const ends = classes.map((kind) => indexAfter(365 * 24, 22, 97, kind));
  for (let k = 0; k < 3; k++) expect(ends[k]!).toBeGreaterThan(ends[k + 1]!);
  classes.forEach((kind, k) => {
    expect(ends[k]!).toBeLessThanOrEqual(mouldIndexLimit(22, 97, kind) + 0.01);
  });
  expect(classes.map((kind) => mouldIndexLimit(25, 100, kind))).toEqual([6, 5.3, 3.5, 2]);
});

test('damper grows faster; nothing grows in frost or above 50 °C; over 100 % is 100 %', () => {
  for (let rh = 81; rh < 99; rh++) {
    expect(mouldGrowth(0, 20, rh + 1, PINE)).toBeGreaterThan(mouldGrowth(0, 20, rh, PINE));
  }
  expect(mouldStep(0, 0, -1, 100, PINE, 1)).toBe(0);
  expect(mouldStep(0, 0, 50, 100, PINE, 1)).toBe(0);
  expect(mouldStep(0, 0, 20, 120, PINE, 1)).toBe(mouldStep(0, 0, 20, 100, PINE, 1));
});

test('where it grows and where the dry hours run: at least the critical humidity, between 0 and 50 °C', () => {
  const dryAfter = (t: number, rh: number, kind = PINE): number => dryHoursAfter(5, t, rh, kind, 1);
  expect(dryAfter(25, 80)).toBe(0);
  expect(dryAfter(25, 79.99)).toBe(6);
  expect(dryAfter(22.8, 80.1)).toBe(0); // 80 above 20 °C, though the curve rises to 80.2 there
  expect(dryAfter(5, 88.1)).toBe(0);
  expect(dryAfter(5, 85)).toBe(6); // more than 80, less than the 88 it takes at 5 °C
  expect(dryAfter(25, 84.9, MOULD_CLASSES.resistant)).toBe(6);
  for (const frost of [0, -1, -10]) expect(dryAfter(frost, 120)).toBe(6);
  expect(dryAfter(50, 100)).toBe(6);
  expect(dryAfter(49.9, 100)).toBe(0);
});

test('growth goes by the length of a step', () => {
  const day = mouldGrowth(0, 20, 95, PINE);
  expect(mouldStep(0, 0, 20, 95, PINE, 6)).toBeCloseTo(day / 4, 12);
  expect(mouldStep(0.5, 0, 20, 95, PINE, 1 / 6) - 0.5).toBeCloseTo(
    mouldGrowth(0.5, 20, 95, PINE) / 144,
    12,
  );
});

test('above what a humidity allows an index stays where it is', () => {
  expect(mouldStep(5, 0, 20, 85, PINE, 24)).toBe(5);
  expect(mouldGrowth(2.7, 20, 85, PINE)).toBe(0); // highest 2.616
});

test.each([
  // Weeks from 0 to 1 as above; k1 of the class before index 1 and after; the highest index at 100 %
  // is a + b - c, and k2 = 1 - exp(2.3 (index - highest)).
  ['sensitive', 0.5, 0.578, 5.3],
  ['sensitive', 1, 0.386, 5.3],
  ['resistant', 0.9, 0.033, 2],
  ['resistant', 1.5, 0.014, 2],
  ['medium resistant', 3, 0.097, 3.5],
] as const)('a %s surface at index %d grows at %d/7 a week, slowed near %d', (...given) => {
  const [kind, index, k1, highest] = given;
  const exact = (k1 * (1 - Math.exp(2.3 * (index - highest)))) / (7 * 0.9728);
  const got = mouldGrowth(index, 20, 100, MOULD_CLASSES[kind]);
  expect(Math.abs(got / exact - 1)).toBeLessThan(0.005); // weeks to three figures
});

test('past index 1 spruce goes by its own time to visible growth', () => {
  // 20 °C, 97 %: 1.48 weeks to index 1 times e^0.14, and 2.983 weeks to index 3 times e^0.06.
  const first = 1.48 * Math.exp(0.14);
  const seen = 2.983 * Math.exp(0.06);
  const slowing = 1 - Math.exp(2.3 * (2 - 5.504));
  const exact = ((2 / (seen / first - 1)) * slowing) / (7 * first);
  const got = mouldGrowth(2, 20, 97, { ...PINE, species: 1 });
  expect(Math.abs(got / exact - 1)).toBeLessThan(0.015); // three figures, and their difference
});

test('drying in a kiln helps mould and spruce is slower', () => {
  const rate = (kind: Partial<MouldKind>): number => mouldGrowth(0, 20, 95, { ...PINE, ...kind });
  expect(rate({ species: 1 })).toBeLessThan(rate({}));
  expect(rate({ surface: 1 })).toBeGreaterThan(rate({}));
});

function hoursTo(target: number, temperature: number, humidity: number, kind: MouldKind): number {
  let index = 0;
  let hours = 0;
  while (index < target && hours < 1e5) {
    index = mouldStep(index, 0, temperature, humidity, kind, 1);
    hours++;
  }
  return hours;
}

function indexAfter(hours: number, temperature: number, humidity: number, kind: MouldKind): number {
  let index = 0;
  for (let k = 0; k < hours; k++) index = mouldStep(index, 0, temperature, humidity, kind, 1);
  return index;
}
