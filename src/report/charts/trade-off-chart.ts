import { figureText } from '../../units/figure-text.ts';
import { sumText } from '../../units/sum-text.ts';
import { andList } from '../../units/word-list.ts';
import { shortened } from '../shortened.ts';
import type { Chart } from './chart.ts';
import { chartFrame, isNarrow, moneyLabels, uprightAxis } from './chart-frame.ts';
import { extremes, type Named } from './in-words.ts';
import { HUES, INK } from './palette.ts';
import { placeLabels } from './place-labels.ts';

/** Money against time outside the bands. */
export interface TradeOffData {
  readonly currency: string;
  /** What all are compared with comes first. */
  readonly plans: readonly {
    readonly name: string;
    /** [currency/year] */
    readonly money: number;
    /** Outside the bands, warmth and humidity added up, mean of the rooms. [h/day] */
    readonly hours: number;
  }[];
  /** Name of the plan that is asked about, if one is. */
  readonly about?: string | null;
  /** Plans with their thermostats set otherwise, each from its coolest setting to its warmest. */
  readonly curves?: readonly {
    readonly plan: string;
    /** What is set, such as "19 °C", with what it comes to. */
    readonly points: readonly BargainPoint[];
  }[];
  /** Plans and settings that no other beats, the cheapest first. */
  readonly front?: readonly BargainPoint[];
  /** Where that line bends; null or absent for nowhere. */
  readonly bend?: BargainPoint | null;
}

interface BargainPoint {
  readonly name: string;
  readonly money: number;
  readonly hours: number;
}

/**
 * What each plan costs and how long it leaves rooms outside their bands, one mark a plan: a ring for
 * what all are compared with, a large disc for the one asked about, hollow what another beats in both.
 * Settings are small dots, and a line joins what no other beats. Of many plans only those are named
 * that the title or the page speaks of.
 */
export function tradeOffChart(data: TradeOffData, width: number): Chart {
  const { currency, plans, curves = [] } = data;
  const title = curves.length === 0 ? titleOf(data) : `Of the plans, ${titleOf(data)}`;
  const settings = curves.flatMap(({ points }) => points);
  const height = isNarrow(width) ? 300 : 380;
  // Ends of the axes and size of the plot are fixed here, so that words can be placed beside marks.
  const across = axisOf([...plans, ...settings].map(({ money }) => money));
  const up = axisOf([...plans, ...settings].map(({ hours }) => hours));
  const plot: [number, number] = [width - LEFT - RIGHT, height - ABOVE - BELOW];
  const px = (money: number) => ((money - across[0]) / (across[1] - across[0])) * plot[0];
  const py = (hours: number) => (1 - (hours - up[0]) / (up[1] - up[0])) * plot[1];
  const moneyAt = (at: number) => round(across[0] + (at / plot[0]) * (across[1] - across[0]));
  const hoursAt = (at: number) => round(up[0] + (1 - at / plot[1]) * (up[1] - up[0]));
  // A phone has no room for words beside settings; its table has them.
  const ends = isNarrow(width)
    ? []
    : curves.flatMap(({ points }) => [...new Set([points[0]!, points.at(-1)!])]);
  const named = plansToName(data, isNarrow(width) ? FEW_ON_PHONE : FEW);
  const marks = [...named, ...ends].map(({ name, money, hours }) => ({
    x: px(money),
    y: py(hours),
    text: shortened(name, plot[0] / 2 / CHARACTER),
  }));
  const way = (points: readonly BargainPoint[]) =>
    points.map(({ money, hours }) => ({ x: px(money), y: py(hours) }));
  const lines = [data.front ?? [], ...curves.map(({ points }) => points)].map(way);
  const others = plans.filter((plan) => !named.includes(plan));
  const places = placeLabels(marks, plot, lines, way(others));
  const values = [...named, ...ends].map(({ money, hours }, k) => {
    const { x, y, text } = marks[k]!;
    const place = places[k]!;
    const rightward = place.x > x;
    return {
      ...{ money, hours, text },
      at: round(place.x),
      lift: round(place.y),
      // A thin line leads to words that stand further off; its end is a place on the axes.
      tied: Math.abs(place.y - y) >= 1,
      toMoney: moneyAt(rightward ? place.x - 2 : place.x + 6.5 * [...text].length + 2),
      toHours: hoursAt(place.y),
    };
  });
  const x = {
    field: 'money',
    type: 'quantitative',
    scale: { domain: across, nice: false, zero: false },
    axis: {
      ...{ tickCount: 5, ...moneyLabels('.0f'), title: `Money a year [${currency}]` },
      // So near to an end a number would be cut off, and is pushed inwards.
      labelFlush: Math.max(1, (sumText(across[1], 0).length * CHARACTER) / 2 - RIGHT),
    },
  };
  const y = {
    field: 'hours',
    type: 'quantitative',
    scale: { domain: up, nice: false, zero: false },
    axis: uprightAxis('Outside the bands of warmth and humidity [h a day]', LEFT - 12, {
      format: '.1~f',
    }),
  };
  const pixels = (field: string) => ({ field, type: 'quantitative', scale: null });
  const frame = chartFrame({
    width: plot[0],
    height: plot[1],
    description: title,
    layer: [
      ...bargainLayers(data, { x, y }),
      {
        data: { values: values.filter(({ tied }) => tied) },
        mark: { type: 'rule', opacity: 0.45 },
        encoding: { x, y, x2: { field: 'toMoney' }, y2: { field: 'toHours' } },
      },
      ...planLayers(data, { x, y }),
      {
        data: { values },
        mark: { type: 'text' },
        encoding: { x: pixels('at'), y: pixels('lift'), text: { field: 'text', type: 'nominal' } },
      },
    ],
  });
  const spec = {
    ...frame,
    autosize: { type: 'none' },
    padding: { left: LEFT, top: ABOVE, right: RIGHT, bottom: BELOW },
  };
  return {
    title,
    description:
      `One mark a plan, hollow where another beats it: money a year to the right, hours outside the bands ` +
      `upwards, those of warmth (with somebody in) and those of humidity added up; best is at the bottom left. ${plans.map((p) => `${p.name}: ${sumText(p.money, 0)} ${currency}, ${figureText(p.hours, 1)} h a day`).join('; ')}.${
        curves.length === 0
          ? ''
          : ' Small dots are plans with their thermostats set otherwise; a line joins what no other beats in both.'
      }`,
    spec,
    table: {
      headers: [
        'plan',
        `money a year [${currency}]`,
        'outside the bands, warmth and humidity added up, mean of the rooms [h a day]',
      ],
      rows: [
        ...plans,
        ...curves.flatMap(({ plan, points }) =>
          points.map((point) => ({ ...point, name: `${plan}, ${point.name}` })),
        ),
      ].map((p) => [p.name, sumText(p.money, 0), figureText(p.hours, 1)]),
    },
  };
}

/** Settings as small dots on a thin line, the line of what no other beats, and a diamond at its bend. */
function bargainLayers(
  { curves = [], front = [], bend = null }: TradeOffData,
  across: Readonly<Record<'x' | 'y', object>>,
): object[] {
  const points = curves.flatMap(({ points: own }, curve) =>
    own.map(({ money, hours }, order) => ({ curve, order, money, hours })),
  );
  const order = { field: 'order', type: 'quantitative' };
  const joined = front.map(({ money, hours }, k) => ({ order: k, money, hours }));
  const layers = [
    {
      data: { values: points },
      mark: { type: 'line', strokeWidth: 1, strokeDash: [2, 2], color: INK, opacity: 0.6 },
      encoding: { ...across, order, detail: { field: 'curve', type: 'nominal' } },
    },
    {
      data: { values: points },
      mark: { type: 'point', filled: true, size: 22, color: INK, opacity: 0.8 },
      encoding: across,
    },
    {
      data: { values: joined },
      mark: { type: 'line', strokeWidth: 1.4, color: INK, opacity: 0.55 },
      encoding: { ...across, order },
    },
    {
      data: { values: bend === null ? [] : [{ money: bend.money, hours: bend.hours }] },
      mark: { type: 'point', shape: 'diamond', size: 240, color: INK, strokeWidth: 1.4 },
      encoding: across,
    },
  ];
  return layers.filter(({ data }) => data.values.length > 0);
}

/** Marks of the plans, those that are asked about last, so that they lie on top. */
function planLayers(
  { plans, about = null, front = [] }: TradeOffData,
  across: Readonly<Record<'x' | 'y', object>>,
): object[] {
  const kindOf = (plan: Plan): keyof typeof MARKS => {
    if (plan === plans[0]) return 'now';
    if (plan.name === about) return 'about';
    return [...plans, ...front].some((other) => beats(other, plan)) ? 'beaten' : 'unbeaten';
  };
  return Object.entries(MARKS)
    .map(([kind, mark]) => ({
      data: {
        values: plans
          .filter((plan) => kindOf(plan) === kind)
          .map(({ money, hours }) => ({ money, hours })),
      },
      mark: { type: 'point', opacity: 1, ...mark },
      encoding: across,
    }))
    .filter(({ data }) => data.values.length > 0);
}

const beats = (a: Omit<Plan, 'name'>, b: Omit<Plan, 'name'>): boolean =>
  a.money <= b.money && a.hours <= b.hours && (a.money < b.money || a.hours < b.hours);

type Plan = TradeOffData['plans'][number];

const MARKS = {
  beaten: { filled: false, size: 34, color: INK, strokeWidth: 1.2 },
  unbeaten: { filled: true, size: 50, color: INK },
  now: { filled: false, size: 110, color: HUES.now, strokeWidth: 2.6 },
  about: { filled: true, size: 110, color: HUES.cold },
} as const;

/** All of a few plans; of more, what is compared with what, what the title names, and the bend. */
function plansToName(data: TradeOffData, few: number): readonly Plan[] {
  const { plans, about = null, bend = null } = data;
  if (plans.length <= few) return plans;
  const { cheap, kind } = bestOf(data);
  const names = new Set([...cheap, ...kind].map(({ name }) => name));
  return plans.filter(
    (plan, k) => k === 0 || plan.name === about || plan.name === bend?.name || names.has(plan.name),
  );
}

/** Plans that cost least, and those that keep rooms in their bands longest. */
function bestOf({ plans }: TradeOffData): Readonly<Record<'cheap' | 'kind', readonly Named[]>> {
  const by = (of: (plan: Plan) => number, decimals: number): readonly Named[] =>
    extremes(
      plans.map((plan) => ({ name: plan.name, value: of(plan) })),
      -1,
      decimals,
    );
  return { cheap: by(({ money }) => money, 0), kind: by(({ hours }) => hours, 1) };
}

function titleOf(data: TradeOffData): string {
  const { currency, plans } = data;
  const { cheap, kind } = bestOf(data);
  const names = (list: readonly Named[]) =>
    list.length > 3 ? `${list.length} plans` : andList(list.map(({ name }) => name));
  const verb = (list: readonly Named[], word: string) => (list.length > 1 ? word : `${word}s`);
  const cost = `${sumText(cheap[0]?.value, 0)} ${currency} a year`;
  const outside = `${figureText(kind[0]?.value, 1)} h a day outside`;
  const both = cheap.filter(({ name }) => kind.some((other) => other.name === name));
  if (plans.length === 0) return 'No plan was run';
  if (both.length > 0) {
    return `${names(both)} ${verb(both, 'cost')} least (${cost}) and ${both.length > 1 ? 'keep' : 'keeps'} rooms in their bands longest (${outside})`;
  }
  return (
    `${names(cheap)} ${verb(cheap, 'cost')} least (${cost}); ` +
    `${names(kind)} ${verb(kind, 'keep')} rooms in their bands longest (${outside})`
  );
}

/** Ends of an axis somewhat beyond its values. */
function axisOf(values: readonly number[]): [number, number] {
  const low = Math.min(...values);
  const high = Math.max(...values);
  if (!(low <= high)) return [0, 1];
  const beyond = Math.max((high - low) * 0.12, Math.abs(high) * 0.005, 1);
  return [low - beyond, high + beyond];
}

const round = (value: number): number => Math.round(value * 10) / 10;

/** Plans that there is room to name, all of them. */
const FEW = 9;
const FEW_ON_PHONE = 6;
/** Width of a character. [px] */
const CHARACTER = 6.2;
/** Kept free around the plot for axes and their titles. [px] */
const LEFT = 50;
const RIGHT = 12;
const ABOVE = 26;
const BELOW = 40;
