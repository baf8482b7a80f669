import { coldSpotHours, hoursOutsideBands } from '../../measures/comfort/room-hours.ts';
import type { PlanMeasures } from '../../measures/plan-measures.ts';
import { isWholeYears } from '../../measures/years-in.ts';
import type { PlanDraws } from '../../studies/doubts/plan-draws.ts';
import type { Judged } from '../../studies/effects/plan-figures.ts';
import type { ReportStudy } from '../../studies/report-study.ts';
import { figureText } from '../../units/figure-text.ts';
import { cumulativeMoneyChart } from '../charts/cumulative-money-chart.ts';
import { doubtChart } from '../charts/doubt-chart.ts';
import { type DrawnFigure, drawsChart } from '../charts/draws-chart.ts';
import { tradeOffChart } from '../charts/trade-off-chart.ts';
import { airDrawables } from './air-drawables.ts';
import { bargainData } from './bargain-words.ts';
import type { Drawable } from './draw-twice.ts';
import { inputInWords } from './input-in-words.ts';
import type { PictureData } from './picture-data.ts';
import { PICTURE, type PictureId, withPurchase } from './picture-ids.ts';
import { type Choice, PICTURES, pictureId } from './pictures.ts';

/**
 * Every picture of the page in its order: those of rooms as first chosen, the calendar also
 * with the purchase, then those of money, air and doubt.
 */
export function drawables(study: ReportStudy, data: PictureData, choice: Choice): Drawable[] {
  const { options, purchase } = study;
  const { currency } = options[0]!.measures.money;
  const bought = boughtPlan(study, data);
  const ofRooms = PICTURES.flatMap((picture): Drawable[] => {
    const drawn = (own: Choice, id: PictureId): Drawable => ({
      id,
      at: (width) => picture.draw(data, own, width),
    });
    const first = drawn(choice, pictureId(picture));
    const both = picture.follows.includes('plan') && bought > 0 && WITH_PURCHASE.has(picture.id);
    const second = drawn({ ...choice, plan: bought }, withPurchase(pictureId(picture)));
    return both ? [first, second] : [first];
  });
  const about = purchase?.about.option.name ?? null;
  const money = options.map(({ name, measures }) => ({
    name,
    money: measures.money.total_per_year,
    hours: (24 * hoursOutsideBands(measures)) / roomTime(measures),
  }));
  return [
    ...ofRooms,
    {
      id: PICTURE.tradeOff,
      at: (width) => tradeOffChart({ currency, plans: money, about, ...bargainData(study) }, width),
    },
    ...airDrawables(study),
    ...(purchase === null ? [] : moneyAndDoubt(purchase, currency)),
  ];
}

/** Number of the plan with the purchase among those pictured; -1 for none. */
export const boughtPlan = ({ purchase }: ReportStudy, { plans }: PictureData): number =>
  plans.findIndex(({ name }) => name === purchase?.about.option.name);

function moneyAndDoubt(
  purchase: NonNullable<ReportStudy['purchase']>,
  currency: string,
): Drawable[] {
  const { about, sum, doubt, draws } = purchase;
  const years = Math.max(0, ...about.purchases.map(({ lastsYears }) => Math.floor(lastsYears)));
  const again = sum?.again ?? [];
  const price = sum?.price ?? 0;
  const cumulative: Drawable = {
    id: PICTURE.money,
    at: (width) =>
      cumulativeMoneyChart(
        {
          ...{ device: sum?.device ?? about.option.name, currency, price, years, again },
          savedPerYear: sum === null ? 0 : sum.purchase_cost - sum.net,
          discountRate: about.option.prepared.discountRate,
        },
        width,
      ),
  };
  const wholeYears = isWholeYears(about.option.measures.period.hours);
  const doubts: Drawable = {
    id: PICTURE.doubt,
    at: (width) =>
      doubtChart(
        {
          figure: `extra money a year with ${about.option.name}`,
          unit: currency,
          asIs: doubt.figure,
          inputs: doubt.effects.map(({ path, low, high, at_low, at_high }) => ({
            ...inputInWords(path, about.option.raw),
            low: figureText(low),
            high: figureText(high),
            atLow: at_low,
            atHigh: at_high,
          })),
        },
        width,
      ),
  };
  return [
    ...(years >= 1 && price > 0 && wholeYears ? [cumulative] : []),
    ...(draws === null ? [] : [drawsDrawable(draws, currency)]),
    ...(doubt.effects.length > 0 ? [doubts] : []),
  ];
}

const roomTime = ({ rooms, period }: PlanMeasures): number =>
  Math.max(1, Object.keys(rooms).length) * period.hours;

const WITH_PURCHASE: ReadonlySet<string> = new Set(['calendar']);

/** The picture of all draws: money, wet corners of all rooms, and cold of the room worst off. */
function drawsDrawable(
  { doubt, difference, changesOf, changeOf }: PlanDraws,
  currency: string,
): Drawable {
  const figure = (
    words: Pick<DrawnFigure, 'name' | 'unit' | 'better' | 'decimals'>,
    of: (plan: Judged) => number,
  ): DrawnFigure => ({ ...words, changes: changesOf(of), ...changeOf(of) });
  const figures = [
    figure(
      { name: 'money a year', unit: currency, better: 'costs less', decimals: 0 },
      ({ measures }) => measures.money.total_per_year,
    ),
    figure(
      {
        ...{ name: 'wet corners', unit: '% of the time', decimals: 0 },
        better: 'has fewer wet corners',
      },
      ({ measures }) => (100 * coldSpotHours(measures)) / roomTime(measures),
    ),
    figure(
      {
        ...{ name: 'too cold, room worst off', unit: 'h a day', decimals: 1 },
        better: 'fewer cold hours',
      },
      (plan) => plan.figures.cold.value,
    ),
  ];
  const data = { plan: difference.plan, baseline: doubt.baseline, figures };
  return { id: PICTURE.draws, at: (width) => drawsChart(data, width) };
}
