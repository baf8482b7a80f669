import { coldSpotHours, feltColdHours } from '../../measures/comfort/room-hours.ts';
import type { DrawnPlan, PlanDraws } from '../../studies/doubts/plan-draws.ts';
import { type DrawnFigure, drawsChart } from '../charts/draws-chart.ts';
import type { Drawable } from './draw-twice.ts';

/** The picture of all draws: money, wet corners and cold of the whole home. */
export function drawsDrawable(
  { doubt, difference, changesOf }: PlanDraws,
  currency: string,
): Drawable {
  const figure = (
    words: Pick<DrawnFigure, 'name' | 'unit' | 'better'>,
    of: (plan: DrawnPlan) => number,
    { p10, median, p90 }: Pick<DrawnFigure, 'p10' | 'median' | 'p90'>,
  ): DrawnFigure => ({ ...words, decimals: 0, changes: changesOf(of), p10, median, p90 });
  const figures = [
    figure(
      { name: 'money a year', unit: currency, better: 'costs less' },
      ({ measures }) => measures.money.total_per_year,
      difference.money,
    ),
    figure(
      { name: 'wet corners', unit: 'room h', better: 'leaves fewer wet corners' },
      ({ measures }) => coldSpotHours(measures),
      difference.damp,
    ),
    figure(
      {
        name: 'over 0.5 K too cold, somebody in',
        unit: 'room h',
        better: 'leaves people less in rooms that are too cold',
      },
      ({ measures }) => feltColdHours(measures),
      difference.cold,
    ),
  ];
  const data = { plan: difference.plan, baseline: doubt.baseline, figures };
  return { id: 'picture-draws', at: (width) => drawsChart(data, width) };
}
