import { figureText } from '../../units/figure-text.ts';
import type { Effect } from './effect.ts';
import type { PlanFigures } from './plan-figures.ts';
import { wasInRoom } from './was-in-room.ts';

/**
 * How much colder people are, by the room worst off, and in another room where that is much and tells the
 * opposite: a stove that is not lit leaves a cold bedroom as it is and the living room cold.
 */
export function coldEffects(from: PlanFigures, to: PlanFigures): Effect[] {
  const worst = inWorstRoom(from, to);
  const other = inOtherRoom(from, to, worst);
  return [worst, other].filter((effect) => effect !== null);
}

function inWorstRoom({ cold: was }: PlanFigures, { cold: is }: PlanFigures): Effect | null {
  const more = is.value - was.value;
  if (Math.abs(more) < CLEAR) return null;
  const weight = Math.abs(more) / CLEAR;
  const then = hours(was.value);
  const before = then === '0.0' ? is.room : wasInRoom(was, is, then);
  const now = `${hours(is.value)}${NO_BREAK}h a day (${before})`;
  if (more > 0) {
    const words = `people are in rooms that are too cold ${now}`;
    return { of: 'cold', better: false, weight, word: 'colder', words };
  }
  const words =
    hours(is.value) === '0.0'
      ? `nobody is in a room that is too cold any more (${was.room})`
      : `people are in rooms that are too cold only ${now}`;
  return { of: 'cold', better: true, weight, word: 'less cold', words };
}

/** The room that changes most, where what the room worst off tells is not the same. */
function inOtherRoom(from: PlanFigures, to: PlanFigures, worst: Effect | null): Effect | null {
  const changes = Object.entries(to.coldOf)
    .map(([room, is]) => ({ room, is, was: from.coldOf[room] ?? is }))
    .filter(({ room, is, was }) => {
      // The room worst off is told already, or hardly changes.
      return room !== to.cold.room && is !== was && worst?.better !== is < was;
    });
  const [most] = changes.toSorted((a, b) => Math.abs(b.is - b.was) - Math.abs(a.is - a.was));
  if (most === undefined || Math.abs(most.is - most.was) < CLEAR_ELSEWHERE) return null;
  const { room, is, was } = most;
  const better = is < was;
  const figures = `${hours(is)}${NO_BREAK}h a day with somebody in (was ${hours(was)})`;
  return {
    ...{ of: 'cold', better, weight: Math.abs(is - was) / CLEAR_ELSEWHERE },
    word: `${better ? 'less cold' : 'colder'} in ${room}`,
    words: `${room} is too cold ${better ? 'only ' : ''}${figures}`,
  };
}

/** Less cold or more by so much is clear to anybody, and less than that is no news. [h/day] */
const CLEAR = 0.5;
/** In a room that is not the one worst off. [h/day] */
const CLEAR_ELSEWHERE = 2;
const hours = (value: number): string => figureText(value, 1);
/** Keeps a figure and its unit on one line. */
const NO_BREAK = '\u00a0';
