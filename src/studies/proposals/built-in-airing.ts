import { items, mapping, readTolerantly } from '../../scenario/checks/tolerant-readers.ts';
import { AIRING } from '../../scenario/presets/activities.ts';
import type { BuiltIn, BuiltInContext } from './built-in.ts';

/**
 * Airing every room for ten minutes, mornings and evenings, besides the habits there are. Not
 * proposed where half of the rooms or more are aired so already: wide open, for half an hour at
 * most, twice a day or more.
 */
export function builtInAiring({ raw, plans }: BuiltInContext): BuiltIn | null {
  if ([raw, ...plans.map((plan) => plan.raw)].some(isAired)) return null;
  return {
    name: 'aired',
    says: 'all windows wide open for ten minutes every morning and evening',
    change: { household: { airing: [...habitsOf(raw), TWICE_A_DAY] } },
    buys: [],
  };
}

const habitsOf = (raw: unknown): readonly unknown[] =>
  items(mapping(mapping(raw)['household'])['airing']);

function isAired(raw: unknown): boolean {
  const rooms = Object.keys(mapping(mapping(mapping(raw)['home'])['rooms']));
  const aired = new Set(
    habitsOf(raw)
      .filter(isShortAndWide)
      .flatMap((habit) => roomsOf(habit, rooms)),
  );
  return rooms.length > 0 && 2 * aired.size >= rooms.length;
}

function isShortAndWide(habit: unknown): boolean {
  const { at, lasts = AIRING.lasts.value, wide = AIRING.wide.value } = mapping(habit);
  const often = items(at).length >= 2;
  return often && readTolerantly(lasts, 'min') <= 30 && readTolerantly(wide, '-') >= 0.5;
}

function roomsOf(habit: unknown, all: readonly string[]): readonly string[] {
  const { room, rooms = [] } = mapping(habit);
  if (rooms === 'all') return all;
  return [...items(rooms), ...(room === undefined ? [] : [room])].map(String);
}

const TWICE_A_DAY = { rooms: 'all', at: ['07:30', '19:00'], lasts: 10, wide: 1 };
