import type { Activity } from '../../../control/household.ts';
import { EVERY_DAY } from '../../clock-words.ts';
import type { RoomPlan } from '../room-plans.ts';

/** What rooms get at all hours besides people and activities; rooms that say nothing get none. */
export function steadySources(plans: readonly RoomPlan[], species: number): Activity[] {
  return plans.flatMap(({ name, index, data }): Activity[] => {
    const moisture = data['steady moisture'] ?? 0;
    const heat = data['steady heat'] ?? 0;
    if (moisture === 0 && heat === 0) return [];
    return [
      {
        name: `steady sources (${name})`,
        room: index,
        when: [{ days: EVERY_DAY, from: 0, to: 1440 }],
        heat,
        electricity: 0,
        vapour: moisture / GRAMS_AN_HOUR,
        drying: 0,
        species: new Array<number>(species).fill(0),
      },
    ];
  });
}

/** [g/h] in a kg/s. */
const GRAMS_AN_HOUR = 3.6e6;
