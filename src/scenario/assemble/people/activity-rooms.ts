import type { Notice } from '../../../home/notices.ts';
import { andList } from '../../../units/word-list.ts';
import type { ActivityData } from '../../model/scenario-model.ts';
import { ACTIVITIES } from '../../presets/activities.ts';
import { firstUsedAs, type Use } from '../../presets/rooms.ts';
import { type RoomPlan, roomCalled } from '../room-plans.ts';

/** Where an activity takes place. */
export interface ActivityRoom {
  /** Index of the room. */
  readonly index: number;
  /** The use of a room that it should have been, where the home has none of any that would do; else null. */
  readonly wanted: Use | null;
}

/**
 * The room that an activity names, or the first of a use that suits it. In a home that lists none of those a
 * shower's moisture goes where the door of the bathroom would: to the utility room, the hall or the kitchen;
 * everything else to where people spend the day.
 */
export function activityRoom(
  { what, room }: Pick<ActivityData, 'what' | 'room'>,
  plans: readonly RoomPlan[],
): ActivityRoom {
  if (room !== undefined) {
    return { index: roomCalled(room, plans), wanted: null };
  }
  const { uses } = ACTIVITIES[what];
  const first = (among: readonly Use[]): number =>
    among.map((use) => firstUsedAs(plans, use)).find((k) => k >= 0) ?? -1;
  const suited = first(uses);
  if (suited >= 0) return { index: suited, wanted: null };
  const others = uses.includes('bathroom') ? BESIDE_BATHROOM : LIVED_IN;
  const wanted = uses.find((use) => !SECOND_BEST.has(use)) ?? uses[0]!;
  return { index: Math.max(0, first(others)), wanted };
}

/** Activities that take place elsewhere than where such things are done, by room: "shower and bath in hall". */
export function activitiesElsewhere(
  done: readonly ActivityData[],
  plans: readonly RoomPlan[],
): { readonly words: string; readonly wanted: Use }[] {
  const found = new Map<string, { room: string; wanted: Use; names: Set<string> }>();
  for (const activity of done) {
    const { index, wanted } = activityRoom(activity, plans);
    if (wanted === null) continue;
    const room = plans[index]!.name;
    const key = JSON.stringify([room, wanted]);
    const group = found.get(key) ?? { room, wanted, names: new Set() };
    group.names.add(activity.name ?? activity.what);
    found.set(key, group);
  }
  return [...found.values()].map(({ room, wanted, names }) => ({
    words: `${andList([...names])} in ${room}`,
    wanted,
  }));
}

/** Asks about them: a room may have been left out, or its use not been recognised by its name. */
export const askAboutElsewhere = (
  done: readonly ActivityData[],
  plans: readonly RoomPlan[],
): Notice[] =>
  activitiesElsewhere(done, plans).map(({ words, wanted }) => ({
    id: 'activity-elsewhere',
    text: `No ${ROOMS[wanted] ?? `${wanted} room`} is listed, so this takes place elsewhere: ${words}. If there is one, list it, or give its room "use: ${wanted}"; else say in which "room" it is done.`,
  }));

const BESIDE_BATHROOM: readonly Use[] = [
  'utility',
  'hall',
  'kitchen',
  'living',
  'dining',
  'bedroom',
];
const LIVED_IN: readonly Use[] = ['living', 'dining', 'kitchen', 'study', 'hall', 'bedroom'];
/** Rooms that a home need not have for an activity to be at its place. */
const SECOND_BEST: ReadonlySet<Use> = new Set(['utility', 'hall']);
const ROOMS: Partial<Record<Use, string>> = { bathroom: 'bathroom', kitchen: 'kitchen' };
