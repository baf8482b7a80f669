import { figureText } from '../../units/figure-text.ts';
import { crossCheckRows } from '../cross-check-rows.ts';
import { figureTable } from './figure-table.ts';
import { type Html, html } from './html.ts';
import type { ReportInput } from './report-input.ts';
import { list } from './section.ts';

/** Handbook rules beside the simulation of doing nothing. */
export function handbookCrossCheck({ study }: ReportInput): Html {
  const { measures } = study.options[0]!;
  const figures = measures.handbook_cross_check;
  const sentences = measures.notices.filter(({ id }) => id.startsWith('handbook-cross-check-'));
  return html`
<p>Rules of thumb from handbooks, which know nothing of hours, beside the simulation of ${measures.plan}. They should come near each other; where they do not, the reason is given.</p>
${figureTable({
  caption: 'Rules of thumb and the simulation',
  heads: ['figure', 'rule of thumb', 'simulated', 'difference [%]'],
  rows: crossCheckRows(measures),
})}
${list(sentences.map(({ text }) => text))}
<p>The heating rule: ${figureText(figures.heat_loss_coefficient_w_per_k, 0)} W lost for each kelvin warmer than outdoors × ${figureText(figures.degree_days_k_d, 0)} degree-days × 24 h. Humidity class ${figures.humidity_class} of 5, by ISO 13788: ${figureText(figures.vapour_excess_g_per_m3, 1)} g/m³ more vapour indoors than out in the heating season.</p>`;
}
