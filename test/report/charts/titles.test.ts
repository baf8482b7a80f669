import { describe, expect, test } from 'vitest';
import { dailyRanges } from '../../../src/measures/series/daily-ranges.ts';
import { netPresentValue } from '../../../src/physics/economics/net-present-value.ts';
import { airChart } from '../../../src/report/charts/air-chart.ts';
import { alertsChart } from '../../../src/report/charts/alerts-chart.ts';
import { calendarChart } from '../../../src/report/charts/calendar-chart.ts';
import { coldSpotChart } from '../../../src/report/charts/cold-spot-chart.ts';
import { cumulativeMoneyChart } from '../../../src/report/charts/cumulative-money-chart.ts';
import { doubtChart } from '../../../src/report/charts/doubt-chart.ts';
import { drawsChart } from '../../../src/report/charts/draws-chart.ts';
import { heatChart } from '../../../src/report/charts/heat-chart.ts';
import { hoursOutside } from '../../../src/report/charts/hours-outside.ts';
import { monthlyHeat } from '../../../src/report/charts/monthly-heat.ts';
import { mouldChart } from '../../../src/report/charts/mould-chart.ts';
import { chartsToSvg } from '../../../src/report/charts/to-svg.ts';
import { tradeOffChart } from '../../../src/report/charts/trade-off-chart.ts';
import { waterBalance } from '../../../src/report/charts/water-balance.ts';
import { waterChart } from '../../../src/report/charts/water-chart.ts';
import { weekChart } from '../../../src/report/charts/week-chart.ts';
import { yearChart } from '../../../src/report/charts/year-chart.ts';
import { UTC_CLOCK } from '../../../src/units/local-clock.ts';
import { ledger, START } from '../../measures/hand-made.ts';
import { BANDS, START_HERE, series } from './sample.ts';
import { expectValid } from './vega-lite-schema.ts';

describe('a week', () => {
  const coldFor = (hours: number) => series(168, (h) => (h < hours ? 17 : 20));
  const week = (warm: number, cool: number) =>
    weekChart(
      {
        ...{ room: 'den', quantity: 'temperature', band: BANDS.temperature, ...START_HERE },
        plans: [
          { name: 'a', values: coldFor(warm) },
          { name: 'b', values: coldFor(cool) },
        ],
      },
      720,
    );

  test('the title names who is outside longest; swapped figures swap it', () => {
    expect(week(3, 12).title).toBe('den is below 18 °C for 12 of 168 h under b, 3 h under a');
    expect(week(12, 3).title).toBe('den is below 18 °C for 12 of 168 h under a, 3 h under b');
  });

  test('the title names one of many that are alike, and cuts long names', () => {
    const plans = ['as it is', 'always', 'nineteen', 'x'.repeat(55)];
    const { title } = weekChart(
      {
        ...{ room: 'den', quantity: 'temperature', band: BANDS.temperature, ...START_HERE },
        plans: plans.map((name, k) => ({ name, values: coldFor(k === 3 ? 2 : 9) })),
      },
      328,
    );
    expect(title).toBe(
      `den is below 18 °C for 9 of 168 h under as it is and 2 more, 2 h under ${'x'.repeat(27)}…`,
    );
  });

  test('long names that begin alike are told apart, in the title and at the lines', () => {
    const plans = [18, 19].map((at) => `Schlafzimmer dauerhaft und immer auf ${at} °C`);
    const { title, spec } = weekChart(
      {
        ...{ room: 'den', quantity: 'temperature', band: BANDS.temperature, ...START_HERE },
        plans: plans.map((name, k) => ({ name, values: coldFor(k === 0 ? 9 : 2) })),
      },
      328,
    );
    expect(title).toMatch(/ 9 of 168 h under .*auf 18 °C, 2 h under .*auf 19 °C$/);
    expect(JSON.stringify(spec)).toMatch(/…[^"]*18 °C".*…[^"]*19 °C"/);
  });

  test('equal plans and a fine week are told as such', () => {
    expect(week(5, 5).title).toContain('den is below 18 °C for 5 of 168 h under every plan');
    expect(week(0, 0).title).toBe('den stays at 18 to 26 °C');
  });

  test('the table has every hour of every plan', () => {
    const { headers, rows } = week(3, 12).table;
    expect(headers).toEqual(['hour beginning', 'a [°C]', 'b [°C]']);
    expect(rows).toHaveLength(168);
    expect(rows[3]).toEqual(['2023-01-02 03:00', '20.0', '17.0']);
  });
});

describe('the days of a year', () => {
  const year = (values: Float32Array) =>
    yearChart(
      {
        ...{ room: 'den', plan: 'a', quantity: 'humidity', band: BANDS.humidity },
        days: dailyRanges(values, START, UTC_CLOCK),
      },
      720,
    );

  test('the title counts days, most first', () => {
    const damp = series(240, (h) => (h < 72 ? 70 : h < 96 ? 30 : 50));
    expect(year(damp).title).toBe(
      'den is too damp (above 60 %) on 3 of 10 days and too dry (below 40 %) on 1 day under a',
    );
    expect(year(damp.map((v) => 100 - v)).title).toBe(
      'den is too dry (below 40 %) on 3 of 10 days and too damp (above 60 %) on 1 day under a',
    );
    expect(year(series(240, () => 50)).title).toBe('den stays at 40 to 60 % all the time under a');
  });

  test('in mild weather another upper edge may hold', () => {
    const warm = series(240, (h) => (h < 72 ? 22 : 19));
    const of = (mild: readonly number[]) =>
      yearChart(
        {
          ...{ room: 'den', plan: 'a', quantity: 'temperature', mild },
          band: { low: 16, high: 20, mild: { high: 26 } },
          days: dailyRanges(warm, START, UTC_CLOCK),
        },
        720,
      );
    expect(of([0, 1, 1]).title).toBe(
      'den is too warm (above 20 °C or, when mild, 26 °C) on 1 of 10 days under a',
    );
    expect(of([1, 1, 1]).title).toBe(
      'den stays at 16 to 20 °C (26 °C in mild weather) all the time under a',
    );
  });

  test('the table has least, mean and most of every day', () => {
    const { rows } = year(series(48, (h) => 40 + (h % 24))).table;
    expect(rows[1]).toEqual(['3 January 2023', '40.0', '51.5', '63.0']);
  });
});

test('cold spot: swapped hours swap the title; none is told as none', () => {
  const days = dailyRanges(
    series(240, () => 75),
    START,
    UTC_CLOCK,
  );
  const spot = (a: number, b: number) =>
    coldSpotChart(
      {
        room: 'den',
        plans: [
          { name: 'a', days, hoursAbove80: a },
          { name: 'b', days, hoursAbove80: b },
        ],
      },
      720,
    );
  expect(spot(40, 7).title).toBe('The cold spot of den is over 80 % for 40 h under a, 7 h under b');
  expect(spot(7, 40).title).toContain('for 40 h under b, 7 h under a');
  expect(spot(0, 0).title).toBe('The cold spot of den is never over 80 %');
  expect(spot(40, 7).table.rows[0]).toEqual(['hours over 80 %', '40', '7']);
});

describe('the calendar', () => {
  const calendar = (temperature: Float32Array, humidity: Float32Array) =>
    calendarChart(
      {
        ...{ room: 'den', plan: 'a', ...START_HERE },
        hours: hoursOutside(temperature, humidity, BANDS),
      },
      720,
    );
  const cold = series(240, (h) => (h % 24 === 3 ? 17 : 20));
  const damp = series(240, (h) => (h % 24 < 5 ? 61 : 60));

  test('the upper edge of mild weather holds in its hours alone', () => {
    const bands = { ...BANDS, temperature: { low: 16, high: 20, mild: { high: 26 } } };
    const warm = Float32Array.of(21, 21, 27, 27, 19);
    const dry = Float32Array.of(50, 50, 50, 50, 50);
    const mild = Uint8Array.of(0, 1, 1, 0, 1);
    expect([...hoursOutside(warm, dry, bands, mild)]).toEqual([2, 0, 2, 2, 0]);
    expect([...hoursOutside(warm, dry, bands)]).toEqual([2, 2, 2, 2, 0]);
  });

  test('counts each wrong by itself, also two in one hour', () => {
    const { title, table } = calendar(cold, damp);
    expect(title).toBe('den is too damp for 50 of 240 h and too cold for 10 h under a');
    expect(table.rows).toEqual([['January 2023', '10', '0', '50', '0']]);
  });

  test('all fine is told', () => {
    expect(calendar(damp.fill(20), damp.slice().fill(50)).title).toBe(
      'den is inside its bands all the time under a',
    );
  });
});

test('heat: the title names the largest gain and loss; the table adds up', () => {
  const chart = (heating: number, sun: number) =>
    heatChart(
      monthlyHeat(
        ledger(1, [11, 0], { energy: { heating, sun, floors: -3.6e9, openings: -7.2e9 } }),
      ),
      'a',
      720,
    );
  expect(chart(7.2e9, 3.6e9).title).toBe(
    'Most heat came from heating (2000 kWh) and most left through air (2000 kWh) under a',
  );
  expect(chart(3.6e9, 7.2e9).title).toContain('came from sun (2000 kWh)');
  const { rows } = chart(7.2e9, 3.6e9).table;
  expect(rows.map(([month]) => month)).toEqual(['all', 'December', 'January']);
  expect(rows[0]).toEqual(['all', '2000', '1000', '0', '0', '-1000', '0', '-2000', '0']);
});

test('water: ways that moved nothing are left out, the largest are in the title', () => {
  const chart = (people: number, drying: number) =>
    waterChart(waterBalance(ledger(1, [0], { water: { people, drying, leakage: -90 } })), 'a', 720);
  expect(chart(60, 30).title).toBe(
    'Most water came from people (60 kg) and most left through leakage (90 kg) under a',
  );
  expect(chart(30, 60).title).toContain('came from laundry, plants (60 kg)');
  expect(chart(30, 60).table.rows).toEqual([
    ['laundry, plants', '+60.0'],
    ['people', '+30.0'],
    ['leakage', '-90.0'],
  ]);
  expect(chart(0, 0).title).toBe('Next to no water came or went under a');
});

test.each([
  {
    peaks: [0.2, 0.5],
    description: 'Mould would not get going in den: index 0.50 under b, 0.20 under a',
  },
  {
    peaks: [2, 0],
    description: 'Mould would grow, seen only under a microscope, in den: index 2.00 under a',
  },
  {
    peaks: [1, 4],
    description: 'Mould would be seen by eye in den: index 4.00 under b, 1.00 under a',
  },
])('mould to $peaks', ({ peaks, description }) => {
  const plans = peaks.map((peak, k) => ({
    name: 'ab'[k]!,
    index: series(30, (day) => (peak * day) / 29),
  }));
  const { title, table } = mouldChart({ room: 'den', ...START_HERE, plans }, 720);
  expect(title).toContain(description);
  expect(table.rows).toHaveLength(31);
  expect(table.rows[0]).toEqual(['highest', ...peaks.map((peak) => peak.toFixed(2))]);
});

test('days of mould are those of the wall clock, also the one on which it goes back', () => {
  const utc = (day: number, hour: number) => Date.UTC(2023, 9, day, hour) / 1000;
  const clock = { from: [0, utc(29, 1)], offset: [3600, 0] };
  const plans = [{ name: 'a', index: [0.1, 0.2, 0.3, 0.4] }];
  const { table } = mouldChart({ room: 'den', start: utc(27, 23), clock, plans }, 720);
  expect(table.rows.slice(1).map(([day]) => day)).toEqual([
    ...['28 October 2023', '29 October 2023', '30 October 2023', '31 October 2023'],
  ]);
});

test('trade-off: who costs least and who is kindest, or one that is both', () => {
  const chart = (list: readonly (readonly [number, number])[]) =>
    tradeOffChart(
      {
        currency: 'GBP',
        plans: list.map(([money, hours], k) => ({ name: 'abc'[k]!, money, hours })),
      },
      340,
    );
  const swap = [
    [100, 5],
    [90, 7],
  ] as const;
  expect(chart(swap).title).toBe(
    'b costs least (90 GBP a year); a keeps rooms in their bands longest (5.0 h a day outside)',
  );
  expect(chart([swap[1], swap[0]]).title).toContain('a costs least (90 GBP a year); b keeps');
  expect(chart([...swap, [80, 4]]).title).toBe(
    'c costs least (80 GBP a year) and keeps rooms in their bands longest (4.0 h a day outside)',
  );
  expect(chart(swap).table.rows).toEqual([
    ['a', '100', '5.0'],
    ['b', '90', '7.0'],
  ]);
});

test('trade-off: of many plans those are named that are compared, spoken of, or best in something', () => {
  const plans = Array.from({ length: 12 }, (_, k) => ({
    ...{ name: `plan${k}`, money: 100 + 10 * k, hours: 20 - k },
  }));
  const namesAt = (width: number, count: number) => {
    const data = { currency: 'GBP', plans: plans.slice(0, count), about: 'plan4' };
    const { spec } = tradeOffChart(data, width);
    const texts = (spec['layer'] as Layer[]).flatMap(({ data, mark }) =>
      mark.type === 'text' ? data.values.map(({ text }) => text) : [],
    );
    return texts.sort();
  };
  type Layer = { data: { values: { text: string }[] }; mark: { type: string } };
  expect(namesAt(700, 6)).toHaveLength(6);
  expect(namesAt(340, 6)).toHaveLength(6);
  // The first and the last are cheapest and kindest, the fifth is asked about.
  expect(namesAt(700, 12)).toEqual(['plan0', 'plan11', 'plan4']);
  expect(namesAt(340, 12)).toEqual(['plan0', 'plan11', 'plan4']);
});

describe('what the air carries', () => {
  const levels = (p95: number) => ({ mean: 10, evening: 20, night: 8, p95, peak: 120 });
  const chart = (plans: readonly (readonly [string, number, number])[], limit = 15) =>
    airChart(
      {
        ...{ label: 'PM2.5', unit: 'µg/m3', outdoors: 7 },
        rooms: ['den', 'kitchen'].map((name) => ({ name, limit, hours: 24 })),
        plans: plans.map(([name, den, kitchen]) => ({
          name,
          levels: [levels(den), levels(kitchen)],
        })),
      },
      576,
    );

  test('is told of the room that is worst off, with its limit and what the other plan makes of it', () => {
    const both = chart([
      ['now', 20, 53.2],
      ['purifier', 18, 30],
    ]);
    expect(both.title).toBe(
      'In kitchen one hour in twenty has over 53.2 µg/m3 of PM2.5 (limit 15.0, as a mean of 24 h); with purifier 30.0',
    );
    expect(chart([['now', 9, 4]]).title).toBe(
      'In den one hour in twenty has over 9.00 µg/m3 of PM2.5 (limit 15.0, as a mean of 24 h)',
    );
    const hourly = { label: 'CO2', unit: 'ppm', outdoors: 420 };
    const rooms = [{ name: 'den', limit: 1000, hours: 1 }];
    const plans = [{ name: 'now', levels: [levels(1500)] }];
    expect(airChart({ ...hourly, rooms, plans }, 576).title).toBe(
      'In den one hour in twenty has over 1500 ppm of CO2 (limit 1000)',
    );
    const same = [
      ['now', 20, 53],
      ['drier', 20, 54],
    ] as const;
    expect(chart(same, Number.POSITIVE_INFINITY).title).toBe(
      'In kitchen one hour in twenty has over 53.0 µg/m3 of PM2.5; drier changes little',
    );
    expect(both.table.rows[3]).toEqual([
      ...['kitchen, purifier', '10.0', '20.0', '8.00', '30.0', '120'],
    ]);
  });

  test('has its key in a line, or in a line each where names are long', () => {
    const key = (name: string) =>
      JSON.stringify(
        chart([
          ['now', 9, 4],
          [name, 9, 4],
        ]).spec,
      );
    expect(key('fan')).toContain('"● now, ■ fan; | mean; dashed: limit"');
    const long = key('a purifier in every room that somebody sleeps in, and one in the kitchen');
    expect(long).toContain('"text":"● now"');
    expect(long).toContain('"text":"■ a purifier in every room that somebody sleeps in');
    expect(long).toContain('"text":"| mean; dashed: limit"');
  });
});

describe('alerts by the hour', () => {
  const at = (hour: number, count: number) =>
    Array.from({ length: 24 }, (_, k) => (k === hour ? count : 0));
  const cold = { name: 'cold', byHour: at(3, 104), heardByHour: at(3, 0) };
  const stale = { name: 'stale', byHour: at(18, 52), heardByHour: at(18, 52) };

  test('are told by the week, with how many nobody hears and which rule rings most', () => {
    const { title, table } = alertsChart({ plan: 'told', weeks: 52, rules: [stale, cold] }, 576);
    expect(title).toBe(
      '2.0 of 3.0 alerts a week ring where nobody awake hears them under told; “cold” rings most',
    );
    expect(table.rows.map((row) => row.slice(0, 3))).toEqual([
      ['stale', '1.0', '100'],
      ['cold', '2.0', '0'],
    ]);
    expect(table.rows[1]![6]).toBe('104');
  });

  test('bars are as high as the root of what they count, so that rare ones are seen', () => {
    const { spec } = alertsChart({ plan: 'told', weeks: 52, rules: [cold, stale] }, 576);
    const layers = spec['layer'] as { data: { values: Record<string, number>[] } }[];
    const heights = layers
      .flatMap(({ data }) => data.values)
      .filter((bar) => bar['full'] === 0)
      .map((bar) => bar['bottom']! - bar['top']!);
    expect(heights[1]! / heights[0]!).toBeCloseTo(Math.sqrt(52 / 104), 9);
  });

  test('that never ring are no finding', () => {
    const silent = { name: 'never', byHour: at(0, 0), heardByHour: at(0, 0) };
    expect(alertsChart({ plan: 'told', weeks: 52, rules: [silent] }, 576).title).toBe(
      'Nothing rings under told',
    );
  });
});

describe('money over a device’s life', () => {
  const data = { device: 'drier', currency: 'GBP', price: 10_000, years: 6, discountRate: 0.08 };

  test('pays back or does not, by its figures', () => {
    expect(cumulativeMoneyChart({ ...data, savedPerYear: 2500 }, 720).title).toBe(
      'drier pays back after 4.0 years and is 5000 GBP ahead at the end of its life of 6 years',
    );
    expect(cumulativeMoneyChart({ ...data, savedPerYear: -100 }, 720).title).toBe(
      'drier does not pay back within its life of 6 years: by then it has cost 10\u202f600 GBP',
    );
  });

  test('pays what wears out within a year at the end of that year', () => {
    const again = [{ price: 20, afterYears: 2.5 }];
    const drawn = cumulativeMoneyChart(
      { ...{ device: 'purifier', currency: 'GBP', price: 100, again }, ...SIX_YEARS },
      720,
    );
    // 30 a year, and 20 less in the third
    const money = drawn.table.rows.map(([, value]) => value);
    expect(money.slice(0, 5)).toEqual(['-100', '-70', '-40', '-30', '0']);
  });

  test('counts what has to be bought again before the end', () => {
    // 100 at once, 30 saved a year, a filter of 20 at the end of years 1 and 2:
    // -100, -90, -80, -50, -20, 10, 40
    const again = [1, 2, 6].map((afterYears) => ({ price: 20, afterYears })); // none at the end
    const drawn = cumulativeMoneyChart(
      { ...{ device: 'purifier', currency: 'GBP', price: 100, again }, ...SIX_YEARS },
      720,
    );
    expect(drawn.table.rows.map(([, money]) => money)).toEqual([
      '-100',
      '-90',
      '-80',
      '-50',
      '-20',
      '+10',
      '+40',
    ]);
    expect(drawn.title).toBe(
      'purifier pays back after 4.7 years and is 40 GBP ahead at the end of its life of 6 years',
    );
  });

  test('of what outlasts the end a share counts, and what is not bought again is no loss', () => {
    // A boiler of 15 years for 3000 that is not bought, of the next 3 of its years: 600 at the end of year 15
    const again = [{ price: -3000, afterYears: 15, share: { counted: 3 / 15, today: 3 / 15 } }];
    const drawn = cumulativeMoneyChart(
      {
        ...{ device: 'hp', currency: 'GBP', price: 3000, again },
        ...{ years: 18, savedPerYear: 190, discountRate: 0 },
      },
      720,
    );
    const money = drawn.table.rows.map(([, value]) => Number(value));
    expect([money[14], money[15], money[18]]).toEqual([-340, 450, 1020]);
    // 340 are left at the end of year 14; 190 of year 15 are too little, and the boiler is due at its end.
    expect(drawn.title).toContain('hp pays back after 15.0 years and is 1020 GBP ahead');
  });

  test('the last figure is the net present value', () => {
    const { rows } = cumulativeMoneyChart({ ...data, savedPerYear: 2500 }, 720).table;
    expect(rows.map(([year]) => year)).toEqual(['0', '1', '2', '3', '4', '5', '6']);
    expect(rows[0]).toEqual(['0', '-10\u202f000', '-10\u202f000']);
    expect(Number(rows[6]![2])).toBe(Math.round(netPresentValue(10_000, 2500, 0.08, 6)));
  });
});

describe('draws', () => {
  const figure = (changes: number[]) => ({
    ...{ name: 'money a year', unit: 'GBP', better: 'costs less', decimals: 0, changes },
    ...{ p10: Math.min(...changes), median: changes[1]!, p90: Math.max(...changes) },
  });
  const told = (changes: number[], width: number) =>
    JSON.stringify(
      drawsChart({ plan: 'dry', baseline: 'now', figures: [figure(changes)] }, width).spec,
    );

  test('have the ends of their scale in figures', () => {
    expect(told([20, 40, 160], 500)).toContain('"value":0,"align":"left","text":"no change"');
    expect(told([20, 40, 160], 500)).toContain('"value":160,"align":"right","text":"+160 GBP"');
    const both = told([-50, 10, 30], 500);
    expect(both).toContain('"text":"−50 GBP"');
    expect(both).toContain('"text":"+30 GBP"');
    expect(both).not.toContain('"text":"no change"');
    expect(told([0, 0, 0], 500).match(/no change/g)).toHaveLength(1);
  });

  test('are told in a line where it has room, else in two, and never cut short', () => {
    expect(told([20, 40, 160], 500)).toContain('"money a year: +40 GBP (+20 to +160)"');
    const narrow = told([20, 40, 160], 200);
    expect(narrow).toContain('"money a year:"');
    expect(narrow).toContain('"+40 GBP (+20 to +160)"');
  });
});

describe('inputs in doubt', () => {
  const input = (name: string, atLow: number, atHigh: number, unit = '') => ({
    ...{ name, unit, low: `${name} low`, high: `${name} high`, atLow, atHigh },
  });
  const doubt = (inputs: ReturnType<typeof input>[], asIs = 40, width = 720) =>
    doubtChart({ figure: 'extra money a year', unit: 'GBP', asIs, inputs }, width);
  const [a, b, c] = [input('a', 160, -60), input('b', 20, 70), input('c', 60, 65)];

  test('the title names what moves the figure most, from what to what, and what turns its sign', () => {
    expect(doubt([a, b]).title).toBe(
      'Extra money a year hangs most on a: 160 to −60 GBP; a turns it round',
    );
    expect(doubt([b, c]).title).toBe(
      'Extra money a year hangs most on b: 20.0 to 70.0 GBP; none turns it round by itself',
    );
    expect(doubt([a, input('d', -60, 150), input('e', 40, -1), b], 41).title).toBe(
      'Extra money a year hangs most on a: 160 to −60 GBP; a, d and e turn it round',
    );
    expect(doubt([a, a, a, a]).title).toBe(
      'Extra money a year hangs most on 4 inputs: up to 120 GBP either way; 4 inputs turn it round',
    );
  });

  test('a name too long for a phone takes two lines, each with its own height, and ends in dots beyond', () => {
    const texts = (name: string, unit = '') => {
      const { spec } = doubt([input(name, 20, 70, unit), b], 40, 340);
      return JSON.stringify(spec);
    };
    const long = texts('draughts, by a blower door', 'air changes/h at 50 Pa');
    expect(long).toContain('"draughts, by a blower door"');
    expect(long).toContain('"[air changes/h at 50 Pa]"');
    expect(texts('long '.repeat(40))).toContain('…"');
    const height = (name: string) =>
      (doubt([input(name, 20, 70), b], 40, 340).spec as { height: number }).height;
    expect(height('word '.repeat(12))).toBe(height('word') + 13);
  });

  test('the title has an input without its unit, which stands at its bar', () => {
    expect(doubt([input('error', 20, 70, 'points')]).title).toMatch(/ hangs on error: /);
  });

  test('one input alone, none, and none that moves anything', () => {
    expect(doubt([c]).title).toBe(
      'Extra money a year hangs on c: 60.0 to 65.0 GBP; that does not turn it round',
    );
    expect(doubt([]).title).toBe('No input was tried low and high: extra money a year is 40.0 GBP');
    expect(doubt([input('a', 40, 40.01)]).title).toBe(
      'No input moves extra money a year from 40.0 GBP',
    );
  });

  test('the table has every input, also beyond the twelve that are drawn', () => {
    const many = Array.from({ length: 14 }, (_, k) => input(`n${k}`, 20 - k, 140 - k));
    const { table, description, spec } = doubt(many);
    expect(table.headers).toEqual([
      ...['input', 'low', 'high'],
      ...['extra money a year at low [GBP]', 'extra money a year at high [GBP]'],
    ]);
    expect(table.rows).toHaveLength(14);
    expect(table.rows[13]).toEqual(['n13', 'n13 low', 'n13 high', '7', '127']);
    expect(description).toContain('drawn are 12 of 14 inputs, the table has all');
    expect(JSON.stringify(spec)).toContain('"extra money a year [GBP], 12 of 14 inputs"');
    expect(JSON.stringify(spec)).not.toContain('n12');
  });

  test('what is no number is in the table and not in the picture', () => {
    const { title, table, spec } = doubt([a, input('odd', Number.NaN, 50)]);
    expect(table.rows[1]).toEqual(['odd', 'odd low', 'odd high', '-', '50']);
    expect(JSON.stringify(spec)).not.toContain('odd');
    expect(title).toContain('; a turns it round');
    const unknown = doubt([a], Number.NaN);
    expect(unknown.title).toBe('It is not known what extra money a year comes to');
    expect(unknown.table.rows).toEqual([['a', 'a low', 'a high', '160', '-60']]);
    expect(JSON.parse(JSON.stringify(unknown.spec))).toEqual(unknown.spec);
  });

  test('equal values and nothing at all are drawn without a NaN, and valid', async () => {
    const charts = [340, 720].flatMap((width) => [
      ...[doubt([], 40, width), doubt([], 0, width), doubt([input('a', 0, 0)], 0, width)],
      ...[doubt([c], 40, width), doubt([input('long '.repeat(40), 1e9, -1e9)], 40, width)],
    ]);
    const said: string[] = [];
    const drawings = charts.map((chart, k) => ({ id: `d${k}`, chart }));
    const svgs = await chartsToSvg(drawings, { warn: (text) => said.push(text) });
    expect(said).toEqual([]);
    for (const svg of svgs) expect(svg).not.toMatch(/NaN|Infinity/);
    for (const { spec } of charts) {
      expectValid(spec);
      expect(JSON.parse(JSON.stringify(spec))).toEqual(spec);
    }
  });

  test('both ends to one side are told in one word beyond the farther', async () => {
    const [svg] = await chartsToSvg([{ id: 'd', chart: doubt([c]) }]);
    expect(svg).toContain('>low c low, high c high<');
    expect(svg).not.toContain('>c low<');
  });
});

const SIX_YEARS = { years: 6, savedPerYear: 30, discountRate: 0 };
