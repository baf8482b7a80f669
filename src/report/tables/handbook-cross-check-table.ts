import type { PlanMeasures } from '../../measures/plan-measures.ts';
import { figureText } from '../../units/figure-text.ts';
import { crossCheckRows } from '../cross-check-rows.ts';
import { textTable } from './text-table.ts';
import { wrapText } from './wrap-text.ts';

/** Rules of thumb beside the simulation, and in words how they agree and why not. */
export function handbookCrossCheckTable(measures: PlanMeasures, width: number): string {
  const figures = measures.handbook_cross_check;
  const rows = crossCheckRows(measures);
  const column = (k: number): string[] => rows.map((row) => row[k]!);
  const table = textTable(
    [
      { head: '', cells: column(0), align: 'left' },
      { head: 'rule of\nthumb', cells: column(1) },
      { head: 'simulated', cells: column(2) },
      { head: 'difference\n[%]', cells: column(3) },
    ],
    width,
  );
  const basis =
    'Rules of thumb beside the simulation. The heating one: ' +
    `${figureText(figures.heat_loss_coefficient_w_per_k, 0)} W lost for each kelvin warmer than ` +
    `outdoors, times ${figureText(figures.degree_days_k_d, 0)} degree-days, which add up by how ` +
    'much each day was too cold to do without heating.';
  const sentences = measures.notices.filter(({ id }) => id.startsWith('handbook-cross-check-'));
  return [
    wrapText(basis, '', width),
    table,
    ...sentences.map(({ text }) => wrapText(text, '- ', width)),
  ].join('\n');
}
