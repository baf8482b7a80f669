import type { Tariff } from '../../../home/prices.ts';
import { InputProblems, type Problem } from '../../../units/problem.ts';
import { INSTANT_WORDS, instantOf } from '../instant-text.ts';

/**
 * Prices by the half-hour (or any even spacing) from CSV: a header, then time and price.
 *
 * Times are ISO 8601 with their distance from UTC, such as 2024-01-01T00:30Z; prices are a kWh and
 * may be negative. They repeat after the last.
 *
 * @throws InputProblems with everything that is wrong, each with its line
 */
export function priceSeries(text: string, file: string): Extract<Tariff, { by: 'series' }> {
  const problems: Problem[] = [];
  const times: number[] = [];
  const prices: number[] = [];
  const say = (line: number, column: number, where: string, expected: string, got: string) =>
    problems.push({ file, line, column, where, expected, got, hint: '' });
  const lines = text.replace(/^\ufeff/, '').split(/\r?\n/);
  lines.forEach((row, k) => {
    if (row.trim() === '' || (k === 0 && /^[a-z_"]/i.test(row.trim()))) return;
    const cells = row.split(',').map((cell) => cell.trim());
    const time = instantOf(cells[0]);
    const price = cells[1] === undefined || cells[1] === '' ? Number.NaN : Number(cells[1]);
    const shown = (cell: string | undefined) => (cell ? JSON.stringify(cell) : 'nothing');
    if (cells.length !== 2) say(k + 1, 1, 'row', 'a time and a price', `${cells.length} cells`);
    else if (Number.isNaN(time)) say(k + 1, 1, 'time', INSTANT_WORDS, shown(cells[0]));
    else if (!(Math.abs(price) <= HIGHEST)) {
      say(k + 1, row.indexOf(',') + 2, 'price', 'a price of a kWh', shown(cells[1]));
    } else {
      const before = times.at(-1);
      const step = times.length > 1 ? times[1]! - times[0]! : null;
      if (before !== undefined && time <= before) {
        say(k + 1, 1, 'time', 'a later time than the row before', shown(cells[0]));
      } else if (step !== null && before !== undefined && time - before !== step) {
        const expected = `${step / 60} min after the row before, as at the start`;
        say(k + 1, 1, 'time', expected, `${(time - before) / 60} min`);
      }
      times.push(time);
      prices.push(price);
    }
  });
  if (problems.length === 0 && times.length < 2) {
    say(0, 0, '', 'at least two prices', `${times.length}`);
  }
  if (problems.length > 0) throw new InputProblems(problems.slice(0, MOST_SAID));
  const [start, second] = times as [number, number];
  return { by: 'series', start, step: second - start, prices: Float64Array.from(prices) };
}

const MOST_SAID = 20;

/** Far above a price of a kWh in any currency; sums of a year stay finite. */
const HIGHEST = 1e6;
