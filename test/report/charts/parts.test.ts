import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dailyRanges } from '../../../src/measures/series/daily-ranges.ts';
import { aroundWords } from '../../../src/report/charts/around-words.ts';
import { axisWithRoom } from '../../../src/report/charts/axis-with-room.ts';
import type { Chart } from '../../../src/report/charts/chart.ts';
import { weeklyMeans } from '../../../src/report/charts/cold-spot-chart.ts';
import { cumulativeMoneyChart } from '../../../src/report/charts/cumulative-money-chart.ts';
import { heatChart } from '../../../src/report/charts/heat-chart.ts';
import { monthlyHeat } from '../../../src/report/charts/monthly-heat.ts';
import { HUES, seriesStyle } from '../../../src/report/charts/palette.ts';
import { placeLabels } from '../../../src/report/charts/place-labels.ts';
import { spreadOut } from '../../../src/report/charts/spread-out.ts';
import { chartsToSvg, drawCharts } from '../../../src/report/charts/to-svg.ts';
import { weekChart } from '../../../src/report/charts/week-chart.ts';
import { wrapTitle } from '../../../src/report/charts/wrap-title.ts';
import { UTC_CLOCK } from '../../../src/units/local-clock.ts';
import { ledger, START } from '../../measures/hand-made.ts';
import { compareBand } from '../../reference/compare.ts';
import { AHEAD, AUTUMN, SPRING } from '../../units/summer-time.ts';
import { drawnPlaces } from './drawn-places.ts';
import { BANDS, drawingsOf, PLAIN, sampleCharts, series } from './sample.ts';

describe('colours', () => {
  test.each(Object.entries(HUES))('%s is seen on white and on near-black', (name, colour) => {
    for (const ground of ['#ffffff', '#15181c']) {
      expect(contrast(colour, ground), `${name} on ${ground}`).toBeGreaterThanOrEqual(3);
    }
  });

  test('the measure of contrast itself', () => {
    expect(contrast('#ffffff', '#000000')).toBeCloseTo(21, 9);
    expect(contrast('#777777', '#ffffff')).toBeCloseTo(4.48, 2);
  });

  test('no two of twenty series are drawn alike, and what they are compared with is grey', () => {
    const looks = Array.from({ length: 20 }, (_, k) => JSON.stringify(seriesStyle(k)));
    expect(new Set(looks).size).toBe(20);
    const spread = (colour: string) => {
      const parts = [1, 3, 5].map((at) => Number.parseInt(colour.slice(at, at + 2), 16));
      return Math.max(...parts) - Math.min(...parts);
    };
    expect(spread(seriesStyle(0).colour)).toBeLessThan(16);
    for (let k = 1; k < 20; k++) expect(spread(seriesStyle(k).colour)).toBeGreaterThan(60);
  });

  test('neighbours in a picture stay apart for eyes without green or red', () => {
    // The first is grey, which both kinds of eyes tell from any colour.
    const all = Array.from({ length: 5 }, (_, k) => seriesStyle(k + 1).colour);
    for (let k = 0; k + 1 < all.length; k++) {
      for (const eye of [WITHOUT_GREEN, WITHOUT_RED]) {
        expect(blueYellow(all[k]!, eye) * blueYellow(all[k + 1]!, eye)).toBeLessThan(0);
      }
    }
  });
});

describe('spreadOut', () => {
  test('keeps order, gap and ends', () => {
    const values = fc.array(fc.double({ min: 0, max: 100, noNaN: true }), { maxLength: 20 });
    fc.assert(
      fc.property(values, (list) => {
        const places = spreadOut(list, 5, [0, 100]);
        const sorted = [...places].sort((a, b) => a - b);
        sorted.forEach((place, k) => {
          expect(place).toBeGreaterThanOrEqual(-1e-9);
          expect(place).toBeLessThanOrEqual(100 + 1e-9);
          if (k > 0) expect(place - sorted[k - 1]!).toBeGreaterThanOrEqual(5 - 1e-9);
        });
        list.forEach((a, i) => {
          list.forEach((b, j) => {
            if (a < b) expect(places[i]!).toBeLessThan(places[j]!);
          });
        });
      }),
    );
  });

  test('what is far enough apart stays where it is', () => {
    expect(spreadOut([30, 10, 20], 5, [0, 100])).toEqual([30, 10, 20]);
  });
});

test('placeLabels: no word over a mark or another word, none outside, where there is room', () => {
  const spot = fc.record({
    x: fc.double({ min: 0, max: 600, noNaN: true }),
    y: fc.double({ min: 10, max: 290, noNaN: true }),
    text: fc.constantFrom('as-lived', 'nineteen', 'dry-bedroom-gated'),
  });
  fc.assert(
    fc.property(fc.array(spot, { minLength: 1, maxLength: 6 }), (marks) => {
      const boxes = placeLabels(marks, [600, 300], []).map(({ x, y }, k) => ({
        ...{ left: x, right: x + 6.5 * marks[k]!.text.length, top: y - 6.5, bottom: y + 6.5 },
      }));
      boxes.forEach((a, i) => {
        expect(a.left).toBeGreaterThanOrEqual(0);
        expect(a.right).toBeLessThanOrEqual(600);
        boxes.slice(i + 1).forEach((b) => {
          const apart =
            a.right <= b.left + 1e-9 ||
            b.right <= a.left + 1e-9 ||
            a.bottom <= b.top + 1e-9 ||
            b.bottom <= a.top + 1e-9;
          expect(apart).toBe(true);
        });
      });
    }),
  );
});

test('words keep off lines where there is room elsewhere', () => {
  const mark = { x: 100, y: 100, text: 'nineteen' };
  const [free] = placeLabels([mark], [300, 200], []);
  expect(free).toMatchObject({ y: 100 });
  const level = [
    { x: 0, y: 100 },
    { x: 300, y: 100 },
  ];
  const [clear] = placeLabels([mark], [300, 200], [level]);
  expect(Math.abs(clear!.y - 100)).toBeGreaterThan(6.5);
  // A line everywhere leaves the nearest place.
  const rows = Array.from({ length: 41 }, (_, k) => [
    { x: 0, y: 5 * k },
    { x: 300, y: 5 * k },
  ]);
  expect(placeLabels([mark], [300, 200], rows)).toEqual([free]);
});

test('upright lines leave words out', () => {
  const word = (top: number, bottom: number) => ({ left: 10, right: 20, top, bottom });
  const words = [word(30, 40), word(5, 12), word(10, 16)];
  expect(aroundWords(15, [0, 50], words)).toEqual([
    { top: 0, bottom: 5 },
    { top: 16, bottom: 30 },
    { top: 40, bottom: 50 },
  ]);
  expect(aroundWords(25, [0, 50], words)).toEqual([{ top: 0, bottom: 50 }]);
  expect(aroundWords(15, [0, 50], [word(-5, 20), word(45, 60)])).toEqual([{ top: 20, bottom: 45 }]);
  expect(aroundWords(15, [0, 50], [word(-5, 60)])).toEqual([]);
});

describe('axisWithRoom', () => {
  test('every value and every word is inside the plot, and one more pixel would be wasted', () => {
    const word = fc.record({
      at: fc.double({ min: -100, max: 100, noNaN: true }),
      side: fc.constantFrom<-1 | 1>(-1, 1),
      room: fc.double({ min: 0, max: 140, noNaN: true }),
    });
    fc.assert(
      fc.property(fc.array(word, { minLength: 2, maxLength: 12 }), (words) => {
        const values = [-101, ...words.map(({ at }) => at), 101];
        const [from, to] = axisWithRoom(values, words, 300);
        const px = (value: number) => ((value - from) / (to - from)) * 300;
        const outer = [
          ...words.map(({ at, side, room }) => px(at) + side * room),
          ...[px(-101) - 6, px(101) + 6],
        ];
        expect(Math.min(...outer)).toBeCloseTo(0, 6);
        expect(Math.max(...outer)).toBeCloseTo(300, 6);
      }),
    );
  });

  test('equal values stand in the middle', () => {
    expect(axisWithRoom([0, 0], [], 300)).toEqual([-1, 1]);
    expect(axisWithRoom([-4000], [], 300)).toEqual([-4040, -3960]);
  });
});

describe.each([340, 720])('where rows lie on pictures %i px wide', (width) => {
  // Rows of the table, and which corner of the first mark is the row's.
  test.each([
    { kind: 'week-temperature', rows: { 0: 0, 30: 30, 167: 167 } },
    { kind: 'week-humidity', rows: { 0: 0, 167: 167 } },
    { kind: 'year-temperature', rows: { 0: 0, 31: 31, 59: 59 } },
    { kind: 'cold-spot', rows: { 4: 0, 11: 1 } }, // means of weeks, at the middle day of each
    { kind: 'mould', rows: { 1: 0, 32: 31, 60: 59 } },
    { kind: 'money', rows: { 0: 0, 3: 3, 8: 8 } },
  ])('$kind', async ({ kind, rows }) => {
    const chart = sampleCharts(PLAIN, width)[kind]!;
    const { marks, at } = await drawnRows(chart);
    for (const [row, corner] of Object.entries(rows)) {
      expect(Math.abs(at(Number(row)) - marks[0]![corner]!)).toBeLessThan(HALF_A_TENTH);
    }
  });

  test('heat, in the middle of the months’ bars, also of one alone', async () => {
    for (const months of [[0, 1], [11]]) {
      const books = ledger(1, months, { energy: { heating: 9e9, walls: -7e9 } });
      const { marks, at } = await drawnRows(heatChart(monthlyHeat(books), 'a', width));
      months.forEach((_, month) => {
        const middle = (Math.min(...marks[month]!) + Math.max(...marks[month]!)) / 2;
        expect(Math.abs(at(1 + month) - middle)).toBeLessThan(2 * HALF_A_TENTH);
      });
    }
  });

  test('no place where rows have none', async () => {
    const charts = sampleCharts(PLAIN, width);
    const drawn = await drawCharts(drawingsOf(charts));
    const without = Object.keys(charts).filter((_, k) => drawn[k]!.along === null);
    expect(without).toEqual([
      'calendar',
      'water',
      'trade-off',
      'bargain',
      'frontier',
      'draws',
      'air',
      'alerts',
      'against',
      'foreseen',
      'doubt',
    ]);
    const nothing = heatChart(monthlyHeat(ledger(1, [], { energy: {} })), 'a', width);
    const [empty] = await drawCharts([{ id: 'empty', chart: nothing }]);
    expect(empty!.along).toBeNull();
  });
});

test('a week in which the clock jumps has no places, because its rows are not evenly spread', () => {
  const week = (start: number) =>
    weekChart(
      {
        ...{ room: 'den', quantity: 'temperature', band: BANDS.temperature, clock: AHEAD },
        start,
        plans: [{ name: 'a', values: series(168, () => 20) }],
      },
      720,
    ).along;
  expect(week(SPRING - 7 * 86_400)).toMatchObject({ row: 0 });
  expect(week(SPRING - 86_400)).toBeUndefined();
  expect(week(AUTUMN - 86_400)).toBeUndefined();
});

test('wrapped words', () => {
  expect(wrapTitle('one two three', 82)).toEqual(['one two', 'three']);
  expect(wrapTitle('unbreakablylongword x', 82)).toEqual(['unbreakablylongword', 'x']);
});

test('weekly means leave a few days at the end to nobody', () => {
  const days = (n: number) =>
    dailyRanges(
      series(24 * n, (h) => Math.floor(h / 24)),
      START,
      UTC_CLOCK,
    );
  expect(weeklyMeans(days(16)).map(({ v }) => v)).toEqual([3, 10]);
  expect(weeklyMeans(days(18)).map(({ v }) => v)).toEqual([3, 10, 15.5]);
  expect(weeklyMeans(days(2)).map(({ v }) => v)).toEqual([0.5]);
});

test('contrast of the darkest hue on white, against the rule for pictures', () => {
  const least = Math.min(...Object.values(HUES).map((colour) => contrast(colour, '#ffffff')));
  compareBand({
    topic: 'Pictures',
    what: 'least contrast of a colour of the pictures against white',
    unit: '1',
    source:
      'Web Content Accessibility Guidelines 2.2, Understanding 1.4.11 non-text contrast (w3.org/WAI): at least 3 to 1',
    mark: 'published',
    low: 3,
    high: 21,
    got: least,
    because: 'the rule itself',
  });
});

/** The marks of a drawing and where its rows lie; the first and the last row lie inside the plot. */
async function drawnRows(chart: Chart) {
  const [drawn] = await drawCharts([{ id: 'one', chart }]);
  const { plot, marks } = drawnPlaces(drawn!.svg);
  const { row: first, from, step } = drawn!.along!;
  const at = (row: number): number => from + (row - first) * step;
  const last = chart.table.rows.length - 1;
  expect(step).toBeGreaterThan(0);
  // The ends of the plot are drawn half a pixel off, and cut to whole pixels.
  expect(at(first)).toBeGreaterThanOrEqual(plot[0] - 0.51);
  expect(at(last)).toBeLessThanOrEqual(plot[1] + 0.51);
  return { marks, at };
}

/** What rounding to a tenth leaves of the places of a mark and of its picture. [px] */
const HALF_A_TENTH = 0.11;

/** Contrast ratio of two colours. Source: W3C, relative luminance and contrast of WCAG 2. */
function contrast(a: string, b: string): number {
  const [dark, light] = [luminance(a), luminance(b)].sort((x, y) => x - y) as [number, number];
  return (light + 0.05) / (dark + 0.05);
}

function luminance(colour: string): number {
  const [r, g, b] = linear(colour);
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

function linear(colour: string): [number, number, number] {
  const channel = (at: number): number => {
    const c = Number.parseInt(colour.slice(at, at + 2), 16) / 255;
    return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
  };
  return [channel(1), channel(3), channel(5)];
}

/**
 * How blue (above 0) or yellow a colour looks to an eye with two kinds of cones: blue against what
 * the other kind makes of red and green. Source: Viénot, Brettel and Mollon 1999, from memory.
 */
function blueYellow(colour: string, [r, g]: readonly [number, number]): number {
  const [red, green, blue] = linear(colour);
  return blue - (r * red + g * green);
}

const WITHOUT_GREEN = [0.29275, 0.70725] as const;
const WITHOUT_RED = [0.11238, 0.88762] as const;

test('heat by months has a group of cooling where something cools', () => {
  const { headers, rows } = heatChart(
    monthlyHeat(ledger(1, [6], { energy: { sun: 3.6e8, cooling: -7.2e7 } })),
    'a',
    720,
  ).table;
  expect(headers.at(-1)).toBe('cooling [kWh]');
  expect(rows.at(-1)?.at(-1)).toBe('-20');
  const none = heatChart(monthlyHeat(ledger(1, [6], { energy: { sun: 3.6e8 } })), 'a', 720);
  expect(none.table.headers.join()).not.toContain('cooling');
  expect(none.description).not.toContain('cooling');
});

test('sums on an axis are grouped from five digits on, below nought too', async () => {
  const money = cumulativeMoneyChart(
    {
      ...{ device: 'hp', currency: 'GBP', price: 18_000, again: [] },
      ...{ years: 10, savedPerYear: 2800, discountRate: 0 },
    },
    720,
  );
  const [svg = ''] = await chartsToSvg(drawingsOf({ money }), {});
  const labels = [...svg.matchAll(/<text[^>]*>([−-]?[\d\u202f]+)<\/text>/g)].map(
    ([, text]) => text!,
  );
  // From -18 000 to 10 000 in steps of 5000.
  expect(labels).toEqual(
    expect.arrayContaining(['−15\u202f000', '−10\u202f000', '5000', '10\u202f000']),
  );
  expect(labels).toContain('−5000');
});
