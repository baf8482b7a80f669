import type { Finding } from '../../studies/find/finding.ts';
import { capital } from '../../units/capital.ts';
import { figureText } from '../../units/figure-text.ts';
import { textTable } from './text-table.ts';
import { wrapText } from './wrap-text.ts';

/** What was looked for, what was found, and the runs that led there. */
export function findingText(finding: Finding, currency: string, width: number): string {
  const { question, answer, low, high, tolerance, unit, figure, runs } = finding;
  const around = unit === '-' ? 'K' : unit;
  const [first = '', ...rest] = answer;
  const head = capital(question);
  const searched = `Searched from ${figureText(low)} to ${figureText(high)} ${around}, to ${figureText(tolerance)} ${around}; figures are of the period, money is a year's.`;
  const decimals = runs.some((run) => Math.abs(run.figure) < 100) ? 1 : 0;
  const table = textTable(
    [
      { head: 'tried', cells: runs.map(({ tried }) => tried), align: 'left' },
      { head: `${currency}\na year`, cells: runs.map(({ money }) => figureText(money, 0)) },
      {
        head: wrapText(figure, '', NARROW),
        cells: runs.map((run) => figureText(run.figure, decimals)),
      },
      { head: 'does it', cells: runs.map(({ holds }) => (holds ? 'yes' : 'no')), align: 'left' },
    ],
    width,
  );
  return [
    wrapText(head, '', width),
    wrapText([first, ...rest].join(' '), '', width),
    table,
    wrapText(searched, '', width),
  ].join('\n\n');
}

/** Characters of a line of a heading. */
const NARROW = 18;
