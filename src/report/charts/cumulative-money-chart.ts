import { figureText } from '../../units/figure-text.ts';
import { signedSum, sumText } from '../../units/sum-text.ts';
import type { Chart } from './chart.ts';
import { chartFrame, isNarrow, moneyLabels, uprightAxis } from './chart-frame.ts';
import { endLabels, roomForNames } from './end-labels.ts';
import { seriesChannels } from './palette.ts';

/** A device that is bought, and what it does to the bills. */
export interface CumulativeMoneyData {
  readonly device: string;
  readonly currency: string;
  /** Paid at the start. [currency] */
  readonly price: number;
  /** Bought again before the end, each after how many years. */
  readonly again?: readonly Again[];
  /** Whole years that it lasts. */
  readonly years: number;
  /** Saving at the end of every year; negative where it costs more. [currency/year] */
  readonly savedPerYear: number;
  /** [1/year] */
  readonly discountRate: number;
}

/** What is bought again; below 0 what is not bought again then. */
interface Again {
  /** [currency] */
  readonly price: number;
  readonly afterYears: number;
  /** Share of it that counts where it outlasts the end, as counted and in today's money; absent for all. [-] */
  readonly share?: { readonly counted: number; readonly today: number };
}

/** Money in hand since the purchase, year by year, as counted and in today's money. */
export function cumulativeMoneyChart(data: CumulativeMoneyData, width: number): Chart {
  const { device, currency, price, years, savedPerYear, discountRate } = data;
  const plain = balanceByYear(data, 'counted');
  const today = balanceByYear(data, 'today');
  const lines = [
    { name: 'as counted', values: plain },
    ...(discountRate > 0 ? [{ name: "in today's money", values: today }] : []),
  ];
  const end = plain.at(-1)!;
  const payback = paidBackAfter(plain, savedPerYear);
  const life = `its life of ${years} ${years === 1 ? 'year' : 'years'}`;
  const title =
    payback <= years
      ? `${device} pays back after ${figureText(payback, 1)} years and is ${sumText(end, 0)} ${currency} ahead at the end of ${life}`
      : `${device} does not pay back within ${life}: by then it has cost ${sumText(-end, 0)} ${currency}`;
  const all = lines.flatMap(({ values }) => values);
  const pad = Math.max(1, 0.06 * (Math.max(0, ...all) - Math.min(0, ...all)));
  const domain: [number, number] = [Math.min(0, ...all) - pad, Math.max(0, ...all) + pad];
  const height = isNarrow(width) ? 240 : 260;
  const right = roomForNames(
    lines.map(({ name }) => name),
    width,
  );
  const x = {
    field: 'year',
    type: 'quantitative',
    scale: { domain: [0, years], nice: false },
    axis: {
      title: 'Years since the purchase',
      values: Array.from({ length: years + 1 }, (_, k) => k),
      format: 'd',
      grid: false,
    },
  };
  const y = {
    field: 'v',
    type: 'quantitative',
    scale: { domain, nice: false },
    axis: uprightAxis(`Money in hand since the purchase [${currency}]`, 30, moneyLabels('.0f')),
  };
  const spec = chartFrame({
    width,
    height,
    description: title,
    layer: [
      {
        data: { values: [{ v: 0 }] },
        mark: { type: 'rule', opacity: 0.7 },
        encoding: { y },
      },
      {
        data: {
          values: lines.flatMap(({ values }, series) =>
            values.map((v, year) => ({ year, v: Math.round(v * 100) / 100, series })),
          ),
        },
        mark: { type: 'line', strokeWidth: 2 },
        encoding: { x, y, ...seriesChannels(lines.map((_, k) => k)) },
      },
      ...endLabels(
        lines.map(({ name, values }) => ({ name, value: values.at(-1)! })),
        domain,
        height - 64,
        right,
      ),
    ],
  });
  return {
    title,
    description:
      `Money since ${device} was bought for ${sumText(price, 0)} ${currency}, at the end of each ` +
      `year, with ${signedSum(savedPerYear, 0)} ${currency} a year` +
      `${discountRate > 0 ? `; in today's money at ${figureText(100 * discountRate, 1)} % a year` : ''}. ` +
      `At the end: ${lines.map(({ name, values }) => `${name} ${signedSum(values.at(-1), 0)}`).join(', ')}.`,
    spec,
    along: { row: 0, from: 0, step: 1 },
    table: {
      headers: ['year', ...lines.map(({ name }) => `${name} [${currency}]`)],
      rows: plain.map((_, year) => [
        String(year),
        ...lines.map(({ values }) => signedSum(values[year], 0)),
      ]),
    },
  };
}

/**
 * Money in hand after 0, 1, 2 and so on years; the last is the net present value at that rate. What
 * is bought again is paid at the end of the year in which the one before wears out, the last of it by
 * the share that counts.
 */
function balanceByYear(
  { price, years, savedPerYear, again = [], discountRate }: CumulativeMoneyData,
  how: 'counted' | 'today',
): number[] {
  const rate = how === 'today' ? discountRate : 0;
  let balance = -price;
  const balances = [balance];
  for (let year = 1; year <= years; year++) {
    const worn = again.filter((one) => Math.ceil(one.afterYears) === year && year < years);
    const paid = worn.reduce((sum, one) => sum + one.price * (one.share?.[how] ?? 1), 0);
    balance += (savedPerYear - paid) / (1 + rate) ** year;
    balances.push(balance);
  }
  return balances;
}

/**
 * When money in hand last rises to 0, on straight lines from year to year but for what is paid, or not
 * paid, at the end of one. [year]
 */
function paidBackAfter(balances: readonly number[], savedPerYear: number): number {
  const year = balances.findLastIndex((balance) => balance < 0) + 1;
  if (year === 0) return 0;
  if (year >= balances.length) return Number.POSITIVE_INFINITY;
  const before = balances[year - 1]!;
  return before + savedPerYear < 0 ? year : year - 1 - before / savedPerYear;
}
