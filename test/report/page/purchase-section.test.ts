import { beforeAll, describe, expect, test } from 'vitest';
import { html } from '../../../src/report/page/html.ts';
import { purchaseSection } from '../../../src/report/page/purchase-section.ts';
import type { PurchaseStudy } from '../../../src/studies/plan-study.ts';
import type { PurchaseSum } from '../../../src/studies/purchase/purchase-sum.ts';
import { purchaseSum } from '../../../src/studies/purchase/purchase-sum.ts';
import type { ReportStudy } from '../../../src/studies/report-study.ts';
import { withoutGroups } from '../../../src/units/sum-text.ts';
import { compare } from '../../reference/compare.ts';
import { somePlan } from '../../studies/some-plan.ts';
import { COTTAGE, DRY_PLAN, ranPlan, studyOf } from './cottage.ts';
import { type Element, readMarkup, tableOf, textOf } from './read-markup.ts';

const printed = (purchase: PurchaseStudy): Element =>
  readMarkup(purchaseSection(purchase, html``).body.markup);

/** Hundredths of a product of printed figures, halves up: what a pocket calculator and a pencil give. */
const cents = (value: number): number => Math.round(Number((100 * value).toPrecision(12)));

/** Does the printed sum again, from nothing but what stands on the page. */
function expectRedone(page: Element, currency: string): void {
  const [heads, ...printedRows] = tableOf(page, /^The sum/);
  // A calculator has no minus sign of its own, and no blanks in figures.
  const rows = printedRows.map((row) => row.map((cell) => withoutGroups(cell.replace(/^−/, '-'))));
  expect(heads).toEqual(['line', 'figure', 'unit', 'added']);
  const at = (text: RegExp) => rows.findIndex(([line]) => text.test(line!));
  const figure = (row: number) => Number(rows[row]![1]);

  rows.forEach(([line], row) => {
    if (!line!.startsWith('price: ')) return;
    const [, years, rate = ''] = rows.slice(row, row + 3).map(([text]) => text!);
    expect(years).toBe('lasts');
    const interest = Number(/at ([\d.]+) % interest/.exec(rate)![1]) / 100;
    const factor = (1 - (1 + interest) ** -figure(row + 1)) / interest;
    expect(rows[row + 2]![1]).toBe(String(Number(factor.toFixed(5))));
    expect(rows[row + 3]![0]).toBe(line!.replace('price', 'purchase cost'));
    expect(cents(figure(row + 3))).toBe(cents(figure(row) / figure(row + 2)));
  });
  const kwh = at(/^electricity of/);
  if (kwh >= 0) {
    expect(rows[kwh + 1]).toEqual([
      expect.stringMatching(/^price of it, /),
      expect.any(String),
      `${currency}/kWh`,
      '',
    ]);
    expect(rows[kwh + 2]![0]).toBe('running');
    expect(cents(figure(kwh + 2))).toBe(cents(figure(kwh) * figure(kwh + 1)));
  }
  rows.forEach(([line], row) => {
    const [, fuel, use, more] = /^(.+) for (heating|cooling), (less|more)$/.exec(line!) ?? [];
    if (fuel === undefined) return;
    expect(rows[row + 1]![0]).toMatch(/^price of that, /);
    expect(rows[row + 1]![2]).toBe(`${currency}/kWh`);
    expect(rows[row + 2]![0]).toContain(`${use} by ${fuel}`);
    const sign = more === 'less' ? -1 : 1;
    expect(cents(figure(row + 2))).toBe(sign * cents(figure(row) * figure(row + 1)));
  });

  const added = rows.filter(([, , , sum]) => sum !== '');
  for (const [line, value, unit, sum] of added) {
    expect(Number(sum), line).toBe(Number(value));
    expect(unit).toBe(`${currency} a year`);
  }
  const total = added.reduce((all, [, , , sum]) => all + cents(Number(sum)), 0);
  expect(rows.at(-1)![0]).toBe('net');
  expect(cents(figure(rows.length - 1))).toBe(total);
  for (const [line, value] of rows) expect(Number(value), line).not.toBe(0);
}

/** A quotient that the page prints as "a ÷ b = c", to the last digit of c. */
function expectQuotient(words: string): void {
  const [, a, b, c] =
    /(-?[\d.]+) \w+ ÷ ([\d.]+)[^=]* = (-?[\d.]+)/.exec(withoutGroups(words)) ?? [];
  const decimals = c!.split('.')[1]?.length ?? 0;
  expect((Number(a) / Number(b)).toFixed(decimals)).toBe(c);
}

let purchase: PurchaseStudy;
beforeAll(async () => {
  purchase = bought(await studyOf(COTTAGE + DRY_PLAN));
});

describe('a dehumidifier with a price', () => {
  let page: Element;
  let words = '';

  beforeAll(() => {
    page = printed(purchase);
    words = textOf(page);
  });

  test('is a sum that can be done again from the page', () => {
    expectRedone(page, 'GBP');
    const [, price, , , purchaseCost] = tableOf(page, /^The sum/);
    expect(price).toEqual(['price: drier', '180', 'GBP', '']);
    expect(purchaseCost).toEqual(['purchase cost: drier', '25.64', 'GBP a year', '+25.64']);
    expect(words).toContain('drier: 180.00 GBP, lasts 8 years');
  });

  test('prices an hour of dryness as net over hours, both as printed', () => {
    expect(purchase.sum.payback_years).toBeNull();
    const [sentence = ''] = /What is bought is dryness: .* each/.exec(words) ?? [];
    expect(sentence).toContain(`${purchase.sum.net.toFixed(2)} GBP ÷ `);
    expectQuotient(sentence);
    expect(words).toMatch(/No payback\. The bill does not fall: it rises by [\d.]+ GBP a year/);
  });

  test('gets its heat credited once', () => {
    expect(words.match(/Heat credit\./g)).toHaveLength(1);
    expect(words).toContain('is credited once');
  });

  test('stands beside the same safety by heat alone, with the same net', () => {
    const safe = purchase.equalSafety!;
    const [, ...rows] = tableOf(page, /^Cold spot of the nook$/);
    const net = tableOf(page, /^The sum/).at(-1)![1]!;
    expect(rows).toEqual([
      ['as it is', String(safe.hours_as_is), '0.00'],
      ['with dry', String(safe.hours_with_device), Number(net).toFixed(2)],
      [
        `kept ${safe.warmer_by_k!.toFixed(1)} °C warmer`,
        String(safe.hours_warmer),
        safe.extra_per_year!.toFixed(2),
      ],
    ]);
    expect(Number(rows[2]![1])).toBeLessThanOrEqual(Number(rows[1]![1]));
  });

  test('says so where no warmth is as safe', () => {
    const safe = { ...purchase.equalSafety!, note: 'not within +5 °C' };
    const far = { ...safe, warmer_by_k: null, extra_per_year: null, hours_warmer: null };
    const rows = tableOf(printed({ ...purchase, equalSafety: far }), /^Cold spot/);
    expect(rows.at(-1)).toEqual(['kept warmer: not within +5 °C', '-', '-']);
  });

  test('is named by what a person wrote, as text', () => {
    expect(words).toContain('dry: a <drier> in the nook');
  });

  describe('in other worlds', () => {
    const withSum = (over: Partial<PurchaseSum>, about = {}): string =>
      textOf(
        printed({
          ...purchase,
          about: { ...purchase.about, ...about },
          sum: { ...purchase.sum, payback_years: null, npv: null, ...over },
        }),
      );

    test('that save without a known price, no payback is claimed and no bill that rises', () => {
      const said = withSum({ price: 0, purchase_cost: 0, net: -15 });
      expect(said).toContain(
        'No payback. The bill falls by 15.00 GBP a year, but no price is known that it could pay back.',
      );
      expect(said).not.toContain('rises');
    });

    test('that cost nothing more, the bill stays the same', () => {
      const said = withSum({ purchase_cost: 25.64, net: 25.64 });
      expect(said).toContain('The bill does not fall: it stays the same, so that there is no cash');
    });

    test.each([0, 0.4, -30])('that avoid %s damp hours, none gets a price', (avoided) => {
      expect(withSum({ damp_hours_avoided_per_year: avoided })).toContain(
        `but it takes away no room-hour above the humidity band (${Math.round(avoided)} a year), so that no price for one can be given.`,
      );
    });

    test('where few damp hours are avoided, the quotient is still of what is printed', () => {
      const said = withSum({ net: 100, damp_hours_avoided_per_year: 2.6 });
      expect(said).toContain(
        '100.00 GBP ÷ 3 room-hours above the humidity band avoided = 33.3 GBP',
      );
    });

    test('in which it does not dry, dryness is not what is bought', () => {
      expect(withSum({}, { dries: false })).not.toContain('dryness');
    });
  });

  test('that saves prints the payback and the worth of the published example', () => {
    const plan = (name: string, energy: number) => {
      const made = somePlan(name, { energy });
      const drier = { ...NOTHING_DONE, hours: 100 };
      return { ...made, devices: { ...made.devices, detail: { drier } } };
    };
    const buys = [{ what: 'drier', price: 10_000, lastsYears: 6 }];
    const measures = plan('dry', 7500);
    const prepared = { ...purchase.about.option.prepared, discountRate: 0.08 };
    const sum = purchaseSum({
      ...{ baseline: plan('now', 10_000), plan: measures, device: 'drier', purchases: buys },
      ...{ discountRate: 0.08, prices: { currency: 'GBP', fuels: {} }, label: null },
    });
    const option = { ...purchase.about.option, measures, prepared };
    const saving = printed({
      ...purchase,
      about: { ...purchase.about, purchases: buys, option },
      sum,
    });
    expectRedone(saving, 'GBP');
    const said = /Payback\. (.*)\./.exec(textOf(saving))![1]!;
    expectQuotient(said);
    expect(said).toBe(
      'The bill falls by 2500.00 GBP a year: 10\u202f000.00 GBP ÷ 2500.00 = 4.0 years without interest. ' +
        'Over its life, with money a year later worth 8.00 % less, 2500.00 × 4.62288 − 10\u202f000.00 = ' +
        "1557.20 GBP in today's money",
    );
    const row = { topic: 'Economics', source: STUDY_SITE, mark: 'published arithmetic' } as const;
    compare({
      ...{
        ...row,
        what: 'payback of 2500 a year for 10 000, as a report prints it',
        unit: 'years',
      },
      ...{ expected: 4, got: Number(/= ([\d.]+) years/.exec(said)![1]) },
      ...{ tolerance: { absolute: 0.05 }, because: 'half the last digit printed' },
    });
    compare({
      ...{ ...row, what: 'worth of 2500 a year for 10 000, 8 %, 6 years, as a report prints it' },
      ...{ unit: 'money', expected: 1557.2, got: Number(/= ([\d.]+) GBP in/.exec(said)![1]) },
      ...{ tolerance: { absolute: 0.01 }, because: 'the last digit printed' },
    });
  });
});

describe('with electric heating every kWh is paid at the price of its own hours', () => {
  const halfHours = Array.from({ length: 10 * 48 }, (_, k) => {
    const time = new Date(Date.UTC(2023, 0, 5) + k * 1_800_000).toISOString().slice(0, 16);
    return `${time}Z,${(0.1 + 0.3 * ((k % 48) / 48)).toFixed(5)}`;
  });
  const files = [['p.csv', `time,price\n${halfHours.join('\n')}\n`]] as const;

  test.each([
    ['flat', '{ price: 0.27, standing: 0.5 }', 'the same at all hours'],
    [
      'day and night',
      '{ day: 0.27, night: 0.12, night hours: "00:30-07:00" }',
      'mean of the hours in which it ran',
    ],
    ['half-hourly', '{ prices: p.csv }', 'mean of the hours in which it ran'],
  ])('%s: the sum can be done again from the page', (_, electricity, how) => {
    const text = (COTTAGE + DRY_PLAN)
      .replace('electricity: { price: 0.27, standing: 0.5 }', `electricity: ${electricity}`)
      .replace('heating: {', 'heating: { source: direct electric, ');
    const [now, dry] = [ranPlan(text, 'now', files), ranPlan(text, 'dry', files)];
    const { purchases, option } = purchase.about;
    const { prices, discountRate } = dry.prepared;
    const sum = purchaseSum({
      ...{ baseline: now.measures, plan: dry.measures, device: 'drier', purchases },
      ...{ discountRate, prices, label: null },
    });
    const about = { ...purchase.about, option: { ...option, ...dry } };
    const page = printed({ ...purchase, about, sum });
    expectRedone(page, 'GBP');
    const rows = tableOf(page, /^The sum/);
    expect(rows.find(([line]) => line!.startsWith('price of it'))![0]).toContain(how);
    expect(rows.map(([line]) => line)).toContain('electricity for heating, less');
    // What the lines leave over is rounding, not money without a name.
    expect(rows.some(([line]) => line!.startsWith('what else'))).toBe(false);
    const { electricity_kwh, electricity_money } = dry.measures.devices.detail['drier']!;
    const years = 10 / 365.25; // by the mean calendar year
    expect(sum.running).toBeCloseTo(electricity_money! / years, 0);
    expect(electricity_kwh).toBeGreaterThan(0);
  });
});

describe('the one that the program proposes', () => {
  test('has an assumed price, told with its range and source', async () => {
    const page = printed(bought(await studyOf(COTTAGE)));
    expectRedone(page, 'GBP');
    expect(textOf(page)).toContain(
      'The price of the dehumidifier is assumed; it may be 120 to 260 GBP (common practice).',
    );
  });

  test('has none where no price is known in the currency, and the purchase cost is nothing', async () => {
    const page = printed(bought(await studyOf(COTTAGE.replace('GBP', 'Taler'))));
    expectRedone(page, 'Taler');
    expect(textOf(page)).toContain(
      'No price is known in Taler, so that the purchase cost is counted as nothing. Give the plan a price under “purchases”.',
    );
    expect(tableOf(page, /^The sum/).some(([line]) => /^(price|purchase cost): /.test(line!))).toBe(
      false,
    );
    expect(textOf(page)).not.toContain('is assumed');
  });
});

function bought({ purchase }: ReportStudy): PurchaseStudy {
  if (purchase === null || purchase.sum === null) throw new Error('nothing is bought');
  return { ...purchase, sum: purchase.sum };
}

const STUDY_SITE = 'worked solution on a study site (8 %, 6 years)';
const NOTHING_DONE = {
  ...{
    electricity_kwh: 0,
    electricity_money: null,
    fuel_kwh: 0,
    water_kg: 0,
    heat_kwh: 0,
    hours: 0,
    starts: 0,
    emptied: 0,
    hours_4_pa_below_outdoors: null,
  },
};
