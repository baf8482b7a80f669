import type { Notice } from '../../home/notices.ts';
import { theRoom } from '../../units/the-room.ts';
import { momentsOf, valueAt } from '../week-value.ts';
import type { CautionContext } from './caution-context.ts';
import { inTenths } from './in-tenths.ts';
import { areOpenToEachOther, type RoomHeat, roomHeats } from './room-heat.ts';

/**
 * What heats a room to more than something cools that room to, or one that an open doorway leads to, at
 * some time of the year at which both may run: one adds the heat that the other takes out. A deadband
 * counts as far as heating goes on past its setting.
 */
export function heatAgainstCold(context: CautionContext): Notice[] {
  const { home, household } = context;
  const cooled = [...new Set((home.cooling ?? []).map(({ room }) => room))];
  if (cooled.length === 0) return [];
  const heats = roomHeats(context);
  const pairs = cooled.flatMap((room) =>
    heats.flatMap((heat) => {
      const clash = firstClash(context, heat, room);
      if (clash === null) return [];
      const { name } = home.rooms[room]!;
      const beside = heat.room === room ? '' : ', through an open doorway';
      return [
        `${heat.name} (to ${inTenths(clash.to)} °C) and cooling of ${theRoom(name)} (from ${inTenths(clash.from)} °C)${beside}`,
      ];
    }),
  );
  if (pairs.length === 0) return [];
  const more = pairs.length > MOST ? `; and ${pairs.length - MOST} more` : '';
  return [
    {
      id: 'against-each-other',
      text: `Work against each other: ${pairs.slice(0, MOST).join('; ')}${more}. One adds the heat that the other takes out, and both are paid for: set cooling two kelvins or more above heating, or cool in other months.`,
    },
  ];

  function firstClash(of: CautionContext, heat: RoomHeat, room: number) {
    const cold = household.cooling![room]!;
    const coolest = Math.min(cold.base, ...cold.spells.map(({ value }) => value));
    if (!(heat.most > coolest)) return null;
    for (const moment of momentsOf([heat.schedule, cold, ...household.doorways])) {
      const [to, from] = [heat.upTo(moment), valueAt(cold, moment)];
      if (to > from && areOpenToEachOther(of, [heat.room, room], moment)) return { to, from };
    }
    return null;
  }
}

const MOST = 3; // pairs that anybody reads
