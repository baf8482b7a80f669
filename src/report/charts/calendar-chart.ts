import { figureText } from '../../units/figure-text.ts';
import { type LocalClock, toLocal } from '../../units/local-clock.ts';
import { SECONDS_PER_DAY } from '../../units/time-units.ts';
import { andList } from '../../units/word-list.ts';
import type { Chart } from './chart.ts';
import { chartFrame, isNarrow, timeAxis, uprightAxis } from './chart-frame.ts';
import { type HoursOutside, WRONGS } from './hours-outside.ts';
import { MONTHS } from './in-words.ts';
import { HUES, INK } from './palette.ts';

/** The hours of one room under one plan. */
export interface CalendarData {
  readonly room: string;
  readonly plan: string;
  /** Instant at which the first hour begins. [s UTC] */
  readonly start: number;
  readonly clock: LocalClock;
  readonly hours: HoursOutside;
}

/**
 * When in the year and when in the day a room is outside its bands: days from left to right, hours
 * of the day from top to bottom, one strip for each thing that is ever wrong. A strip by itself
 * needs no colour to be told from the others, and two wrongs at once are both seen.
 */
export function calendarChart(data: CalendarData, width: number): Chart {
  const { room, plan, start, clock, hours } = data;
  const counts = WRONGS.map((word, k) => ({
    word,
    k,
    hours: hours.reduce((sum, bits) => sum + ((bits >> k) & 1), 0),
  }));
  const of = ` of ${hours.length}`;
  const told = counts.filter((count) => count.hours > 0).sort((a, b) => b.hours - a.hours);
  // A strip says by itself what is in it: the title has the two that are most.
  const words = told
    .slice(0, 2)
    .map(({ word, hours: h }, k) => `${word} for ${figureText(h, 0)}${k === 0 ? of : ''} h`);
  const title =
    told.length === 0
      ? `${room} is inside its bands all the time under ${plan}`
      : `${room} is ${andList(words)} under ${plan}`;
  // Strips that would be empty are left out; one stays, so that there is a picture to see.
  const shown = counts.filter((count) => count.hours > 0 || (told.length === 0 && count.k === 0));
  const strip = shown.map(({ k }) => k);
  const cells = runsOfDays(data, strip);
  const first = Math.floor(toLocal(clock, start) / SECONDS_PER_DAY) * DAY;
  const days = Math.max(
    1,
    Math.ceil((toLocal(clock, start + hours.length * 3600) * 1000 - first) / DAY),
  );
  const top = shown.map((_, n) => n * (24 + HEAD) + HEAD);
  const all = shown.length * (24 + HEAD);
  const x = {
    field: 'from',
    type: 'temporal',
    scale: { type: 'utc' },
    axis: timeAxis('%b', isNarrow(width) ? { interval: 'month', step: 3 } : 'month'),
  };
  const y = {
    field: 'top',
    type: 'quantitative',
    scale: { domain: [0, all], reverse: true, nice: false },
    axis: uprightAxis('Hour of the day', 14, {
      tickCount: 3 * shown.length,
      values: top.flatMap((at) => [at, at + 12, at + 24]),
      labelExpr: `(datum.value - ${HEAD}) % ${24 + HEAD}`,
      grid: false,
      labelOverlap: false,
    }),
  };
  const spec = chartFrame({
    width,
    height: 60 + shown.length * (isNarrow(width) ? 84 : 96),
    description: title,
    layer: [
      {
        data: {
          values: top.map((at) => ({ from: first, to: first + days * DAY, top: at, end: at + 24 })),
        },
        mark: { type: 'rect', color: INK, opacity: 0.08 },
        encoding: { x, x2: { field: 'to' }, y, y2: { field: 'end' } },
      },
      {
        data: { values: cells },
        mark: { type: 'rect', clip: true },
        encoding: {
          x,
          x2: { field: 'to' },
          y,
          y2: { field: 'end' },
          color: {
            field: 'wrong',
            type: 'nominal',
            scale: { domain: [0, 1, 2, 3], range: COLOURS },
            legend: null,
          },
        },
      },
      {
        data: {
          values: shown.map(({ word, hours: h }, n) => ({
            top: top[n]! - HEAD / 2 + 1,
            word: `${word}: ${figureText(h, 0)} h`,
          })),
        },
        mark: { type: 'text' },
        encoding: { x: { value: 2 }, y, text: { field: 'word', type: 'nominal' } },
      },
    ],
  });
  return {
    title,
    description:
      `Hours of ${room} under ${plan}, a column a day and a row an hour, one strip for each thing ` +
      `that is wrong: ${counts.map((c) => `${c.word} ${figureText(c.hours, 0)} h`).join(', ')}.`,
    spec,
    table: { headers: ['month', ...WRONGS.map((word) => `${word} [h]`)], rows: byMonth(data) },
  };
}

/** Hours of a day that are wrong in the same way on one day after the other, as one rectangle. */
function runsOfDays({ start, clock, hours }: CalendarData, strip: readonly number[]): object[] {
  const cells: { from: number; to: number; top: number; end: number; wrong: number }[] = [];
  const open = new Map<number, (typeof cells)[number]>();
  hours.forEach((bits, h) => {
    if (bits === 0) return;
    const local = toLocal(clock, start + h * 3600);
    const hour = Math.floor((local % SECONDS_PER_DAY) / 3600);
    const day = Math.floor(local / SECONDS_PER_DAY) * DAY;
    strip.forEach((wrong, n) => {
      if (((bits >> wrong) & 1) === 0) return;
      const top = n * (24 + HEAD) + HEAD + hour;
      const run = open.get(top);
      if (run !== undefined && run.to >= day) run.to = day + DAY;
      else {
        const cell = { from: day, to: day + DAY, top, end: top + 1, wrong };
        open.set(top, cell);
        cells.push(cell);
      }
    });
  });
  return cells;
}

function byMonth({ start, clock, hours }: CalendarData): string[][] {
  const sums = new Map<string, number[]>();
  hours.forEach((bits, h) => {
    const date = new Date(toLocal(clock, start + h * 3600) * 1000);
    const month = `${MONTHS[date.getUTCMonth()]} ${date.getUTCFullYear()}`;
    const row = sums.get(month) ?? [0, 0, 0, 0];
    sums.set(
      month,
      row.map((sum, k) => sum + ((bits >> k) & 1)),
    );
  });
  return [...sums].map(([month, row]) => [month, ...row.map((sum) => figureText(sum, 0))]);
}

const DAY = SECONDS_PER_DAY * 1000; // ms
/** Room above each strip for its words, in hours of the strip's scale. */
const HEAD = 7;
const COLOURS = [HUES.cold, HUES.warm, HUES.damp, HUES.dry];
