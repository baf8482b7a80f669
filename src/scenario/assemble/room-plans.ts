import type { RoomData, ScenarioData } from '../model/scenario-model.ts';
import { HEIGHT, isToilet, OUTER_SIDES, type Use, useInName, useOfName } from '../presets/rooms.ts';
import type { BuildFacts } from './build-facts.ts';
import type { Defaults } from './defaults.ts';

/** Where a room lies and how large it is, before walls are drawn. */
export interface RoomPlan {
  readonly name: string;
  readonly index: number;
  readonly data: RoomData;
  readonly use: Use;
  readonly area: number;
  readonly height: number;
  readonly storey: number;
  readonly above: 'roof' | 'room' | 'neighbour';
  readonly below: 'ground' | 'room' | 'neighbour' | 'outdoors';
  readonly faces: number;
}

export function roomPlans(data: ScenarioData, facts: BuildFacts, defaults: Defaults): RoomPlan[] {
  const flat = facts.shape === 'flat';
  const names = Object.keys(data.home.rooms);
  const placed = names.map((name, index) => {
    const room = data.home.rooms[name]!;
    const use = defaults.word(
      ['home', 'rooms', name, 'use'],
      room.use,
      useOfName(name),
      useInName(name) === null ? 'its name tells no use' : 'its name',
    );
    return { name, index, room, use, storey: storeyOf(name, data, flat, defaults) };
  });
  const top = Math.max(...placed.map(({ storey }) => storey));
  const atFront = frontRooms(placed);
  return placed.map(({ name, index, room, use, storey }) => {
    const at = (key: string) => ['home', 'rooms', name, key];
    const drawn = room.elements === undefined;
    const faces = facts.front + (atFront.has(name) ? 0 : 180);
    const likely = { value: faces % 360, low: 0, high: 360, source: FACES_SOURCE };
    return {
      name,
      index,
      data: room,
      use,
      area: room['floor area'],
      height: room.height ?? defaults.number(['home', 'height'], data.home.height, HEIGHT),
      storey,
      above: drawn ? (room.above ?? over(flat, storey === top)) : 'neighbour',
      below: drawn ? (room.below ?? under(flat, storey <= 0)) : 'neighbour',
      faces: needsFacing(room)
        ? defaults.number(at('faces'), room.faces, likely)
        : (room.faces ?? 0),
    };
  });
}

/** Number of the room of a name; -1 for none. */
export const roomCalled = (name: string | undefined, plans: readonly RoomPlan[]): number =>
  plans.findIndex((plan) => plan.name === name);

/**
 * Names of the rooms that look where the home's front does, where nobody says. A home of few rooms
 * has one at the back too: with all windows on one side hardly any wind would blow through it.
 */
function frontRooms(placed: readonly Placed[]): ReadonlySet<string> {
  const firstBedroom = placed.find(({ use }) => use === 'bedroom')?.name;
  const isFront = ({ use, name }: Placed) => FRONT_USES.has(use) || name === firstBedroom;
  const unsaid = placed.filter(({ room }) => needsFacing(room));
  const oneSided = unsaid.length > 1 && unsaid.every(isFront);
  const front = placed.filter(isFront).map(({ name }) => name);
  return new Set(front.filter((name) => !(oneSided && name === firstBedroom)));
}

type Placed = { readonly name: string; readonly use: Use; readonly room: RoomData };

/** As given; one above the room it lies over; or by what it is for. */
function storeyOf(
  name: string,
  data: ScenarioData,
  flat: boolean,
  defaults: Defaults,
  above: readonly string[] = [],
): number {
  const room = data.home.rooms[name]!;
  if (room.storey === undefined && room.over !== undefined && !above.includes(name)) {
    return storeyOf(room.over, data, flat, defaults, [...above, name]) + 1;
  }
  const storeys = data.site?.storeys ?? 1;
  const upstairs = isUpstairs(name, data) && storeys > 1 && !flat;
  return defaults.number(['home', 'rooms', name, 'storey'], room.storey, {
    value: upstairs ? 1 : 0,
    low: 0,
    high: storeys - 1,
    source: 'common practice: bedrooms and bathrooms upstairs, a toilet besides them downstairs',
  });
}

/** Bedrooms and bathrooms; not a toilet of its own where a bathroom is listed besides. */
function isUpstairs(name: string, { home: { rooms } }: ScenarioData): boolean {
  const useOf = (room: string): Use => rooms[room]!.use ?? useOfName(room);
  if (!UPSTAIRS.has(useOf(name))) return false;
  return !(
    isToilet(name) &&
    Object.keys(rooms).some((room) => useOf(room) === 'bathroom' && !isToilet(room))
  );
}

const over = (flat: boolean, top: boolean) => (flat ? 'neighbour' : top ? 'roof' : 'room');
const under = (flat: boolean, low: boolean) => (flat ? 'neighbour' : low ? 'ground' : 'room');

/** Outer walls of a room, windows included: area [m2] and where each looks [deg]. */
export function outerWalls(
  plan: RoomPlan,
  facts: BuildFacts,
  defaults: Defaults,
): { area: number; faces: number }[] {
  const given = plan.data['outer walls'];
  if (given !== undefined) return given.map(({ area, faces = plan.faces }) => ({ area, faces }));
  const path = ['home', 'rooms', plan.name, 'outer sides'];
  const sides = defaults.number(path, plan.data['outer sides'], OUTER_SIDES[facts.shape]);
  const side = Math.sqrt(plan.area) * plan.height;
  const walls = [{ area: Math.min(sides, 1) * side, faces: plan.faces }];
  if (sides > 1) walls.push({ area: (sides - 1) * side, faces: (plan.faces + 90) % 360 });
  return walls.filter(({ area }) => area > 0);
}

/** True where some wall, window or opening of the room does not say where it looks. */
function needsFacing(room: RoomData): boolean {
  const walls = room.elements ?? room['outer walls'];
  const windowless = room['outer sides'] === 0 && (room.panes ?? []).length === 0;
  if (windowless && room.openings === undefined) return false;
  const parts = [walls, room.panes, room.openings];
  return parts.some((list) => list === undefined || list.some(({ faces }) => faces === undefined));
}

const UPSTAIRS: ReadonlySet<Use> = new Set(['bedroom', 'bathroom']);
const FRONT_USES: ReadonlySet<Use> = new Set(['living', 'hall', 'study']);
const FACES_SOURCE =
  'living room, hall and, where others are at the back, the first bedroom at the front; the rest at the back';
