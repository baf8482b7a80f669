import { items, mapping, readTolerantly, roomNames, textOf } from '../checks/tolerant-readers.ts';
import { AIRING } from '../presets/activities.ts';
import type { Edit } from './edit.ts';

/**
 * All windows wide open for some minutes, mornings and evenings, besides the habits there are.
 *
 * @param raw  a scenario as plain values
 * @param minutes  each time
 */
export const addAiring = (raw: unknown, minutes = 10): Edit => ({
  household: { airing: [...habitsOf(raw), { ...TWICE_A_DAY, lasts: minutes }] },
});

/**
 * All windows wide open at some times of the day, besides the habits there are; by motors where all rooms
 * have them.
 *
 * @param raw      a scenario as plain values
 * @param at       "HH:MM"
 * @param minutes  how long each time
 */
export const addAiringAt = (raw: unknown, at: readonly string[], minutes: number): Edit => ({
  household: {
    airing: [
      ...habitsOf(raw),
      {
        ...{ rooms: 'all', at: [...at], lasts: minutes, [OPEN_SHARE]: 1 },
        ...(isAiredByMotors(raw) && { by: MOTOR }),
      },
    ],
  },
});

/**
 * Whether motors open windows in every room by the clock.
 *
 * @param raw  a scenario as plain values
 */
export function isAiredByMotors(raw: unknown): boolean {
  const rooms = roomNames(mapping(raw));
  const byMotor = habitsOf(raw).filter((habit) => mapping(habit)['by'] === MOTOR);
  const aired = new Set(byMotor.flatMap((habit) => roomsOf(habit, rooms)));
  return rooms.length > 0 && rooms.every((room) => aired.has(room));
}

/**
 * Whether half of the rooms or more are aired as `addAiring` would have it: wide open, for half an
 * hour at most, twice a day or more.
 *
 * @param raw  a scenario as plain values
 */
export function isAiredDaily(raw: unknown): boolean {
  const rooms = roomNames(mapping(raw));
  const aired = new Set(
    habitsOf(raw)
      .filter(isShortAndWide)
      .flatMap((habit) => roomsOf(habit, rooms)),
  );
  return rooms.length > 0 && 2 * aired.size >= rooms.length;
}

const habitsOf = (raw: unknown): readonly unknown[] => items(mapping(raw, 'household')['airing']);

function isShortAndWide(habit: unknown): boolean {
  const {
    at,
    lasts = AIRING.lasts.value,
    [OPEN_SHARE]: open = AIRING.openShare.value,
  } = mapping(habit);
  const often = items(at).length >= 2;
  return often && readTolerantly(lasts, 'min') <= 30 && readTolerantly(open, '-') >= 0.5;
}

function roomsOf(habit: unknown, all: readonly string[]): readonly string[] {
  const { room, rooms = [] } = mapping(habit);
  if (rooms === 'all') return all;
  return [...items(rooms), ...(room === undefined ? [] : [room])].map(textOf);
}

const OPEN_SHARE = 'open share';
const MOTOR = 'motor';
const TWICE_A_DAY = { rooms: 'all', at: ['07:30', '19:00'], [OPEN_SHARE]: 1 };
