import type { Person } from '../../../control/household.ts';
import { COMMON } from '../../../units/preset.ts';
import { EVERY_DAY, spellOf } from '../../clock-words.ts';
import type { PersonData } from '../../model/scenario-model.ts';
import { PATTERN_OF, type Spot, STAYS } from '../../presets/patterns.ts';
import { firstUsedAs, type Use } from '../../presets/rooms.ts';
import type { Defaults } from '../defaults.ts';
import { type RoomPlan, roomCalled } from '../room-plans.ts';
import { bedRooms } from './usual-beds.ts';

/** Rooms in which an infant sleeps. */
export function infantRooms(given: readonly PersonData[], plans: readonly RoomPlan[]): Set<number> {
  return asleepIn(given, plans, ({ who }) => who === 'infant');
}

/** Rooms in which somebody sleeps. */
export const bedsOf = (given: readonly PersonData[], plans: readonly RoomPlan[]): Set<number> =>
  asleepIn(given, plans, () => true);

function asleepIn(
  given: readonly PersonData[],
  plans: readonly RoomPlan[],
  who: (person: PersonData) => boolean,
): Set<number> {
  const beds = bedRooms(given, plans);
  const stays = given.flatMap((person, k) => (who(person) ? staysOf(person, beds[k]!, plans) : []));
  return new Set(stays.filter(({ asleep }) => asleep).map(({ room }) => room));
}

/**
 * Where a person is by the clock.
 *
 * @param bed  room in which the person sleeps
 */
export function staysOf(
  person: PersonData,
  bed: number,
  plans: readonly RoomPlan[],
  listed?: { readonly defaults: Defaults; readonly index: number },
): Person['schedule'] {
  if (person.schedule !== undefined) {
    return person.schedule.map(({ room, days, months, from, to, asleep = false }) => ({
      ...spellOf(days, from, to, months),
      room: roomCalled(room, plans),
      asleep,
    }));
  }
  const usualPattern = person['works in'] === undefined ? PATTERN_OF[person.who ?? 'adult'] : DESK;
  const pattern = person.pattern ?? usualPattern;
  if (listed !== undefined) {
    const at = (key: string) => ['household', 'people', listed.index, key];
    listed.defaults.word(at('pattern'), person.pattern, pattern, COMMON);
    listed.defaults.word(at('sleeps in'), person['sleeps in'], plans[bed]!.name, BED_WORDS);
  }
  return STAYS[pattern].flatMap(({ spot, ...stay }) => {
    const stayIn = (room: number, days: number) => ({ ...stay, days, room });
    const usual = spot === 'bed' ? bed : spotRoom(spot, person, plans);
    const lives = person['lives in'];
    if (spot !== 'day' || lives === undefined) return [stayIn(usual, stay.days)];
    if (typeof lives === 'string') return [stayIn(roomCalled(lives, plans), stay.days)];
    const named = lives.map(({ room, days = EVERY_DAY }) => ({ room, days: days & stay.days }));
    const rest = named.reduce((days, one) => days & ~one.days, stay.days);
    return [
      ...named.map(({ room, days }) => stayIn(roomCalled(room, plans), days)),
      stayIn(usual, rest),
    ].filter(({ days }) => days !== 0);
  });
}

/** Room that a person uses as one of the places of a pattern. */
export function spotRoom(
  spot: Exclude<Spot, 'bed'>,
  person: PersonData,
  plans: readonly RoomPlan[],
): number {
  const works = person['works in'];
  if (spot === 'desk' && works !== undefined) return roomCalled(works, plans);
  return SPOT_USES[spot].map((use) => firstUsedAs(plans, use)).find((room) => room >= 0) ?? 0;
}

/** Pattern of those who say in which room they work. */
const DESK = 'works at home';

const BED_WORDS =
  'two grown people and infants share a bedroom, others have their own as far as there are';

const SPOT_USES: Readonly<Record<Exclude<Spot, 'bed'>, readonly Use[]>> = {
  day: ['living', 'dining', 'kitchen'],
  kitchen: ['kitchen', 'dining', 'living'],
  bath: ['bathroom', 'hall'],
  desk: ['study', 'living', 'dining'],
};
