import type { WeekSchedule } from '../../control/household.ts';
import { theRoom } from '../../units/the-room.ts';
import { ALL_YEAR } from '../month-words.ts';
import { valueAt, type WeekMoment } from '../week-value.ts';
import type { CautionContext } from './caution-context.ts';

/** What heats a room up to some temperature. */
export interface RoomHeat {
  readonly name: string;
  readonly room: number;
  /** Up to which air temperature it heats at a moment of the year; -Infinity where it does not. [°C] */
  readonly upTo: (moment: WeekMoment) => number;
  /** The highest of these. [°C] */
  readonly most: number;
  /** What it goes by. */
  readonly schedule: WeekSchedule;
}

/** All that heats by temperature: radiators and the like by their thermostats, and plug-in heaters. */
export function roomHeats(
  context: Pick<CautionContext, 'home' | 'household' | 'automation'>,
): RoomHeat[] {
  return [...byThermostats(context), ...byHeaters(context)];
}

/** Whether a doorway between two rooms, or the one room that they are, lets air through at a moment. */
export function areOpenToEachOther(
  { home, household }: Pick<CautionContext, 'home' | 'household'>,
  [a, b]: readonly [number, number],
  moment: WeekMoment,
): boolean {
  if (a === b) return true;
  return home.doorways.some(
    ({ rooms }, k) =>
      rooms.includes(a) && rooms.includes(b) && valueAt(household.doorways[k]!, moment) > 0,
  );
}

/** Half a deadband above the setting, less what the sensor reads too much. */
function byThermostats({
  home,
  household,
  automation,
}: Pick<CautionContext, 'home' | 'household' | 'automation'>): RoomHeat[] {
  const { months = ALL_YEAR } = automation.heatingSeason ?? {};
  const rooms = [...new Set(home.emitters.map(({ room }) => room))].sort((a, b) => a - b);
  return rooms.map((room) => {
    const { deadband, bias } = automation.thermostats[room]!;
    const schedule = household.setpoints[room]!;
    const beyond = deadband / 2 - bias;
    return {
      ...{ name: `heating of ${theRoom(home.rooms[room]!.name)}`, room, schedule },
      upTo: (moment) =>
        (months & (1 << moment.month)) === 0
          ? Number.NEGATIVE_INFINITY
          : valueAt(schedule, moment) + beyond,
      most: highest(schedule) + beyond,
    };
  });
}

function byHeaters({ home, automation }: Pick<CautionContext, 'home' | 'automation'>): RoomHeat[] {
  return automation.deviceControls.flatMap(({ device, by, permitted }): RoomHeat[] => {
    const { name, does } = home.devices[device]!;
    if (does.kind !== 'heater' || by.kind !== 'reading') return [];
    const { room, clear } = by.on;
    return [
      {
        ...{ name, room, schedule: permitted, most: clear },
        upTo: (moment) => (valueAt(permitted, moment) > 0 ? clear : Number.NEGATIVE_INFINITY),
      },
    ];
  });
}

const highest = ({ base, spells }: WeekSchedule): number =>
  Math.max(base, ...spells.map(({ value }) => value));
