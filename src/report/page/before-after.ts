import { airLevel } from '../../measures/air/air-level.ts';
import type { PlanMeasures } from '../../measures/plan-measures.ts';
import type { PlanLine } from '../../studies/answers/comparison-answers.ts';
import type { PlanDraws, Spread } from '../../studies/doubts/plan-draws.ts';
import type { Effect } from '../../studies/effects/effect.ts';
import type { Judged, PlanFigures } from '../../studies/effects/plan-figures.ts';
import type { Option } from '../../studies/options.ts';
import type { ReportStudy } from '../../studies/report-study.ts';
import { capital } from '../../units/capital.ts';
import { signedWithMinus } from '../../units/minus-sign.ts';
import { relativeChange } from '../../units/relative-change.ts';
import { sumText, withoutGroups } from '../../units/sum-text.ts';
import { airDecimals } from '../air-decimals.ts';
import { type Html, html } from './html.ts';
import { type Strip, strip } from './strip.ts';

/** A figure as it is and with what is asked about. */
interface BeforeAfter {
  readonly title: string;
  readonly unit: string;
  readonly before: number;
  readonly after: number;
  readonly decimals: number;
  /** The figure of any plan. */
  readonly of: (plan: Judged) => number;
}

/**
 * Three figures before and after: of a purchase that dries, the damp of its room; of any other plan,
 * the two things that it changes most for those who live with it; and the money; each with how far
 * what is doubtful lets the plan change it. Where no plan leads the page they are told as they are.
 */
export function beforeAfter(study: ReportStudy): Html {
  const plan = leadingPlan(study);
  const figures = [...felt(study, plan), money(study, plan)];
  const asked = plan !== null;
  const draws = study.purchase?.draws ?? null;
  return html`<dl class="figures">${figures.map((figure) => card(figure, asked, draws))}</dl>
${asked ? html`<p class="key"><span class="ring"></span> as it is, <span class="disc"></span> with ${plan.name}${draws === null ? null : drawsKey(draws)}</p>` : null}`;
}

/** The plan asked about, else the one that answers the first question; null for none. */
export const leadingPlan = ({ purchase, asked, options }: ReportStudy): Option | null =>
  purchase?.about.option ?? options.find(({ name }) => name === asked.questions[0]?.plan) ?? null;

const drawsKey = ({ doubt }: PlanDraws): Html =>
  html`; <span class="reach"></span> where it leads with all that is doubtful varied, ${doubt.samples} times; changes are without the lowest and highest tenth`;

function card(figure: BeforeAfter, asked: boolean, draws: PlanDraws | null): Html {
  const { title, unit, before, after, decimals } = figure;
  const was = sumText(before, decimals);
  const is = sumText(after, decimals);
  const more = Number(withoutGroups(is)) - Number(withoutGroups(was));
  const change = draws?.changeOf(figure.of) ?? null;
  const ends = change === null ? [] : [before + change.p10, before + change.p90];
  const to = Math.max(before, after, ...ends) * 1.1;
  const look = more > 0 ? 'worse' : more < 0 ? 'better' : 'same';
  return html`<div><dt>${capital(title)}</dt><dd>${
    asked
      ? html`<span class="was">${was}</span> <span class="was" aria-hidden="true">→</span><span class="heard"> becomes </span> <b class="${look}">${is}</b>`
      : html`<b class="same">${was}</b>`
  } <span class="unit">${unit}${asked ? null : ', as it is'}</span>${asked ? drawn({ from: 0, to, baseline: before, plan: after, look, reach: reachOf(ends) }) : null}${
    change === null ? null : html`<small>${changeWords(change, decimals)}</small>`
  }</dd></div>`;
}

/** As wide as a column of a page, and beside the figure on a phone. */
const drawn = (figure: Strip): Html =>
  html`<span class="wide-only">${strip(figure, 220)}</span><span class="narrow-only">${strip(figure, 96)}</span>`;

const reachOf = ([low, high]: readonly number[]) =>
  low === undefined || high === undefined ? null : ([Math.max(0, low), Math.max(0, high)] as const);

/** Between which ends the draws lead; the two figures above say what it is as things are taken to be. */
function changeWords({ p10, p90 }: Spread, decimals: number): string {
  const [low, high] = [p10, p90].map((value) => signedWithMinus(value, decimals));
  return low === high ? `change ${low}` : `change ${low} to ${high}`;
}

function felt(study: ReportStudy, plan: Option | null): BeforeAfter[] {
  const { purchase, lines, options } = study;
  const [baseline] = options;
  const was = lines[0]!.figures;
  const line = lines.find(({ figures }) => figures.plan === plan?.name);
  if (purchase?.about.dries) {
    const { room, option } = purchase.about;
    return dampOf(room, baseline!.measures, option.measures);
  }
  const ofEffects = (line?.effects ?? []).map(({ of, figure }) => figure ?? of);
  const kinds = [...new Set([...ofEffects, ...USUAL])].filter((kind) => kind !== 'air');
  const air = line ? airOf(was, line) : [];
  const rest = kinds.map((kind) => KINDS[kind](was, line?.figures ?? was));
  return [...air, ...rest].slice(0, 2);
}

function dampOf(room: string, before: PlanMeasures, after: PlanMeasures): BeforeAfter[] {
  const share = ({ rooms, period }: PlanMeasures): number =>
    (100 * (rooms[room]!.outside_band_hours.humidity_high ?? 0)) / period.hours;
  const perDay = ({ rooms, period }: PlanMeasures): number =>
    (24 * rooms[room]!.cold_spot_hours_above_80_pct) / period.hours;
  return [
    {
      ...{ title: `${room}: air too damp`, unit: '% of the time', decimals: 0 },
      ...{ before: share(before), after: share(after), of: ({ measures }) => share(measures) },
    },
    {
      ...{ title: `${room}: corner wet enough for mould`, unit: 'h a day', decimals: 1 },
      ...{ before: perDay(before), after: perDay(after), of: ({ measures }) => perDay(measures) },
    },
  ];
}

/** What the air carries where a plan changes that clearly. */
function airOf(was: PlanFigures, { figures, effects }: PlanLine): BeforeAfter[] {
  if (effects[0]?.of !== 'air') return [];
  return figures.air.flatMap(({ name, label, unit, kind, value }) => {
    const before = airLevel(was, name) ?? 0;
    if (!(Math.abs(relativeChange(before, value)) >= 0.1)) return [];
    const where = kind === 'mean' ? 'mean of the rooms' : 'at night, room worst off';
    const decimals = airDecimals(before, value);
    const of = (plan: Judged) => airLevel(plan.figures, name) ?? 0;
    return [{ title: `${label}, ${where}`, unit, before, after: value, decimals, of }];
  });
}

function money({ options }: ReportStudy, plan: Option | null): BeforeAfter {
  const [baseline] = options;
  const { currency, total_per_year: before } = baseline!.measures.money;
  const after = plan?.measures.money.total_per_year ?? before;
  const title = 'Energy and what is bought';
  const unit = `${currency} a year`;
  const of = ({ measures }: Judged) => measures.money.total_per_year;
  return { title, unit, before, after, decimals: 0, of };
}

type Kind = (was: PlanFigures, is: PlanFigures) => BeforeAfter;

const KINDS: Readonly<Record<Exclude<Effect['figure' | 'of'], 'air' | undefined>, Kind>> = {
  cold: ({ cold: was }, { cold: is }) => ({
    ...{ title: `Too cold with somebody in${inRooms(was.room, is.room)}`, unit: 'h a day' },
    ...{ before: was.value, after: is.value, decimals: 1, of: ({ figures }) => figures.cold.value },
  }),
  mould: ({ mould: was }, { mould: is }) => ({
    ...{ title: `Highest mould index${inRooms(was.room, is.room)}`, unit: 'of 6' },
    ...{
      before: was.value,
      after: is.value,
      decimals: 1,
      of: ({ figures }) => figures.mould.value,
    },
  }),
  damp: share('Rooms too damp, mean of all', ({ damp }) => damp),
  dry: share('Rooms too dry, mean of all', ({ dry }) => dry),
  spots: share('Corners wet enough for mould, mean of all', ({ spots }) => spots),
  warm: share('Too warm with somebody in', ({ warm }) => warm),
  warmBy: ({ warmBy: before }, { warmBy: after }) => ({
    ...{ title: 'Hot rooms, too warm by', unit: '°C on average', decimals: 1 },
    ...{ before, after, of: ({ figures }) => figures.warmBy },
  }),
};

/** ", den", or ", den, then bath" where another room is worst off with the plan. */
function inRooms(was: string, is: string): string {
  const rooms = [...new Set([was, is])].filter((room) => room !== '');
  return rooms.length === 0 ? '' : `, ${rooms.join(', then ')}`;
}

function share(title: string, of: (figures: PlanFigures) => number): Kind {
  return (was, is) => ({
    ...{ title, unit: '% of the time', decimals: 0 },
    ...{ before: of(was), after: of(is), of: ({ figures }) => of(figures) },
  });
}

const USUAL = ['cold', 'damp'] as const;
