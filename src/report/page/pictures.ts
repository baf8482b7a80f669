import { dailyRanges } from '../../measures/series/daily-ranges.ts';
import { beginsDay } from '../../measures/series/extreme-week.ts';
import { localDay, toLocal, weekday } from '../../units/local-clock.ts';
import { HOURS_PER_WEEK } from '../../units/time-units.ts';
import { calendarChart } from '../charts/calendar-chart.ts';
import type { Chart } from '../charts/chart.ts';
import { type ClimateQuantity, edgesWhen } from '../charts/climate.ts';
import { coldSpotChart } from '../charts/cold-spot-chart.ts';
import { heatChart } from '../charts/heat-chart.ts';
import { hoursOutside } from '../charts/hours-outside.ts';
import { mouldChart } from '../charts/mould-chart.ts';
import { waterChart } from '../charts/water-chart.ts';
import { weekChart } from '../charts/week-chart.ts';
import { yearChart } from '../charts/year-chart.ts';
import type { PictureData, WeekWord } from './picture-data.ts';
import type { PictureId } from './picture-ids.ts';

/** What a reader may choose to see: numbers of a room, of plans, and of the hour a week begins. */
export interface Choice {
  readonly room: number;
  /** Plan of the pictures that show one. */
  readonly plan: number;
  /** Plans of the pictures that draw a line for each, upwards. */
  readonly lines: readonly number[];
  readonly week: number;
}

/** Lines on one picture that can still be told apart. */
export const MOST_LINES = 4;

/** A picture that follows choices. */
export interface Picture {
  readonly id: string;
  readonly follows: readonly (keyof Choice)[];
  readonly draw: (data: PictureData, choice: Choice, width: number) => Chart;
}

/** All pictures of rooms, in the order of the page. The same ones are drawn in the page again. */
export const PICTURES: readonly Picture[] = [
  { id: 'week-humidity', follows: ['room', 'lines', 'week'], draw: week('humidity') },
  { id: 'week-temperature', follows: ['room', 'lines', 'week'], draw: week('temperature') },
  {
    id: 'cold-spot',
    follows: ['room', 'lines'],
    draw: ({ rooms, plans, start, clock }, { room, lines }, width) =>
      coldSpotChart(
        {
          room: rooms[room]!.name,
          plans: chosen(plans, lines).map(({ name, number, rooms: own }) => ({
            ...{ name, number },
            days: dailyRanges(own[room]!.coldSpot, start, clock),
            hoursAbove80: own[room]!.coldSpotHours,
          })),
        },
        width,
      ),
  },
  {
    id: 'mould',
    follows: ['room', 'lines'],
    draw: ({ rooms, plans, start, clock }, { room, lines }, width) =>
      mouldChart(
        {
          ...{ room: rooms[room]!.name, start, clock },
          plans: chosen(plans, lines).map(({ name, number, rooms: own }) => ({
            ...{ name, number },
            index: own[room]!.mouldIndex,
          })),
        },
        width,
      ),
  },
  { id: 'year-temperature', follows: ['room', 'plan'], draw: year('temperature') },
  { id: 'year-humidity', follows: ['room', 'plan'], draw: year('humidity') },
  {
    id: 'calendar',
    follows: ['room', 'plan'],
    draw: ({ rooms, plans, start, clock, mild }, { room, plan }, width) => {
      const { name, rooms: own } = plans[plan]!;
      const { temperature, humidity } = own[room]!;
      const hours = hoursOutside(temperature, humidity, rooms[room]!, mild);
      return calendarChart({ room: rooms[room]!.name, plan: name, start, clock, hours }, width);
    },
  },
  {
    id: 'heat',
    follows: ['plan'],
    draw: ({ plans }, { plan }, width) => heatChart(plans[plan]!.heat, plans[plan]!.name, width),
  },
  {
    id: 'water',
    follows: ['plan'],
    draw: ({ plans }, { plan }, width) => waterChart(plans[plan]!.water, plans[plan]!.name, width),
  },
];

/**
 * Numbers of the hours at which weeks begin, Mondays at midnight by the wall clock, with the
 * seven days that stand out among them wherever they begin.
 */
export function weekStarts({ start, hours, clock, weeks }: PictureData): number[] {
  const starts = [...new Set(weeks.map(({ hour }) => hour))];
  for (let h = 0; h + HOURS_PER_WEEK <= hours; h++) {
    const begin = start + h * 3600;
    const monday = beginsDay(begin, clock) && weekday(localDay(toLocal(clock, begin))) === 0;
    if (monday && !starts.includes(h)) starts.push(h);
  }
  return starts.sort((a, b) => a - b);
}

function week(quantity: ClimateQuantity): Picture['draw'] {
  return ({ rooms, plans, start, clock, mild }, { room, lines, week: from }, width) => {
    const to = from + HOURS_PER_WEEK;
    // One strip a week, by most of its hours.
    const isMild = mild.subarray(from, to).reduce((sum, is) => sum + is, 0) > HOURS_PER_WEEK / 2;
    const { name, occupied } = rooms[room]!;
    return weekChart(
      {
        ...{ room: name, quantity, band: edgesWhen(rooms[room]![quantity], isMild), clock },
        start: start + from * 3600,
        plans: chosen(plans, lines).map((plan) => ({
          ...{ name: plan.name, number: plan.number },
          values: plan.rooms[room]![quantity].subarray(from, to),
        })),
        occupied: occupied.subarray(from, to),
      },
      width,
    );
  };
}

function year(quantity: ClimateQuantity): Picture['draw'] {
  return ({ rooms, plans, start, clock, mild: hours }, { room, plan }, width) => {
    const { name, rooms: own } = plans[plan]!;
    const days = dailyRanges(own[room]![quantity], start, clock);
    const band = rooms[room]![quantity];
    const data = { room: rooms[room]!.name, plan: name, quantity, band, days };
    if (band.mild === undefined) return yearChart(data, width);
    const shares = dailyRanges(Float32Array.from(hours), start, clock).mean;
    return yearChart({ ...data, mild: shares.map((share) => (share > 0.5 ? 1 : 0)) }, width);
  };
}

/** Plans with their numbers among all, so that each keeps its look whichever others are chosen. */
const chosen = <Plan extends object>(plans: readonly Plan[], lines: readonly number[]) =>
  lines.map((line) => ({ ...plans[line]!, number: line }));

/** Id of the picture's element in the page. */
export const pictureId = ({ id }: Picture): PictureId => `picture-${id}`;

/**
 * A room by its name, the baseline, lines of the first plans, and the week that a word stands for; the
 * coldest where none does.
 */
export function firstChoice(data: PictureData, room: string, week: WeekWord = 'coldest'): Choice {
  const number = data.rooms.findIndex(({ name }) => name === room);
  const lines = data.plans.map((_, k) => k).slice(0, MOST_LINES);
  const found = data.weeks.find(({ word }) => word === week) ?? data.weeks[0];
  return { room: Math.max(0, number), plan: 0, lines, week: found?.hour ?? 0 };
}
