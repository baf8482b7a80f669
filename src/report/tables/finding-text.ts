import type { Finding } from '../../studies/find/finding.ts';
import { capital } from '../../units/capital.ts';
import { figureText } from '../../units/figure-text.ts';
import { sumText } from '../../units/sum-text.ts';
import { columnsOf, textTable } from './text-table.ts';
import { wrapText } from './wrap-text.ts';

/** What was looked for, what was found, and the runs that led there. */
export function findingText(finding: Finding, currency: string, width: number): string {
  const { question, answer, low, high, tolerance, unit, figure, runs } = finding;
  const around = unit === '-' ? 'K' : unit;
  const searched = `Searched from ${figureText(low)} to ${figureText(high)} ${around}, to ${figureText(tolerance)} ${around}; figures are of the period, money is a year's.`;
  const decimals = runs.some((run) => Math.abs(run.figure) < 100) ? 1 : 0;
  const { figures, words } = columnsOf(runs);
  const table = textTable(
    [
      words('tried', ({ tried }) => tried),
      figures(`${currency}\na year`, ({ money }) => sumText(money, 0)),
      figures(wrapText(figure, '', NARROW), (run) => figureText(run.figure, decimals)),
      words('does it', ({ holds }) => (holds ? 'yes' : 'no')),
    ],
    width,
  );
  return [
    wrapText(capital(question), '', width),
    wrapText(answer.join(' '), '', width),
    table,
    wrapText(searched, '', width),
  ].join('\n\n');
}

/** Characters of a line of a heading. */
const NARROW = 18;
