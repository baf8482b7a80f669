import type { PlanMeasures } from '../../measures/plan-measures.ts';
import { figureText, signedText } from '../../units/figure-text.ts';
import { textTable, WIDTH } from './text-table.ts';
import { wrapText } from './wrap-text.ts';

/** The handbook's estimate beside the simulation, and in words how they agree and why not. */
export function secondOpinionTable(measures: PlanMeasures, width = WIDTH): string {
  const figures = measures.second_opinion;
  const difference =
    figures.ach50_over_20 === null || figures.infiltration_ach_mean === 0
      ? null
      : 100 * (figures.ach50_over_20 / figures.infiltration_ach_mean - 1);
  const rows = [
    [
      'heating [kWh]',
      figureText(figures.degree_day_heating_kwh, 0),
      figureText(measures.heating.useful_kwh, 0),
      signedText(figures.difference_pct, 0),
    ],
    [
      'leakage [1/h]',
      figureText(figures.ach50_over_20, 2),
      figureText(figures.infiltration_ach_mean, 2),
      signedText(difference, 0),
    ],
  ];
  const column = (k: number): string[] => rows.map((row) => row[k]!);
  const table = textTable(
    [
      { head: '', cells: column(0), align: 'left' },
      { head: 'handbook', cells: column(1) },
      { head: 'simulated', cells: column(2) },
      { head: 'difference [%]', cells: column(3) },
    ],
    width,
  );
  const basis =
    `Heat-loss coefficient ${figureText(figures.heat_loss_coefficient_w_per_k, 0)} W/K, ` +
    `${figureText(figures.degree_days_k_d, 0)} degree-days [K d] at the base temperature; vapour ` +
    `excess ${figureText(figures.vapour_excess_g_per_m3, 1)} g/m3, humidity class ` +
    `${figureText(figures.humidity_class, 0)}.`;
  const sentences = measures.notices.filter(({ id }) => id.startsWith('second-opinion-'));
  return [
    table,
    wrapText(basis, '', width),
    ...sentences.map(({ text }) => wrapText(text, '- ', width)),
  ].join('\n');
}
