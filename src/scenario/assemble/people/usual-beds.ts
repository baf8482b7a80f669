import type { PersonData } from '../../model/scenario-model.ts';
import { firstUsedAs, isForChildren, isForGuests } from '../../presets/rooms.ts';
import { type RoomPlan, roomCalled } from '../room-plans.ts';

/**
 * Room in which each person sleeps, in the order of the list: the one that is named, else as is usual. Two
 * grown people share the first bedroom that is no child's and no guest's, infants sleep with them, and everybody
 * else has a bedroom that is empty, as far as there are any. Without bedrooms all sleep where people live.
 *
 * @returns indices of rooms; of somebody with a schedule of their own it says nothing
 */
export function bedRooms(given: readonly PersonData[], plans: readonly RoomPlan[]): number[] {
  const named = given.map((person) =>
    roomCalled(person['sleeps in'] ?? bedBySchedule(person), plans),
  );
  const rooms = plans.filter(({ use }) => use === 'bedroom');
  if (rooms.length === 0) {
    const living = Math.max(0, firstUsedAs(plans, 'living'));
    return named.map((room) => (room >= 0 ? room : living));
  }
  const beds = [...named];
  const sleepers = (room: RoomPlan, who: (person: PersonData) => boolean): number =>
    beds.filter((bed, k) => bed === room.index && who(given[k]!)).length;
  const grownFirst = rooms.toSorted((a, b) => strangeness(a) - strangeness(b));
  const main = grownFirst[0]!;
  const emptiest = (order: readonly RoomPlan[]): RoomPlan =>
    order.toSorted(
      (a, b) => sleepers(a, isGrown) - sleepers(b, isGrown) || sleepers(a, all) - sleepers(b, all),
    )[0]!;
  const assign = (who: (person: PersonData) => boolean, room: () => RoomPlan): void =>
    given.forEach((person, k) => {
      if (beds[k]! < 0 && who(person)) beds[k] = room().index;
    });

  assign(isGrown, () => (sleepers(main, isGrown) < COUPLE ? main : emptiest(grownFirst)));
  const parents = given.findIndex(isGrown);
  assign(isInfant, () => rooms.find(({ index }) => index === beds[parents]) ?? main);
  const childrenFirst = rooms.toSorted((a, b) => childish(a) - childish(b));
  assign(all, () => emptiest(childrenFirst));
  return beds;
}

/** Where somebody with a schedule sleeps. */
const bedBySchedule = ({ schedule }: PersonData): string | undefined =>
  schedule?.find(({ asleep }) => asleep === true)?.room;

const all = (): boolean => true;
const isInfant = ({ who }: PersonData): boolean => who === 'infant';
const isGrown = ({ who = 'adult' }: PersonData): boolean => who !== 'infant' && who !== 'child';
/** How unlikely it is that grown people of the home sleep there. */
const strangeness = ({ name }: RoomPlan): number =>
  Number(isForChildren(name)) + Number(isForGuests(name));
const childish = ({ name }: RoomPlan): number =>
  Number(isForGuests(name)) - Number(isForChildren(name));
const COUPLE = 2;
