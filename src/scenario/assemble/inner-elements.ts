import { chainFromUValue } from '../../home/chain.ts';
import type { Doorway, Element } from '../../home/home.ts';
import { surfacesOf } from '../../home/surfaces.ts';
import { INNER_CAPACITY } from '../presets/fabric.ts';
import type { BuildFacts } from './build-facts.ts';
import type { Defaults } from './defaults.ts';
import type { RoomPlan } from './room-plans.ts';

/**
 * Walls and floors between rooms, where nobody drew them.
 *
 * Rooms of one storey that share a doorway share a wall as long as the smaller of their sides;
 * an upper room lies over one lower room. Rooms with elements of their own are left alone.
 */
export function innerElements(
  plans: readonly RoomPlan[],
  doorways: readonly Doorway[],
  facts: BuildFacts,
  defaults: Defaults,
): Element[] {
  return [...innerWalls(plans, doorways, facts), ...innerFloors(plans, facts, defaults)];
}

function innerWalls(
  plans: readonly RoomPlan[],
  doorways: readonly Doorway[],
  facts: BuildFacts,
): Element[] {
  const chain = chainFromUValue(
    facts.innerWallUValue,
    INNER_CAPACITY * 1000,
    surfacesOf('partition'),
    'middle',
  );
  const seen = new Set<string>();
  return doorways.flatMap((doorway): Element[] => {
    const [a, b] = doorway.rooms.map((room) => plans[room]!) as [RoomPlan, RoomPlan];
    const pair = [a.index, b.index].sort().join();
    const drawn = a.data.elements === undefined && b.data.elements === undefined;
    if (!drawn || a.storey !== b.storey || seen.has(pair)) return [];
    seen.add(pair);
    const side = Math.sqrt(Math.min(a.area, b.area)) * Math.min(a.height, b.height);
    const area = side - doorway.width * doorway.height;
    if (area <= 0) return [];
    const name = `wall between ${a.name} and ${b.name}`;
    const far = { to: 'room', room: b.index } as const;
    return [{ name, room: a.index, kind: 'partition', area, chain, far }];
  });
}

function innerFloors(plans: readonly RoomPlan[], facts: BuildFacts, defaults: Defaults): Element[] {
  const uValue = facts.innerFloorUValue;
  const chain = chainFromUValue(uValue, INNER_CAPACITY * 1000, surfacesOf('partition'), 'middle');
  const free = new Map(plans.map((plan) => [plan.name, plan.area]));
  const upper = plans
    .filter((plan) => plan.below === 'room' && plan.data.elements === undefined)
    .sort((a, b) => b.area - a.area);
  return upper.flatMap((plan): Element[] => {
    const lower = plans
      .filter((other) => other.storey === plan.storey - 1 && other.data.elements === undefined)
      .sort((a, b) => free.get(b.name)! - free.get(a.name)!);
    const likely = lower[0];
    if (likely === undefined && plan.data.over === undefined) return [];
    const at = ['home', 'rooms', plan.name, 'over'];
    const source = 'the room below with most ceiling left';
    const over = defaults.word(at, plan.data.over, likely?.name ?? '', source);
    const under = plans.find(({ name }) => name === over);
    if (under === undefined) return [];
    const area = Math.min(plan.area, under.area);
    free.set(over, free.get(over)! - area);
    const name = `floor between ${plan.name} and ${over}`;
    const far = { to: 'room', room: under.index } as const;
    return [{ name, room: plan.index, kind: 'partition', area, chain, far }];
  });
}
