import { perWeekText, shareOfAlerts } from '../rule-words.ts';
import { shortened } from '../shortened.ts';
import type { Chart } from './chart.ts';
import { chartFrame, isNarrow } from './chart-frame.ts';
import { HUES, INK } from './palette.ts';

/** When in the day the rules of a plan ring. */
export interface AlertsChartData {
  readonly plan: string;
  readonly rules: readonly RuleHours[];
  /** Length of the period. [weeks] */
  readonly weeks: number;
}

/** Alerts of one rule over the period. */
interface RuleHours {
  readonly name: string;
  /** By the hour of the wall clock in which they came, from midnight. */
  readonly byHour: readonly number[];
  /** Of these, those that somebody at home and awake could act on then or within the hour. */
  readonly heardByHour: readonly number[];
}

/** Rule by rule a bar for each hour of the day: filled what was heard, outlined what was not. */
export function alertsChart(data: AlertsChartData, width: number): Chart {
  const { plan, rules, weeks } = data;
  const title = titleOf(data);
  const narrow = isNarrow(width);
  const most = Math.max(1e-9, ...rules.flatMap(({ byHour }) => byHour));
  // By the square root, so that rare alerts are still seen.
  const tall = (count: number): number => BAR * Math.sqrt(count / most);
  const base = (k: number): number => k * PITCH + PITCH - 8;
  const bars = rules.flatMap(({ byHour, heardByHour }, k) =>
    byHour.flatMap((count, hour) => {
      if (count === 0) return [];
      const heard = heardByHour[hour] ?? 0;
      const cell = { hour: hour + 0.12, to: hour + 0.88, bottom: base(k) };
      return [
        { ...cell, top: base(k) - tall(count), full: 0 },
        ...(heard > 0 ? [{ ...cell, top: base(k) - tall(count) * (heard / count), full: 1 }] : []),
      ];
    }),
  );
  const height = PITCH * Math.max(1, rules.length) + KEY;
  const x = {
    field: 'hour',
    type: 'quantitative',
    scale: { domain: [0, 24], nice: false },
    axis: { title: 'Hour of the day', values: [0, 6, 12, 18, 24], grid: false },
  };
  const y = {
    field: 'top',
    type: 'quantitative',
    axis: null,
    scale: { domain: [height, 0], nice: false },
  };
  const y2 = { field: 'bottom' };
  const letters = Math.floor((width - 110) / 6.4);
  const spec = chartFrame({
    ...{ width, height: height + AXIS, description: title },
    layer: [
      {
        data: {
          values: rules.flatMap((_, k) =>
            NIGHT.map(([hour, to]) => ({ hour, to, top: base(k) - BAR, bottom: base(k) })),
          ),
        },
        mark: { type: 'rect', color: INK, opacity: 0.08 },
        encoding: { x, x2: { field: 'to' }, y, y2 },
      },
      {
        data: { values: rules.map((_, k) => ({ top: base(k), hour: 0, to: 24 })) },
        mark: { type: 'rule', opacity: 0.6 },
        encoding: { x, x2: { field: 'to' }, y },
      },
      {
        data: { values: bars },
        mark: { type: 'rect', color: HUES.air, stroke: HUES.air, strokeWidth: 1 },
        encoding: {
          ...{ x, x2: { field: 'to' }, y, y2 },
          fillOpacity: { field: 'full', type: 'quantitative', scale: null },
        },
      },
      words(
        rules.map(({ name }, k) => ({ text: shortened(name, letters), top: base(k) - BAR - 10 })),
        { x: { value: 0 } },
        { align: 'left', fontWeight: 'bold' },
      ),
      words(
        rules.map((rule, k) => ({
          text: countsOf(rule, weeks),
          top: base(k) - BAR - 10,
          hour: 24,
        })),
        { x },
        { align: 'right' },
      ),
      words(
        [
          {
            text: narrow
              ? 'Filled: heard. Outlined: not. Shaded: night.'
              : 'Filled: heard by somebody awake at home. Outlined: not heard. Shaded: night.',
            top: height - KEY / 2 + 2,
          },
        ],
        { x: { value: 0 } },
        { align: 'left', opacity: 0.8 },
      ),
    ],
  });
  return {
    title,
    description:
      `Alerts of ${plan} by the hour of the day, one row a rule, heights by the square root, filled where somebody awake at home ` +
      `heard them. ${rules.map((rule) => `${rule.name}: ${countsOf(rule, weeks)}.`).join(' ')}`,
    spec,
    table: {
      headers: ['rule', 'a week', 'heard [%]', ...HOURS.map((hour) => `${hour} h`)],
      rows: rules.map((rule) => [
        ...[rule.name, perWeek(sumOf(rule.byHour), weeks), heardShare(rule)],
        ...HOURS.map((hour) => String(rule.byHour[hour] ?? 0)),
      ]),
    },
  };
}

/** "9 of 36 alerts a week ring where nobody hears them; "cold" rings most" */
function titleOf({ plan, rules, weeks }: AlertsChartData): string {
  const all = sumOf(rules.map(({ byHour }) => sumOf(byHour)));
  if (all === 0) return `Nothing rings under ${plan}`;
  const lost = all - sumOf(rules.map(({ heardByHour }) => sumOf(heardByHour)));
  const busiest = rules.reduce((a, b) => (sumOf(b.byHour) > sumOf(a.byHour) ? b : a));
  const most = rules.length > 1 ? `; “${busiest.name}” rings most` : '';
  return `${perWeek(lost, weeks)} of ${perWeek(all, weeks)} alerts a week ring where nobody awake hears them under ${plan}${most}`;
}

const countsOf = (rule: RuleHours, weeks: number): string =>
  sumOf(rule.byHour) === 0
    ? 'never rings'
    : `${perWeek(sumOf(rule.byHour), weeks)} a week, ${heardShare(rule)} % heard`;

const heardShare = ({ byHour, heardByHour }: RuleHours): string =>
  shareOfAlerts(sumOf(heardByHour), { fired: sumOf(byHour) });

const perWeek = (count: number, weeks: number): string =>
  perWeekText(count / Math.max(1e-9, weeks));

const sumOf = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0);

const words = (values: readonly object[], across: object, mark: object): object => ({
  data: { values },
  mark: { type: 'text', ...mark },
  encoding: {
    ...across,
    y: { field: 'top', type: 'quantitative' },
    text: { field: 'text', type: 'nominal' },
  },
});

const HOURS = Array.from({ length: 24 }, (_, hour) => hour);
const NIGHT = [
  [0, 7],
  [23, 24],
] as const;
/** Heights of a bar, a rule's row, the key and the axis. [px] */
const BAR = 34;
const PITCH = 66;
const KEY = 22;
const AXIS = 40;
