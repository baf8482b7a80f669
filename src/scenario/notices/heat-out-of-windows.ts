import type { Condition, RuleAction } from '../../control/automation.ts';
import type { Notice } from '../../home/notices.ts';
import { theRoom } from '../../units/the-room.ts';
import { andList } from '../../units/word-list.ts';
import { momentsOf } from '../week-value.ts';
import type { CautionContext } from './caution-context.ts';
import { isOfHour, isThen, turnsOf } from './hour-conditions.ts';
import { inTenths } from './in-tenths.ts';
import { areOpenToEachOther, type RoomHeat, roomHeats } from './room-heat.ts';

/** What opens windows once some readings are met. */
interface Opener {
  readonly name: string;
  readonly all: readonly Condition[];
  /** Rooms whose windows it opens. */
  readonly rooms: readonly number[];
  /** Lowest outdoor temperature at which it does. [°C] */
  readonly notBelow: number;
}

/**
 * Rules and habits that open windows because a room is warm, where heating itself keeps it as warm as
 * that: heat goes out of the window for as long as it is cold outdoors. What also asks for something that
 * heating does not bring about, such as stale air, or for outdoor air too warm for heating, is none.
 */
export function heatOutOfWindows(context: CautionContext): Notice[] {
  const heats = roomHeats(context);
  const words = openersOf(context).flatMap((opener) => {
    const kept = keptTrue(context, heats, opener);
    if (kept === null) return [];
    const { name } = context.home.rooms[kept.heat.room]!;
    const by = kept.heat.name === `heating of ${theRoom(name)}` ? 'heating' : kept.heat.name;
    return [
      `${opener.name} opens them above ${inTenths(kept.above)} °C in ${theRoom(name)}, which ${by} brings to ${inTenths(kept.to)} °C`,
    ];
  });
  if (words.length === 0) return [];
  return [
    {
      id: 'against-each-other',
      text: `Windows let out what heating puts in: ${andList([...new Set(words)])}. Open them above what is heated to, or only while it is mild outdoors.`,
    },
  ];
}

/** The heat that alone meets all that an opener asks of rooms, at some time; null where none does. */
function keptTrue(context: CautionContext, heats: readonly RoomHeat[], opener: Opener) {
  const { all, rooms, notBelow } = opener;
  const limit = Math.min(context.automation.heatingSeason?.outdoorBelow ?? MILD, MILD);
  const warmOut = ({ quantity, room, is, value }: Condition): boolean =>
    quantity === 'temperature' && room < 0 && is === 'above' && value >= limit;
  if (notBelow >= limit || all.some(warmOut)) return null;
  const ofRooms = all.filter(({ room, quantity }) => room >= 0 && !COME_AND_GO.has(quantity));
  const isWarm = ({ quantity, is }: Condition): boolean =>
    quantity === 'temperature' && is === 'above';
  if (ofRooms.length === 0 || !ofRooms.every(isWarm)) return null;
  const mayKeep = ({ room, value }: Condition): boolean =>
    heats.some((heat) => heat.room === room && heat.most > value);
  if (!ofRooms.every(mayKeep)) return null;
  const hours = all.filter(isOfHour);
  const schedules = [...heats.map(({ schedule }) => schedule), ...context.household.doorways];
  for (const moment of momentsOf(schedules, turnsOf(hours))) {
    if (!hours.every((hour) => isThen(hour, moment))) continue;
    const keeping = ofRooms.map(({ room, value }) =>
      heats.find((heat) => heat.room === room && heat.upTo(moment) > value),
    );
    const heat = keeping[0];
    if (heat === undefined || keeping.includes(undefined)) continue;
    if (!rooms.some((room) => areOpenToEachOther(context, [heat.room, room], moment))) continue;
    return { heat, above: ofRooms[0]!.value, to: heat.upTo(moment) };
  }
  return null;
}

function openersOf({ home, automation }: CautionContext): Opener[] {
  const roomsOf = (openings: readonly number[]) => openings.map((k) => home.openings[k]!.room);
  const habits = automation.airings.flatMap(({ name, after, openings, notBelow }): Opener[] =>
    after.by === 'readings' ? [{ name, all: after.all, rooms: roomsOf(openings), notBelow }] : [],
  );
  const rules = automation.rules.flatMap(({ name, all, actions }): Opener[] => {
    if (actions.some((action) => turnsDown(action, all))) return [];
    const opened = actions.flatMap((action) =>
      action.do === 'window' && action.openShare > 0 ? action.openings : [],
    );
    const rooms = roomsOf(opened);
    return opened.length === 0 ? [] : [{ name, all, rooms, notBelow: Number.NEGATIVE_INFINITY }];
  });
  return [...habits, ...rules];
}

/** Whether a rule that opens windows also keeps the heating from making the room as warm as it asks. */
const turnsDown = (action: RuleAction, all: readonly Condition[]): boolean =>
  action.do === 'setpoint' &&
  all.some(
    ({ quantity, room, value }) =>
      quantity === 'temperature' && room === action.room && action.setpoint <= value,
  );

/** So warm outdoors that an open window costs little heat; the highest limit of heating that is usual. [°C] */
const MILD = 15;
/** What is met and not met by turns, whatever is heated. */
const COME_AND_GO: ReadonlySet<string> = new Set(['presence', 'window']);
