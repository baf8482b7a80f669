import { figureText } from '../../units/figure-text.ts';
import { shortened } from '../shortened.ts';
import type { Chart } from './chart.ts';
import { chartFrame } from './chart-frame.ts';
import { HUES, INK } from './palette.ts';

/** What the air of the rooms carries of one species under two plans, or under one. */
export interface AirChartData {
  readonly label: string;
  readonly unit: string;
  readonly outdoors: number;
  readonly plans: readonly {
    readonly name: string;
    /** By room, in the order of `rooms`. */
    readonly levels: readonly AirLevels[];
  }[];
  readonly rooms: readonly {
    readonly name: string;
    /** Upper edge of its band; infinite for none. */
    readonly limit: number;
    /** Time over which the mean is held to the limit; up to 1 where every hour is. [h] */
    readonly hours: number;
  }[];
}

/** Levels of a room's air by hourly means. */
interface AirLevels {
  readonly mean: number;
  readonly evening: number;
  readonly night: number;
  readonly p95: number;
  readonly peak: number;
}

/** Room by room a bar from the mean to what one hour in twenty passes, with the limit: also where nothing passes it. */
export function airChart(data: AirChartData, width: number): Chart {
  const { label, unit, rooms, plans } = data;
  const shown = plans.slice(0, 2);
  const all = shown.flatMap(({ levels }) => levels.map(({ p95 }) => p95));
  const limits = rooms.map(({ limit }) => limit).filter(Number.isFinite);
  const most = Math.max(1e-9, ...all, ...limits);
  const pitch = NAME + BAR * shown.length + BETWEEN;
  const title = titleOf(data);
  const x = {
    field: 'value',
    type: 'quantitative',
    scale: { domain: [0, 1.04 * most], nice: false },
    axis: { title: `${label} [${unit}]`, tickCount: 5, grid: true },
  };
  const yOf = (room: number, plan: number): number => room * pitch + NAME + plan * BAR + BAR / 2;
  const values = rooms.flatMap((_, room) =>
    shown.map(({ levels }, series) => ({
      ...{ series, y: yOf(room, series) },
      ...{ value: levels[room]!.mean, to: levels[room]!.p95 },
    })),
  );
  const look = {
    field: 'series',
    type: 'nominal',
    scale: { domain: [0, 1], range: [HUES.now, HUES.cold] },
    legend: null,
  };
  const y = pixels('y');
  const wide = width - BESIDE;
  const key = keyOf(
    shown.map(({ name }) => name),
    wide / CHARACTER,
  );
  const height = pitch * rooms.length + LINE * key.length + KEY;
  const spec = chartFrame({
    ...{ width, height: height + AXIS, description: title },
    layer: [
      {
        data: { values: [{ y: 0, value: 0 }] },
        mark: { type: 'rule', opacity: 0 },
        encoding: {
          x,
          y: { ...pixels('y'), axis: null, scale: { domain: [height, 0], nice: false } },
        },
      },
      {
        data: {
          values: rooms.flatMap(({ limit }, room) =>
            Number.isFinite(limit)
              ? [{ value: limit, y: yOf(room, 0) - REACH, to: yOf(room, shown.length - 1) + REACH }]
              : [],
          ),
        },
        mark: { type: 'rule', strokeDash: [4, 3], color: INK, strokeWidth: 1.4 },
        encoding: { x, y, y2: { field: 'to' } },
      },
      {
        data: { values },
        mark: { type: 'rule', strokeWidth: 5, opacity: 0.45 },
        encoding: { x, x2: { field: 'to' }, y, color: look },
      },
      {
        data: { values },
        mark: { type: 'tick', thickness: 2, height: BAR - 2, orient: 'vertical', opacity: 1 },
        encoding: { x, y, color: look },
      },
      {
        data: { values: values.map(({ to, ...one }) => ({ ...one, value: to })) },
        mark: { type: 'point', filled: true, size: 46, opacity: 1 },
        encoding: {
          ...{ x, y, color: look },
          shape: { ...look, scale: { domain: [0, 1], range: ['circle', 'square'] } },
        },
      },
      words(
        rooms.map(({ name }, room) => ({
          ...{ text: shortened(name, wide / CHARACTER), y: room * pitch + NAME / 2 - 1 },
        })),
      ),
      words(
        key.map((text, line) => ({
          ...{ text, y: height - LINE * (key.length - line) + LINE / 2 - 2 },
        })),
        0.8,
      ),
    ],
  });
  return {
    title,
    description:
      `${label} by room, a bar from the mean of the period to the level that one hour in twenty ` +
      `passes, dashed the limit${averaged(rooms)}; outdoors ${figureText(data.outdoors)} ${unit} on ` +
      'the mean. ' +
      rooms
        .map(
          ({ name }, k) =>
            `${name}: ${shown.map(({ name: plan, levels }) => `${plan} ${figureText(levels[k]!.mean)} to ${figureText(levels[k]!.p95)}`).join(', ')}.`,
        )
        .join(' '),
    spec,
    table: {
      headers: ['room, plan', ...LEVELS.map((level) => `${WORDS[level]} [${unit}]`)],
      rows: rooms.flatMap(({ name }, k) =>
        plans.map(({ name: plan, levels }) => [
          `${name}, ${plan}`,
          ...LEVELS.map((level) => figureText(levels[k]![level])),
        ]),
      ),
    },
  };
}

/** The room that is worst off, its limit beside that, and what the other plan makes of it. */
function titleOf({ label, unit, rooms, plans }: AirChartData): string {
  const [before, after] = plans;
  const levels = before?.levels ?? [];
  const worst = levels.reduce((k, { p95 }, n) => (p95 > levels[k]!.p95 ? n : k), 0);
  const room = rooms[worst];
  if (room === undefined) return `${label}: no rooms`;
  const was = figureText(levels[worst]!.p95);
  const opening = `In ${room.name} one hour in twenty has over ${was} ${unit} of ${label}${limitWords(room)}`;
  if (after === undefined) return opening;
  const is = after.levels[worst]!.p95;
  const change = is / levels[worst]!.p95 - 1;
  return Math.abs(change) < 0.05
    ? `${opening}; ${after.name} changes little`
    : `${opening}; with ${after.name} ${figureText(is)}`;
}

/** " (limit 15.0, as a mean of 24 h)"; nothing where there is none. */
function limitWords({ limit, hours }: AirChartData['rooms'][number]): string {
  if (!Number.isFinite(limit)) return '';
  return ` (limit ${figureText(limit)}${hours > 1 ? `, as a mean of ${hours} h` : ''})`;
}

/** ", which means of 24 h are held to, not single hours"; nothing where hours are. */
function averaged(rooms: AirChartData['rooms']): string {
  const hours = Math.max(...rooms.map((room) => room.hours));
  return hours > 1 ? `, which means of ${hours} h are held to, not single hours` : '';
}

const words = (values: readonly object[], opacity = 1): object => ({
  data: { values },
  mark: { type: 'text', align: 'left', opacity },
  encoding: { x: { value: 0 }, y: pixels('y'), text: { field: 'text', type: 'nominal' } },
});

/** What the marks are, in one line where that has room, else a line each. */
function keyOf(plans: readonly string[], most: number): string[] {
  const marked = plans.map((name, k) => `${k === 0 ? '●' : '■'} ${name}`);
  const whole = `${marked.join(', ')}; ${OTHER_MARKS}`;
  return [...whole].length <= most
    ? [whole]
    : [...marked.map((text) => shortened(text, most)), OTHER_MARKS];
}

const OTHER_MARKS = '| mean; dashed: limit';

const pixels = (field: string) => ({ field, type: 'quantitative' });

const LEVELS = ['mean', 'evening', 'night', 'p95', 'peak'] as const;
const WORDS = {
  ...{ mean: 'mean', evening: 'evening', night: 'night' },
  ...{ p95: '95 % of hours below', peak: 'peak hour' },
} as const;

/** Heights of a room's name, a bar, the gap below, a line of the key, what is free around it, and the axis. [px] */
const NAME = 15;
const BAR = 11;
const BETWEEN = 6;
const LINE = 14;
const KEY = 10;
const AXIS = 40;
/** How far the line of the limit reaches beyond the middles of bars. [px] */
const REACH = 8;
/** Width that words have not. [px] */
const BESIDE = 12;
const CHARACTER = 6.2; // px, at 11 px
