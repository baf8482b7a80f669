import { describe, expect, test } from 'vitest';
import { lineLength } from '../../../src/report/tables/hour-groups.ts';
import { barRuler, rangeBar } from '../../../src/report/tables/range-bar.ts';
import { roomFinding } from '../../../src/report/tables/room-finding.ts';
import { type RoomDays, roomLines, stretchOf } from '../../../src/report/tables/room-lines.ts';
import { roomPicture } from '../../../src/report/tables/room-picture.ts';
import { type LocalClock, UTC_CLOCK } from '../../../src/units/local-clock.ts';

/** Monday 9 January 2023, midnight UTC. [s UTC] */
const MONDAY = Date.UTC(2023, 0, 9) / 1000;
const HALF_PAST: LocalClock = { from: [0], offset: [5.5 * 3600] };

/** Hours of a room made by hand; what is left out is fine. */
function days(
  hours: number,
  at: (h: number) => { warmth?: number; damp?: number; spot?: number; in?: number },
  clock: LocalClock = UTC_CLOCK,
): RoomDays {
  const series = (of: (h: number) => number) =>
    Float32Array.from({ length: hours }, (_, h) => of(h));
  return {
    room: 'den',
    bands: { temperature: { low: 18, high: 26 }, humidity: { low: 40, high: 60 } },
    start: MONDAY,
    clock,
    series: {
      operativeTemperature: series((h) => at(h).warmth ?? 20),
      relativeHumidity: series((h) => at(h).damp ?? 50),
      coldSpotHumidity: series((h) => at(h).spot ?? 70),
      occupied: series((h) => at(h).in ?? 0),
    },
  };
}

const picture = (of: RoomDays, width = 80, chosen = ''): string =>
  roomPicture({ ...of, scenario: 'Hand-made flat', plan: 'now', chosen }, width);

describe('a bar', () => {
  const scale = { low: 10, high: 30, length: 21, band: { low: 18, high: 26 } };

  test('goes from least to most, with the mean and the edges of the band', () => {
    expect(rangeBar({ least: 14, mean: 17, most: 21 }, scale)).toBe('....===o|===....|....');
    expect(rangeBar({ least: 10, mean: 10, most: 10 }, scale)).toBe('o.......|.......|....');
    expect(rangeBar({ least: 30, mean: 30, most: 30 }, scale)).toBe('........|.......|...o');
  });

  test('has figures over its ends and edges, where they find room', () => {
    expect(barRuler(scale)).toBe('10     18      26  30');
    expect(barRuler({ ...scale, band: { low: 10, high: 29 } })).toBe('10                29 ');
    expect(barRuler({ ...scale, band: { low: -1 / 0, high: 1 / 0 } })).toBe(
      '10                 30',
    );
  });
});

test('in mild weather another upper edge may hold, in lines, sentence and heading', () => {
  const made = days(24, () => ({ warmth: 22 }));
  const bands = { ...made.bands, temperature: { low: 16, high: 20, mild: { high: 26 } } };
  const told = (mildFrom: number) => {
    const mild = Uint8Array.from({ length: 24 }, (_, h) => (h >= mildFrom ? 1 : 0));
    const of = { ...made, bands, mild };
    return [roomLines(of).at(-1)!.warm, roomFinding(of).split(',')[1]];
  };
  expect(told(24)).toEqual([24, ' den is above 20 °C for 24 h (0.0 h with somebody in)']);
  expect(told(6)[0]).toBe(6);
  expect(told(6)[1]).toContain('above 20 °C (26 °C when mild) for 6 h');
  expect(told(0)).toEqual([0, ' den stays within both bands']);
  expect(picture({ ...made, bands })).toContain('Bands: 16 to 20 °C (26 °C in mild weather)');
});

describe('lines', () => {
  test('up to 7 days by 3 hours, up to 40 by day, longer ones by week', () => {
    expect([7, 8, 40, 41].map((n) => lineLength(stretchOf(days(24 * n, () => ({})))))).toEqual([
      ...['3 hours', 'day', 'day', 'week'],
    ]);
    expect(roomLines(days(24 * 41, () => ({}))).map(({ label }) => label)).toEqual([
      ...['01-09 to 01-15', '01-16 to 01-22', '01-23 to 01-29', '01-30 to 02-05'],
      ...['02-06 to 02-12', '02-13 to 02-18', 'all'],
    ]);
    expect(roomLines(days(24 * 8, () => ({}))).map(({ label }) => label)).toEqual([
      ...['Mon 01-09', 'Tue 01-10', 'Wed 01-11', 'Thu 01-12', 'Fri 01-13', 'Sat 01-14'],
      ...['Sun 01-15', 'Mon 01-16', 'all'],
    ]);
  });

  test('hours outside, hours with somebody in, means', () => {
    const [first, second, ...rest] = roomLines(
      days(24, (h) => ({ warmth: 17 + h, damp: 58 + h, spot: 70 + h, in: h === 1 ? 0.5 : 0 })),
    );
    expect(first).toEqual({
      label: 'Mon 01-09 00:00',
      temperature: { least: 17, mean: 18, most: 19 },
      humidity: { least: 58, mean: 59, most: 60 },
      ...{ cold: 1, warm: 0, damp: 0, dry: 0, occupied: 0.5, coldSpot: 71 },
    });
    expect(second).toMatchObject({ label: 'Mon 01-09 03:00', cold: 0, damp: 3, occupied: 0 });
    expect(rest.at(-1)).toMatchObject({
      label: 'all',
      cold: 1,
      warm: 14,
      damp: 21,
      coldSpot: 81.5,
    });
  });

  test('the wall clock decides, also where it is off the whole hour', () => {
    const labels = roomLines(days(6, () => ({}), HALF_PAST)).map(({ label }) => label);
    expect(labels).toEqual(['Mon 01-09 03:00', 'Mon 01-09 06:00', 'Mon 01-09 09:00', 'all']);
  });

  test('a day on which the clock goes back has an hour more', () => {
    const back: LocalClock = { from: [0, MONDAY + 3600], offset: [3600, 0] };
    const lines = roomLines(days(240, () => ({ in: 1 }), back));
    expect(lines[0]).toMatchObject({ label: 'Mon 01-09', occupied: 24 });
    const ahead: LocalClock = { from: [0, MONDAY + 26 * 3600], offset: [0, -3600] };
    expect(roomLines(days(240, () => ({ in: 1 }), ahead))[1]).toMatchObject({ occupied: 25 });
  });
});

describe('the finding', () => {
  test('says what is outside, how much of it was noticed, and the coldest hour', () => {
    const cold = (h: number) =>
      h < 6 ? { warmth: 15 + (h === 3 ? -1 : 0), in: h < 2 ? 0.5 : 0 } : {};
    expect(roomFinding(days(48, cold))).toBe(
      'Of these 48 hours, den is below 18 °C for 6 h (1.0 h with somebody in), and its cold spot is ' +
        'never above 80 %; coldest with 14.0 °C on 9 January at 03:00.',
    );
  });

  test('names all edges that were left, and the warmest hour where it was too warm longer', () => {
    const wild = (h: number) => ({
      ...{ warmth: h < 1 ? 17 : h < 12 ? 27 + h : 20, damp: h < 2 ? 70 : h < 5 ? 30 : 50 },
      ...{ spot: h < 2 ? 90 : 50, in: 1 },
    });
    expect(roomFinding(days(24, wild))).toBe(
      'Of these 24 hours, den is below 18 °C for 1 h (1.0 h with somebody in), above 26 °C for 11 h ' +
        '(11.0 h with somebody in), above 60 % for 2 h (2.0 h with somebody in) and below 40 % for ' +
        '3 h (3.0 h with somebody in), and its cold spot is above 80 % for 2 h; warmest with ' +
        '38.0 °C on 9 January at 11:00.',
    );
  });

  test('says so where nothing is wrong', () => {
    expect(roomFinding(days(24, () => ({})))).toBe(
      'Of these 24 hours, den stays within both bands, and its cold spot is never above 80 %; ' +
        'coldest with 20.0 °C on 9 January at 00:00.',
    );
  });
});

test('a picture', () => {
  const cool = days(24 * 8, (h) => ({ warmth: 17 + (h % 24) / 6, damp: 45 + (h % 24), in: 0.5 }));
  expect(picture(cool)).toMatchInlineSnapshot(`
    "Hand-made flat: now
    den, 9 January 2023 to 16 January 2023 (8 days)
    Bands: 18 to 26 °C operative, 40 to 60 % relative humidity.
    A line a day, of the hourly means: = from least to most, o mean, | edge of the
    band.

    Operative temperature [°C]
                                                              too   too
                                                       mean  cold  warm  somebody
               16   18                       26    28  [°C]   [h]   [h]    in [h]
    Mon 01-09  ...===|==o======...............|......  18.9     6     0      12.0
    Tue 01-10  ...===|==o======...............|......  18.9     6     0      12.0
    Wed 01-11  ...===|==o======...............|......  18.9     6     0      12.0
    Thu 01-12  ...===|==o======...............|......  18.9     6     0      12.0
    Fri 01-13  ...===|==o======...............|......  18.9     6     0      12.0
    Sat 01-14  ...===|==o======...............|......  18.9     6     0      12.0
    Sun 01-15  ...===|==o======...............|......  18.9     6     0      12.0
    Mon 01-16  ...===|==o======...............|......  18.9     6     0      12.0
    all        ...===|==o======...............|......  18.9    48     0      96.0

    Relative humidity [%]
                                                              too  too
                                                       mean  damp  dry  cold spot
               30    40             60             80   [%]   [h]  [h]   mean [%]
    Mon 01-09  .......|...=========o=|======.........    57     8    0         70
    Tue 01-10  .......|...=========o=|======.........    57     8    0         70
    Wed 01-11  .......|...=========o=|======.........    57     8    0         70
    Thu 01-12  .......|...=========o=|======.........    57     8    0         70
    Fri 01-13  .......|...=========o=|======.........    57     8    0         70
    Sat 01-14  .......|...=========o=|======.........    57     8    0         70
    Sun 01-15  .......|...=========o=|======.........    57     8    0         70
    Mon 01-16  .......|...=========o=|======.........    57     8    0         70
    all        .......|...=========o=|======.........    57    64    0         70

    Of these 192 hours, den is below 18 °C for 48 h (24.0 h with somebody in) and
    above 60 % for 64 h (32.0 h with somebody in), and its cold spot is never above
    80 %; coldest with 17.0 °C on 9 January at 00:00."
  `);
});

test('one day, and why these days', () => {
  const heading = (n: number, chosen: string) =>
    picture(
      days(24 * n, () => ({})),
      80,
      chosen,
    ).split('\n')[1];
  expect(heading(1, '')).toBe('den, 9 January 2023 (1 day)');
  expect(heading(7, 'the coldest week')).toBe(
    'den, 9 January 2023 to 15 January 2023 (7 days, the coldest week)',
  );
});

test.each([80, 100, 200])('keeps to %s characters, in plain ones but for the degree', (width) => {
  for (const n of [7, 40, 365]) {
    const text = picture(
      days(24 * n, (h) => ({ warmth: -20 + (h % 60), damp: h % 115, spot: h % 130, in: 1 })),
      width,
    );
    expect(Math.max(...text.split('\n').map((line) => line.length))).toBeLessThanOrEqual(width);
    expect(text).toMatch(/^[\n -~°]*$/);
    const bars = text.split('\n').flatMap((line) => line.match(/[.=o|]{10,}/) ?? []);
    expect(new Set(bars.map((bar) => bar.length)).size).toBe(1);
  }
});
