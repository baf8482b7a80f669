import type { PlanMeasures } from '../../measures/plan-measures.ts';
import type { ReportStudy } from '../../studies/report-study.ts';
import type { NamedBargain } from '../../studies/sweep/setpoint-bargain.ts';
import { figureText } from '../../units/figure-text.ts';
import { sumText } from '../../units/sum-text.ts';
import type { TradeOffData } from '../charts/trade-off-chart.ts';
import { type Html, html } from './html.ts';

/** Which plans and settings of the thermostats no other beats, and where that bargain turns dear. */
export function bargainWords({ bargain, options }: ReportStudy): Html | null {
  if (bargain === null) return null;
  const { front, bend, tried } = bargain;
  const { currency } = options[0]!.measures.money;
  const told = (money: number) =>
    `${sumText(money * perHourADay(options[0]!.measures), 0)} ${currency} a year`;
  const cheap = front[0]!;
  const kind = front.at(-1)!;
  const turns =
    bend === null
      ? front.length === 1
        ? html`${nameOf(cheap)} beats all of them.`
        : html`From ${nameOf(cheap)} to ${nameOf(kind)} it bends nowhere.`
      : html`It bends at <b>${nameOf(bend.at)}</b> (diamond): from ${nameOf(cheap)} up to there an hour a day less outside the bands costs ${told(bend.before)}, from there to ${nameOf(kind)} ${told(bend.after)}.`;
  const at = bend?.at ?? (front.length === 1 ? cheap : null);
  return html`<p><b>Warmth against money:</b> each mark is a plan, hollow where another beats it in both; small dots are the two plans asked about with all thermostats lower and higher. The line joins the ${front.length} of ${tried} plans and settings that no other beats. ${turns}${at === null ? null : coldWords(at)}</p>`;
}

/** What must stand beside a setting that leaves people in the cold. */
function coldWords({ cold }: NamedBargain): Html | null {
  if (cold === null) return null;
  return html` <b>Mind who is in the cold there:</b> somebody is more than 0.5 °C below what is fine in ${cold.room} for ${figureText(cold.hours, 1)} h a day in winter. ${cold.caution} Infants and frail people come before any saving.`;
}

/** What the picture of plans shows besides them. */
export function bargainData({ bargain, options }: ReportStudy): Partial<TradeOffData> {
  if (bargain === null) return {};
  const scale = perHourADay(options[0]!.measures);
  const point = (one: NamedBargain, name: string) => ({
    ...{ name, money: one.money, hours: one.hours / scale },
  });
  return {
    curves: bargain.curves.map(({ plan, points }) => ({
      plan,
      points: points.map((one) => point(one, settingOf(one))),
    })),
    front: bargain.front.map((one) => point(one, nameOf(one))),
    bend: bargain.bend === null ? null : point(bargain.bend.at, nameOf(bargain.bend.at)),
  };
}

const nameOf = (one: NamedBargain): string =>
  one.kelvin === 0
    ? one.plan
    : `${one.plan}${one.setpoint === null ? ', ' : ' at '}${settingOf(one)}`;

const settingOf = ({ setpoint, kelvin }: NamedBargain): string =>
  setpoint === null
    ? `${figureText(Math.abs(kelvin), 0)} °C ${kelvin > 0 ? 'warmer' : 'cooler'}`
    : `${String(Number(setpoint.toFixed(2)))} °C`;

/** Room-hours of the period that are an hour a day in the mean of the rooms. [h] */
const perHourADay = ({ rooms, period }: PlanMeasures): number =>
  (Math.max(1, Object.keys(rooms).length) * period.hours) / 24;
