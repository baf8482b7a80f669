import { figureText } from '../../units/figure-text.ts';
import { sumText } from '../../units/sum-text.ts';
import { textTable } from '../tables/text-table.ts';
import { wrapText } from '../tables/wrap-text.ts';

/** What a run of a home of a stock comes to. */
interface StockRun {
  readonly home: string;
  readonly plan: string;
  /** [currency/year] */
  readonly money: number;
  /** Outside the bands, added up over the rooms. [h] */
  readonly hours: number;
}

/**
 * What plans come to over a stock of homes: the middle home and the tenths beyond it, and in how many
 * homes each plan is the cheapest and has fewest hours outside the bands.
 */
export function stockText(runs: readonly StockRun[], currency: string, width: number): string {
  const plans = [...new Set(runs.map(({ plan }) => plan))];
  const homes = new Map<string, StockRun[]>();
  for (const run of runs) homes.set(run.home, [...(homes.get(run.home) ?? []), run]);
  const best = (of: (run: StockRun) => number) => {
    const won = [...homes.values()].map(
      (own) => own.reduce((least, run) => (of(run) < of(least) ? run : least)).plan,
    );
    return plans.map((plan) => String(won.filter((name) => name === plan).length));
  };
  const spread = (of: (run: StockRun) => number, print = figureText) =>
    plans.map((plan) => {
      const own = runs.filter((run) => run.plan === plan).map(of);
      const [low, middle, high] = tenths(own);
      return `${print(middle, 0)} (${print(low, 0)} to ${print(high, 0)})`;
    });
  const money = ({ money }: StockRun) => money;
  const hours = ({ hours }: StockRun) => hours;
  const table = textTable(
    [
      { head: '\nplan', cells: plans, align: 'left' },
      { head: `money a year\n[${currency}]`, cells: spread(money, sumText) },
      { head: 'outside the bands\n[room h]', cells: spread(hours) },
      { head: 'cheapest in\n[homes]', cells: best(money) },
      { head: 'fewest hours in\n[homes]', cells: best(hours) },
    ],
    width,
  );
  const words = `Over ${homes.size} ${homes.size === 1 ? 'home' : 'homes'}: the middle one, and in brackets all but the lowest and highest tenth.`;
  return `${wrapText(words, '', width)}\n\n${table}`;
}

/** Values with a tenth, half and nine tenths of a list below them, by straight lines between. */
function tenths(list: readonly number[]): [number, number, number] {
  const sorted = list.toSorted((a, b) => a - b);
  const at = (share: number) => {
    const place = share * (sorted.length - 1);
    const [low, high] = [sorted[Math.floor(place)]!, sorted[Math.ceil(place)]!];
    return low + (place % 1) * (high - low);
  };
  return [at(0.1), at(0.5), at(0.9)];
}
