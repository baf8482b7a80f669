import type { PlanMeasures } from '../plan-measures.ts';
import type { RoomSums } from '../room-sums.ts';
import type { FuelUse } from './energy-use.ts';

/**
 * Heat from emitters and what was bought for it. A fuel that only appliances and devices draw is
 * not listed; the wood of a stove is, though its heat does not come by emitters.
 *
 * @param rooms   sums of each room
 * @param byPresence  whether presence decides when some room is heated
 */
export function heatingMeasures(
  rooms: readonly RoomSums[],
  uses: readonly FuelUse[],
  byPresence: boolean,
): PlanMeasures['heating'] {
  const bought = uses.filter(({ heats }) => heats);
  return {
    useful_kwh: rooms.reduce((sum, { heatingKwh }) => sum + heatingKwh, 0),
    delivered_kwh: Object.fromEntries(bought.map(({ fuel, heatKwh }) => [fuel, heatKwh])),
    with_window_open_kwh: rooms.reduce((sum, room) => sum + room.heatingWithWindowOpenKwh, 0),
    by_presence: byPresence,
  };
}

/**
 * Mean price of heat from emitters, by the meter and without standing charges.
 *
 * @returns [currency/kWh]; null where there was no such heat or a price of it is not known
 */
export function priceOfHeat(uses: readonly FuelUse[], usefulKwh: number): number | null {
  if (!(usefulKwh > 0) || uses.some(({ sourceCost }) => sourceCost === null)) return null;
  return uses.reduce((sum, { sourceCost }) => sum + (sourceCost ?? 0), 0) / usefulKwh;
}
