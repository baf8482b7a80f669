import type { PlanMeasures } from '../../measures/plan-measures.ts';
import { figureText } from '../../units/figure-text.ts';
import { crossCheckRows } from '../cross-check-rows.ts';
import { figureTable } from './figure-table.ts';
import { type Html, html } from './html.ts';
import type { ReportInput } from './report-input.ts';
import { details, list, type Section } from './section.ts';

/** How the figures come about, how well their sums close, and everything needed to make them again. */
export function methodSection(input: ReportInput): Section {
  const { study, text, weather } = input;
  const { prepared, measures } = study.options[0]!;
  return {
    id: 'method',
    title: 'Method',
    body: html`
<div class="columns"><p>The home is a set of rooms with well-mixed air. Each room has a temperature, a humidity and a concentration of each pollutant; walls, floors, roofs, furniture and furnishings store heat and water. Every ${prepared.dt / 60} minutes all of them are solved together from outdoor weather, sun, people, appliances, devices, heating, leaks, doors and windows.</p>
<p>Heat flows by temperature differences and with the air, through walls by chains of resistances and capacities; air leaks by wind and by warmth rising, and passes open windows and doors by published formulas. Water vapour goes with the same air; a part of it goes into walls and fabrics and comes back. The coldest spot of a room lies as far below the room's temperature as its factor says; mould there grows and dies back by the VTT index. Heating gives what thermostats ask for and emitters can give.</p>
<p>Plans differ in nothing but what they change: same weather, same people, same luck. Energy is priced by the meter's hours; what is bought is spread over its life as an annuity. Proposals and break-evens are runs of the same home, except where only a price changes. What it cannot see: draughts within a room, cold corners other than the one its factor stands for, leaks, ground water, rain on walls, and what people do when they feel cold.</p>
${balances(study.options.map((option) => option.measures))}
<p>${study.runs} runs of ${Math.round(measures.period.hours / 24)} days, from ${instant(measures.period.from)} to ${instant(measures.period.to)} UTC. Weather: ${weather.title}.</p></div>
${details('Handbook cross-check', handbookCrossCheck(input))}
${details('The scenario file', html`<pre tabindex="0" aria-label="Text of the scenario file"><code>${text.replaceAll('\r\n', '\n')}</code></pre>`)}`,
  };
}

/** "2023-01-01 00:00" of an instant as the measures write it. */
const instant = (iso: string): string => iso.slice(0, 16).replace('T', ' ');

/** Residuals are relative to what passed through. */
function balances(plans: readonly PlanMeasures[]): Html {
  const worst = (of: (plan: PlanMeasures) => number) =>
    Math.max(...plans.map((plan) => Math.abs(of(plan)))).toExponential(1);
  return figureTable({
    named: 'balances',
    caption:
      'Balances: what went in, less what went out and what is stored, over what passed through; the worst of all plans',
    heads: ['balance', 'energy', 'water', 'air', 'what the air carries'],
    rows: [
      [
        'residual',
        worst(({ balance }) => balance.energy_residual),
        worst(({ balance }) => balance.water_residual),
        worst(({ balance }) => balance.air_residual),
        worst(({ balance }) => balance.pollutant_residual),
      ],
    ],
  });
}

/** Handbook rules beside the simulation of doing nothing. */
function handbookCrossCheck({ study }: ReportInput): Html {
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
