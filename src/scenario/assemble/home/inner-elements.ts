import { chainFromUValue } from '../../../home/chain.ts';
import type { Doorway, Element } from '../../../home/home.ts';
import { surfacesOf } from '../../../home/surfaces.ts';
import { INNER_CAPACITY } from '../../presets/fabric.ts';
import type { BuildFacts } from '../build-facts.ts';
import type { RoomPlan } from '../room-plans.ts';
import type { FloorPiece } from './floors-between.ts';

/**
 * Walls and floors between rooms, where nobody drew them.
 *
 * Rooms of one storey that share a doorway share a wall as long as the smaller of their sides; rooms with
 * elements of their own are left alone.
 *
 * @param floors  how floors lie over rooms of the storey below
 */
export function innerElements(
  plans: readonly RoomPlan[],
  doorways: readonly Doorway[],
  facts: BuildFacts,
  floors: readonly FloorPiece[],
): Element[] {
  return [...innerWalls(plans, doorways, facts), ...innerFloors(floors, facts)];
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

function innerFloors(pieces: readonly FloorPiece[], facts: BuildFacts): Element[] {
  const uValue = facts.innerFloorUValue;
  const chain = chainFromUValue(uValue, INNER_CAPACITY * 1000, surfacesOf('partition'), 'middle');
  return pieces.map(({ upper, lower, area }) => ({
    name: `floor between ${upper.name} and ${lower.name}`,
    room: upper.index,
    kind: 'partition',
    ...{ area, chain, far: { to: 'room', room: lower.index } },
  }));
}
