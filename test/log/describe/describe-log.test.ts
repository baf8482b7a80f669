import { describe, expect, test } from 'vitest';
import { vapourGrams } from '../../../src/log/describe/air-change.ts';
import { describeLog } from '../../../src/log/describe/describe-log.ts';
import type { LoggedSeries } from '../../../src/log/log.ts';
import { vapourPressureFromRelativeHumidity } from '../../../src/physics/moist-air/relative-humidity.ts';
import { vapourDensity } from '../../../src/physics/moist-air/vapour-density.ts';

// The excess over outdoors of a well-mixed room without a source is C0 exp(-n t): the closed form
// against which rates n are judged.
describe('air change from decays', () => {
  const start = Date.UTC(2025, 0, 6) / 1000;
  /** Six nights that begin at 1800 ppm over outdoors and clear at a rate; noise as asked. */
  const nights = (rate: number, noise: number): [number, number][] =>
    Array.from({ length: 6 * 288 }, (_, k) => {
      const hours = (k % 288) / 12;
      const wobble = noise * Math.sin(k * 12.9898) * Math.cos(k * 78.233);
      return [start + k * 300, 420 + 1800 * Math.exp(-rate * hours) + wobble];
    });

  test.each([0.25, 0.5, 1, 2])('%d an hour is found again without noise', (rate) => {
    const [found] = describe1([made('co2', 'bedroom', nights(rate, 0))]).air_change;
    expect(found).toMatchObject({ room: 'bedroom', by: 'co2', decays: 6 });
    // A mean over a step of five minutes keeps the rate; 1 % is for the level outdoors alone.
    expect(found!.per_hour / rate).toBeCloseTo(1, 2);
  });

  test('noise of a usual sensor moves it by less than a tenth', () => {
    const [found] = describe1([made('co2', 'bedroom', nights(0.6, 15))]).air_change;
    expect(found!.decays).toBeGreaterThanOrEqual(3);
    expect(Math.abs(found!.per_hour / 0.6 - 1)).toBeLessThan(0.1);
  });

  test('a straight fall is no decay, nor one that a window quickens half way', () => {
    const straight = nights(1, 0).map(([t], k): [number, number] => [
      t,
      2200 - ((k % 288) % 36) * 50,
    ]);
    const aired = nights(1, 0).map(([t], k): [number, number] => {
      const h = (k % 288) / 12;
      const excess = h < 1 ? 1800 * Math.exp(-0.2 * h) : 1800 * Math.exp(-0.2 - 6 * (h - 1));
      return [t, 420 + excess];
    });
    expect(describe1([made('co2', 'a', straight)]).air_change).toEqual([]);
    expect(describe1([made('co2', 'a', aired)]).air_change).toEqual([]);
  });

  test('the words say what was assumed', () => {
    const words = describe1([made('co2', 'bedroom', nights(0.5, 0))]).words.at(-1);
    expect(words).toMatch(
      /^bedroom: CO2 falls by 0\.50 an hour \(0\.50 to 0\.50 in the middle half of 6 decays\), over an assumed 42\d ppm outdoors\. That counts air from outdoors and from other rooms\.$/,
    );
  });

  test('moisture after a shower', () => {
    // 8 g/m3 before, 5 g/m3 more at 07:00 that clear at 1.5 an hour; 20 °C throughout.
    const full = vapourDensity(vapourPressureFromRelativeHumidity(20, 100), 20);
    const humidity = Array.from({ length: 5 * 288 }, (_, k): [number, number] => {
      const hours = (k % 288) / 12 - 7;
      const more = hours < 0 ? 0 : 5 * Math.exp(-1.5 * hours);
      return [start + k * 300, (100 * (8 + more)) / full];
    });
    const warm = humidity.map(([t]): [number, number] => [t, 20]);
    const series = [made('relative humidity', 'bath', humidity), made('temperature', 'bath', warm)];
    const [found] = describe1(series).air_change;
    expect(found).toMatchObject({ room: 'bath', by: 'moisture', decays: 5 });
    expect(found!.per_hour).toBeCloseTo(1.5, 1);
  });
});

test('water in air of 20 °C and 50 % is 8.64 g/m3', () => {
  // 1169.4 Pa over 461.5 J/(kg K) times 293.15 K
  expect(vapourGrams(20, 50)).toBeCloseTo(8.64, 2);
  expect(vapourGrams(Number.NaN, 50)).toBeNaN();
});

describe('what readings say against themselves', () => {
  const start = Date.UTC(2025, 0, 6) / 1000;
  const days = (count: number, value: (hour: number) => number): [number, number][] =>
    Array.from({ length: count * 24 }, (_, h) => [start + h * 3600, value(h)]);
  const wave = (h: number) => 20 + Math.sin((h * Math.PI) / 12) + 0.1 * Math.sin(h * 1.7);

  test('a good month has nothing against it', () => {
    expect(describe1([made('temperature', 'a', days(30, wave))]).warnings).toEqual([]);
  });

  test('less than three weeks', () => {
    const [found] = describe1([made('temperature', 'a', days(10, wave))]).warnings;
    expect(found).toEqual({
      id: 'short',
      text: 'The log spans 10 days. Less than three weeks tell little of a home: habits and weather hardly vary.',
    });
  });

  test('a sensor that sticks', () => {
    const stuck = days(30, (h) => (h >= 100 && h < 150 ? 19.5 : wave(h)));
    expect(describe1([made('temperature', 'a', stuck)]).warnings).toEqual([
      {
        id: 'stuck',
        text: 'Temperature of a stood at 19.5 for 2 days from 2025-01-10 04:00: a sensor that sticks?',
      },
    ]);
  });

  test('a sensor of humidity that stands where air is full of water is wet or at its end', () => {
    const held = (quantity: 'relative humidity' | 'temperature', level: number) =>
      describe1([
        made(
          quantity,
          'a',
          days(30, (h) => (h >= 100 && h < 150 ? level : wave(h) + 40)),
        ),
      ]).warnings.find(({ id }) => id === 'stuck')?.text;
    expect(held('relative humidity', 99)).toMatch(/ stood at 99 .*: is it wet, or at its end\?$/);
    expect(held('relative humidity', 98.9)).toMatch(/: a sensor that sticks\?$/);
    expect(held('temperature', 99)).toMatch(/: a sensor that sticks\?$/);
  });

  test('columns of temperature and humidity that are swapped', () => {
    const humid = (h: number) => 52 + 6 * Math.sin(h / 30) + 2 * Math.sin(h * 1.7);
    const swapped = (warm: (h: number) => number, damp: (h: number) => number) =>
      describe1([
        made('temperature', 'a', days(30, warm)),
        made('relative humidity', 'a', days(30, damp)),
      ]).warnings.filter(({ id }) => id === 'swapped');
    expect(swapped(humid, wave)).toEqual([
      {
        id: 'swapped',
        text: expect.stringMatching(
          /^In a humidity stays near 20 % while temperature moves by some [78]\.\d °C: are their columns swapped\?$/,
        ),
      },
    ]);
    // Taken for Fahrenheit it moves less, and is seen all the same.
    expect(swapped((h) => (humid(h) - 32) / 1.8, wave)).toHaveLength(1);
    expect(swapped(wave, humid)).toEqual([]);
    // A conservatory in which humidity stays at what no room is warm, and a sensor that reads next to nothing.
    const sunny = (h: number) => 20 + 8 * Math.sin(h / 4);
    const near = (level: number) => (h: number) => level + 0.3 * Math.sin(h / 40);
    for (const level of [8, 31, 40]) expect(swapped(sunny, near(level))).toEqual([]);
    for (const level of [15, 27]) expect(swapped(sunny, near(level))).toHaveLength(1);
    // Half as far again, whatever the shape.
    const around = (middle: number, reach: number) => (h: number) =>
      middle + reach * Math.sin(h / 4);
    expect(swapped(around(50, 6.1), around(21, 4))).toHaveLength(1);
    expect(swapped(around(50, 5.9), around(21, 4))).toEqual([]);
    // A room that hardly moves either.
    expect(swapped((h) => 20 + 1.2 * Math.sin(h / 4), near(22))).toEqual([]);
    // Dry winter air in a room that is heated in the evening only.
    expect(
      swapped(
        (h) => 15 + 4 * Math.sin(h / 4),
        (h) => 22 + 5 * Math.sin(h / 40),
      ),
    ).toEqual([]);
  });

  test('gaps', () => {
    const gap = days(30, wave).filter((_, h) => h < 200 || h > 300);
    expect(describe1([made('temperature', 'a', gap)]).warnings).toEqual([
      {
        id: 'gaps',
        text: 'Temperature of a is missing for 14 % of its span; the longest gap is 4.3 days.',
      },
    ]);
    // From a twentieth on: 36 of 720 hours are, and a little more.
    const without = (hours: number) =>
      describe1([
        made(
          'temperature',
          'a',
          days(30, wave).filter((_, h) => h < 200 || h >= 200 + hours),
        ),
      ]).warnings.map(({ id }) => id);
    expect(without(39)).toEqual(['gaps']);
    expect(without(33)).toEqual([]);
  });

  test('spells of a sensor that reports changes are no readings that are missing', () => {
    // Five readings a quarter of an hour to an hour and a quarter apart, then six hours of nothing.
    const values = days(40, wave);
    const one = made('temperature', 'a', values);
    let at = one.times[0]!;
    const times = one.times.map((_, k) => {
      const now = at;
      at += k % 6 === 5 ? 6 * 3600 : 900 * ((k % 6) + 1);
      return now;
    });
    const [warning] = describe1([{ ...one, times }]).warnings;
    // 6 of every 6 + 3.75 hours
    expect(warning!.id).toBe('gaps');
    expect(warning!.text).toMatch(
      /^Temperature of a is reported on a change only: for 6[12] % of its span there are spells of more than 2.3 hours without a reading, the longest 6 hours. Up to 8 hours they count as a steady room, /,
    );
  });

  test('the mean of what is reported on a change counts every moment alike', () => {
    // Open for an hour of each day: 1/24 of the time, and half of the readings.
    const one = made(
      'window',
      'a',
      days(20, (h) => h % 2),
    );
    const times = one.times.map(
      (_, k) => one.times[0]! + 43_200 * (k - (k % 2)) + 3600 * (k % 2) * 23,
    );
    const [fact] = describe1([
      { ...one, reading: 'state', times, holdsUntil: times.at(-1)! + 3600 },
    ]).series;
    expect(fact!.mean).toBeCloseTo(1 / 24, 9);
  });

  test('a contact, a motion sensor or a plug that may have fallen silent', () => {
    const at = (day: number) => Date.UTC(2025, 0, 6) / 1000 + day * 86_400;
    /** Told on some days and then for so many days no more. */
    const said = (quantity: string, last: number, silent: number) => {
      const told = [0, 1, 2].map((day): [number, number] => [at(day), day === 2 ? last : 0]);
      const one = made(quantity, 'a', told);
      const { warnings } = describe1([
        { ...one, reading: 'state', holdsUntil: at(2 + silent) },
        made('temperature', 'a', days(30, wave)),
      ]);
      return warnings.map(({ text }) => text);
    };
    expect(said('window', 1, 5)).toEqual([
      'Window of a told nothing for 5 days from 2025-01-08 00:00: it counts as open all that time. Was it so, or was the sensor silent?',
    ]);
    expect(said('device power', 1500, 4)[0]).toContain('it counts as 1500 W all that time');
    expect(said('device power', 0, 10)).toEqual([]);
    expect(said('device power', 0.6, 10)).toEqual([]);
    expect(said('device power', 0, 20)[0]).toContain('it counts as 0 W all that time');
    expect(said('presence', 1, 3.5)[0]).toContain('it counts as somebody there all that time');
    expect(said('presence', 1, 2.5)).toEqual([]);
    const open = [0, 4, 9, 9.5].map((day, k): [number, number] => [at(day), k < 2 ? 1 : 0]);
    const { warnings } = describe1([{ ...made('window', 'a', open), reading: 'state' }]);
    expect(warnings.find(({ id }) => id === 'silent')!.text).toContain(
      'for 5 days from 2025-01-10',
    );
    // Nobody opens a spare room's window for ten days in winter; after a fortnight it is not known any more.
    expect(said('window', 0, 10)).toEqual([]);
    expect(said('window', 0, 20)).toEqual([
      'Window of a told nothing for 20 days from 2025-01-08 00:00: what it told last, shut, counts for 14 days at most, so all of that is unknown. Was it so, or was the sensor silent?',
    ]);
  });

  test('CO2 that in weeks never comes near the level outdoors', () => {
    // A swing of 600 ppm from 440 or, where the sensor reads 180 too much, from 620; 3/100 of a swing
    // of a cosine are within a hundred of its readings.
    const swing = (low: number) => (h: number) => low + 300 * (1 - Math.cos(h / 4));
    const said = (low: number, count = 30) =>
      describe1([made('co2', 'bed', days(count, swing(low)))]).warnings.map(({ id }) => id);
    expect(said(620)).toEqual(['above-outdoors']);
    expect(said(440)).toEqual([]);
    expect(said(620, 10)).toEqual(['short']);
  });

  test('a sensor that was moved, though it reports changes only', () => {
    // Every other reading three hours later: most of each day lies in spells of more than two hours.
    const seldom = (room: string, step: number) => {
      const one = made(
        'temperature',
        room,
        days(60, (h) => wave(h) + (h >= 720 ? step : 0)).filter(
          (_, k) => k % 4 === 0 || k % 4 === 3,
        ),
      );
      return one;
    };
    const found = describe1([seldom('hall', 3), seldom('bath', 0), seldom('attic', 0)]).warnings;
    expect(found.filter(({ id }) => id === 'moved')).toHaveLength(1);
  });

  test('a sensor that was moved', () => {
    const one = made(
      'temperature',
      'hall',
      days(30, (h) => wave(h) + (h >= 360 ? 3 : 0)),
    );
    const other = made('temperature', 'bath', days(30, wave));
    const third = made(
      'temperature',
      'attic',
      days(30, (h) => wave(h) - 1),
    );
    expect(describe1([one, other, third]).warnings).toEqual([
      {
        id: 'moved',
        text: 'The temperature of hall stepped up by 3.0 K against other rooms about 2025-01-21 and stayed: was its sensor moved?',
      },
    ]);
  });

  test('a step is seen beside one other room that goes its own ways, six cold days are none', () => {
    // daily differences of half a kelvin to either side, by a fixed rule
    const own = (h: number) => wave(h) + 0.5 * Math.sin(Math.floor(h / 24) * 2.4);
    const other = made('temperature', 'bath', days(30, wave));
    const moved = made(
      'temperature',
      'hall',
      days(30, (h) => own(h) + (h >= 360 ? 2.5 : 0)),
    );
    const cold = made(
      'temperature',
      'hall',
      days(30, (h) => own(h) - (h >= 360 && h < 504 ? 2.5 : 0)),
    );
    expect(describe1([moved, other]).warnings.map(({ id }) => id)).toEqual(['moved']);
    // a day beside the step without readings hides nothing
    const away = days(30, (h) => own(h) + (h >= 360 ? 2.5 : 0)).filter(
      (_, h) => h < 336 || h >= 360,
    );
    expect(describe1([made('temperature', 'hall', away), other]).warnings[0]!.text).toMatch(
      /^The temperature of (hall stepped up|bath stepped down) by 2\.\d K against other rooms about 2025-01-2[01]/,
    );
    expect(describe1([cold, other]).warnings).toEqual([]);
  });

  test('a humidity that stands at saturation', () => {
    const wet = days(30, (h) => (h >= 100 && h < 150 ? 99.9 : 70 + 15 * Math.sin(h / 5)));
    expect(describe1([made('relative humidity', 'a', wet)]).warnings[0]!.text).toBe(
      'Relative humidity of a stood at 99.9 for 2 days from 2025-01-10 04:00: is it wet, or at its end?',
    );
  });

  test('a humidity sensor that reaches no further', () => {
    const capped = days(30, (h) => Math.min(80, 70 + 15 * Math.sin(h / 5)));
    expect(describe1([made('relative humidity', 'a', capped)]).warnings[0]).toMatchObject({
      id: 'humidity-ceiling',
    });
  });

  test('breath below the level outdoors', () => {
    const low = days(30, (h) => 600 + 300 * Math.sin(h / 4));
    const [found] = describe1([made('co2', 'a', low)]).warnings;
    expect(found!.text).toMatch(
      /^CO2 of a falls to 300\.1 ppm and below in one reading of a hundred/,
    );
  });

  test('breath where nobody is said to be', () => {
    const nobody = {
      ...made(
        'presence',
        'a',
        days(30, () => 0),
      ),
      reading: 'state' as const,
    };
    const rising = made(
      'co2',
      'a',
      days(30, (h) => 500 + (h % 4) * 200),
    );
    expect(describe1([nobody, rising]).warnings.map(({ id }) => id)).toEqual(['unseen-people']);
  });
});

function describe1(series: LoggedSeries[]) {
  const start = Math.min(...series.map(({ times }) => times[0]!));
  const end = Math.max(...series.map(({ times }) => times.at(-1)!));
  return describeLog({ log: { series, start, end }, files: [] });
}

function made(quantity: string, room: string, readings: [number, number][]): LoggedSeries {
  return {
    ...{ quantity, place: 'room', room, device: null, reading: 'instant', from: 'test' },
    times: Float64Array.from(readings, ([time]) => time),
    values: Float64Array.from(readings, ([, value]) => value),
  };
}
