import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { packPictures, unpackPictures } from '../../../src/report/page/packed-pictures.ts';
import type { PictureData } from '../../../src/report/page/picture-data.ts';
import { someHours } from './picture-sample.ts';

/** As a page holds it: through JSON. */
const again = (data: PictureData): PictureData =>
  unpackPictures(JSON.parse(JSON.stringify(packPictures(data))));

/** Expect every value within half a step, and what a Float32 rounds off. */
function expectNear(got: Float32Array, was: Float32Array, step: number): void {
  expect(got.length).toBe(was.length);
  got.forEach((value, k) => {
    const off = Math.abs(value - was[k]!);
    expect(off, `${value} for ${was[k]}`).toBeLessThanOrEqual(
      step / 2 + 2 ** -23 * Math.abs(was[k]!),
    );
  });
}

function expectSame(got: PictureData, was: PictureData): void {
  expect(got).toMatchObject({
    ...{ start: was.start, hours: was.hours, clock: was.clock, weeks: was.weeks, mild: was.mild },
    rooms: was.rooms,
    plans: was.plans.map(({ name, heat, water }) => ({ name, heat, water })),
  });
  was.plans.forEach(({ rooms }, plan) => {
    rooms.forEach((room, k) => {
      const own = got.plans[plan]!.rooms[k]!;
      expect(own.coldSpotHours).toBe(room.coldSpotHours);
      expectNear(own.temperature, room.temperature, 0.05);
      expectNear(own.humidity, room.humidity, 0.25);
      expectNear(own.coldSpot, room.coldSpot, 0.25);
      expectNear(own.mouldIndex, room.mouldIndex, 0.005);
    });
  });
}

const hours = (of: fc.Arbitrary<number>) => fc.array(of, { minLength: 49, maxLength: 49 });
const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe('what was packed comes back', () => {
  test('edges for mild weather with the hours that are mild', () => {
    for (const mild of [
      [0, 0, 1, 1, 0],
      [1, 1, 0, 1, 1],
      [1, 1, 1, 1, 1],
    ]) {
      const data = someHours({ temperature: [20, 20, 20, 20, 20] });
      const temperature = { low: 16, high: 20, mild: { high: 26 } };
      const rooms = data.rooms.map((room) => ({ ...room, temperature }));
      expectSame(again({ ...data, rooms, mild: Uint8Array.from(mild) }), {
        ...{ ...data, rooms, mild: Uint8Array.from(mild) },
      });
    }
  });

  test('within half a step, hours not a whole number of days, jumps as large as they come', () => {
    fc.assert(
      fc.property(
        hours(number(-819, 819)),
        hours(number(-50, 4095)),
        fc.array(number(0, 6), { minLength: 3, maxLength: 3 }),
        fc.constantFrom(['den'], ['den', 'a "b" <c>', '']),
        fc.constantFrom(['now'], ['now', 'dry', 'x']),
        (temperature, humidity, mouldIndex, rooms, plans) => {
          const data = someHours({ temperature, humidity, mouldIndex, rooms, plans });
          expectSame(again(data), data);
        },
      ),
      { numRuns: 50 },
    );
  });

  test('from the coldest to the hottest it holds and back, every hour', () => {
    const temperature = Array.from({ length: 48 }, (_, h) => (h % 2 === 0 ? -819.15 : 819.15));
    const data = someHours({ temperature });
    expectSame(again(data), data);
  });

  test.each([0, 1, 23, 24, 25])('%s hours of one room under one plan', (length) => {
    const data = someHours({ temperature: Array.from({ length }, (_, h) => h / 3) });
    expectSame(again(data), data);
  });

  test('edges that are not there, which JSON cannot say', () => {
    const [lone] = someHours({}).rooms;
    const open = {
      ...lone!,
      temperature: { low: 16, high: Number.POSITIVE_INFINITY },
      humidity: { low: Number.NEGATIVE_INFINITY, high: 65 },
    };
    expect(again({ ...someHours({}), rooms: [open] }).rooms).toEqual([open]);
  });

  test('rooms and plans each with their own hours, not those of a neighbour', () => {
    const warm = someHours({ rooms: ['a', 'b'], plans: ['x', 'y'], temperature: [20, 21] });
    const cold = someHours({ temperature: [5, 6] }).plans[0]!.rooms[0]!;
    const data = {
      ...warm,
      plans: [warm.plans[0]!, { ...warm.plans[1]!, rooms: [cold, warm.plans[1]!.rooms[1]!] }],
    };
    expectSame(again(data), data);
  });
});

test('the same hours give the same text, and unpacked ones too', () => {
  const data = someHours({ temperature: [19.999, 20.001, 20.5], humidity: [101.23, 55.5, 54.44] });
  const text = JSON.stringify(packPictures(data));
  expect(JSON.stringify(packPictures(data))).toBe(text);
  expect(JSON.stringify(packPictures(again(data)))).toBe(text);
});

test('a year of steady air takes next to nothing', () => {
  const data = someHours({ temperature: Array.from({ length: 8760 }, () => 20) });
  expect(packPictures(data).series.length).toBeLessThan(2000);
});

test.each([
  ['temperature', Number.NaN, '0.05', 'NaN'],
  ['temperature', 820, '0.05', '16400'],
  ['humidity', Number.NEGATIVE_INFINITY, '0.25', '-Infinity'],
  ['mouldIndex', 82, '0.005', '16400'],
] as const)('refuses %s of %s instead of packing another value', (series, value, step, got) => {
  expect(() => packPictures(someHours({ [series]: [value] }))).toThrow(
    expect.objectContaining({
      name: 'OutOfRange',
      message: `packPictures: a value in steps of ${step} must be between -16383 and 16383, got ${got}`,
    }),
  );
});
