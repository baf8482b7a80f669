import type { Person } from '../../control/household.ts';
import { COMMON } from '../../units/preset.ts';
import { EVERY_DAY, spellOf } from '../clock-words.ts';
import { PATTERN_OF, type Spot, STAYS } from '../presets/patterns.ts';
import { firstUsedAs, type Use } from '../presets/rooms.ts';
import type { Defaults } from './defaults.ts';
import type { PersonData } from './people.ts';
import type { RoomPlan } from './room-plans.ts';

/** Rooms in which an infant sleeps. */
export function infantRooms(given: readonly PersonData[], plans: readonly RoomPlan[]): Set<number> {
  return bedsOf(
    given.filter(({ who }) => who === 'infant'),
    plans,
  );
}

/** Rooms in which somebody sleeps. */
export function bedsOf(given: readonly PersonData[], plans: readonly RoomPlan[]): Set<number> {
  const stays = given.flatMap((person) => staysOf(person, plans));
  return new Set(stays.filter(({ asleep }) => asleep).map(({ room }) => room));
}

/** Where a person is by the clock. */
export function staysOf(
  person: PersonData,
  plans: readonly RoomPlan[],
  listed?: { readonly defaults: Defaults; readonly index: number },
): Person['schedule'] {
  if (person.schedule !== undefined) {
    return person.schedule.map(({ room, days, months, from, to, asleep = false }) => ({
      ...spellOf(days, from, to, months),
      room: indexOf(room, plans),
      asleep,
    }));
  }
  const usualPattern = person['works in'] === undefined ? PATTERN_OF[person.who ?? 'adult'] : DESK;
  const pattern = person.pattern ?? usualPattern;
  if (listed !== undefined) {
    const at = (key: string) => ['household', 'people', listed.index, key];
    listed.defaults.word(at('pattern'), person.pattern, pattern, COMMON);
    const bed = plans[spotRoom('bed', person, plans)]!.name;
    listed.defaults.word(at('sleeps in'), person['sleeps in'], bed, 'the first bedroom');
  }
  return STAYS[pattern].flatMap(({ spot, ...stay }) => {
    const stayIn = (room: number, days: number) => ({ ...stay, days, room });
    const usual = spotRoom(spot, person, plans);
    const lives = person['lives in'];
    if (spot !== 'day' || lives === undefined) return [stayIn(usual, stay.days)];
    if (typeof lives === 'string') return [stayIn(indexOf(lives, plans), stay.days)];
    const named = lives.map(({ room, days = EVERY_DAY }) => ({ room, days: days & stay.days }));
    const rest = named.reduce((days, one) => days & ~one.days, stay.days);
    return [
      ...named.map(({ room, days }) => stayIn(indexOf(room, plans), days)),
      stayIn(usual, rest),
    ].filter(({ days }) => days !== 0);
  });
}

/** Room that a person uses as one of the places of a pattern. */
export function spotRoom(spot: Spot, person: PersonData, plans: readonly RoomPlan[]): number {
  const sleeps = person['sleeps in'];
  const works = person['works in'];
  if (spot === 'bed' && sleeps !== undefined) return indexOf(sleeps, plans);
  if (spot === 'desk' && works !== undefined) return indexOf(works, plans);
  return SPOT_USES[spot].map((use) => firstUsedAs(plans, use)).find((room) => room >= 0) ?? 0;
}

/** Pattern of those who say in which room they work. */
const DESK = 'works at home';

export const indexOf = (name: string, plans: readonly RoomPlan[]) =>
  plans.findIndex((plan) => plan.name === name);

const SPOT_USES: Readonly<Record<Spot, readonly Use[]>> = {
  bed: ['bedroom', 'living'],
  day: ['living', 'dining', 'kitchen'],
  kitchen: ['kitchen', 'dining', 'living'],
  bath: ['bathroom', 'hall'],
  desk: ['study', 'living', 'dining'],
};
