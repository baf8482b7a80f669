import type { Home } from '../../home/home.ts';
import { type Elimination, planElimination, positionOf } from '../numerics/sparse.ts';
import { ROOM } from './state-layout.ts';
import type { Walls } from './walls.ts';

/**
 * Heat of all rooms as one linear system: the radiant node of room i is unknown 2 i, its air 2 i + 1,
 * both as means over the step.
 *
 * The radiant node has no capacity. Walls, panes and furnishings join it to the air through their
 * surfaces; all of that is constant and is summed here once. Flows of air and what the air stores
 * change from step to step.
 */
export interface HeatNetwork {
  readonly elimination: Elimination;
  /** Conductances that never change, by position. [W/K] */
  readonly fixed: Float64Array;
  readonly matrix: Float64Array;
  readonly work: Float64Array;
  readonly rhs: Float64Array;
  readonly rhsWork: Float64Array;
  readonly solution: Float64Array;
  /** Positions of each doorway's two off-diagonal values: first room's row, then second room's. */
  readonly doors: Int32Array;
  /** Both rows of a room, column by column: `[start[i], start[i + 1])`. */
  readonly start: Int32Array;
  readonly radiantRow: Int32Array;
  readonly airRow: Int32Array;
  readonly column: Int32Array;
  /** Position of each room's radiant node in the row of its air. */
  readonly across: Int32Array;
  /** Sun on the surfaces of each room. [W] */
  readonly sunOnSurfaces: Float64Array;
}

export function layOutHeat(home: Home, walls: Walls, rooms: Float64Array): HeatNetwork {
  const n = home.rooms.length;
  const joined = joinedRooms(home);
  const elimination = planElimination(2 * n, unknowns(joined, n), byRooms(joined, n));
  const perValue = (): Float64Array => new Float64Array(elimination.size);
  const perRow = (): Float64Array => new Float64Array(2 * n);
  return {
    elimination,
    fixed: fixedConductances(elimination, walls, rooms, n),
    matrix: perValue(),
    work: perValue(),
    rhs: perRow(),
    rhsWork: perRow(),
    solution: perRow(),
    doors: Int32Array.from(
      home.doorways.flatMap(({ rooms: [a, b] }) => [
        positionOf(elimination, 2 * a + 1, 2 * b + 1),
        positionOf(elimination, 2 * b + 1, 2 * a + 1),
      ]),
    ),
    ...bothRows(elimination, joined, n),
    across: Int32Array.from(home.rooms, (_, i) => positionOf(elimination, 2 * i + 1, 2 * i)),
    sunOnSurfaces: new Float64Array(n),
  };
}

type Pair = readonly [number, number];

/** Rooms that share a doorway or a partition. */
function joinedRooms({ doorways, elements }: Home): Pair[] {
  return [
    ...doorways.map((d) => d.rooms),
    ...elements.flatMap(({ room, far }) => (far.to === 'room' ? [[room, far.room] as const] : [])),
  ];
}

/** Every unknown of two joined rooms sees every other, and a room's radiant node its air. */
function unknowns(joined: readonly Pair[], n: number): Pair[] {
  const own = Array.from({ length: n }, (_, i): Pair => [2 * i, 2 * i + 1]);
  const shared = joined.flatMap(([a, b]): Pair[] => [
    [2 * a, 2 * b],
    [2 * a, 2 * b + 1],
    [2 * a + 1, 2 * b],
    [2 * a + 1, 2 * b + 1],
  ]);
  return [...own, ...shared];
}

/** Room by room in an order of little fill, each room's radiant node before its air. */
function byRooms(joined: readonly Pair[], n: number): number[] {
  return [...planElimination(n, joined).order].flatMap((i) => [2 * i, 2 * i + 1]);
}

function bothRows(elimination: Elimination, joined: readonly Pair[], n: number) {
  const around = Array.from({ length: n }, (_, i) => new Set([i]));
  for (const [a, b] of joined) {
    around[a]!.add(b);
    around[b]!.add(a);
  }
  const columns = around.map((rooms) => [...rooms].flatMap((j) => [2 * j, 2 * j + 1]));
  const start = new Int32Array(n + 1);
  columns.forEach((list, i) => {
    start[i + 1] = start[i]! + list.length;
  });
  const row = (offset: number): Int32Array =>
    Int32Array.from(
      columns.flatMap((list, i) => list.map((j) => positionOf(elimination, 2 * i + offset, j))),
    );
  return { start, radiantRow: row(0), airRow: row(1), column: Int32Array.from(columns.flat()) };
}

function fixedConductances(
  elimination: Elimination,
  walls: Walls,
  rooms: Float64Array,
  n: number,
): Float64Array {
  const fixed = new Float64Array(elimination.size);
  const add = (row: number, column: number, g: number): void => {
    const k = positionOf(elimination, row, column);
    fixed[k] = fixed[k]! + g;
  };
  for (let c = 0; c < walls.count; c++) {
    const near = faceOf(walls.near[c]!, walls.nearAir[c]!, walls.nearRadiant[c]!);
    const joins = (here: Face, there: Face, answer: number): void => {
      for (const from of here.sees) {
        for (const to of there.sees) add(from.row, to.row, -from.g * answer * (to.g / there.g));
      }
    };
    for (const { row, g } of near.sees) add(row, row, g);
    joins(near, near, walls.nearToNear[c]!);
    if (walls.far[c]! < 0) continue;
    const far = faceOf(walls.far[c]!, walls.farAir[c]!, walls.farRadiant[c]!);
    for (const { row, g } of far.sees) add(row, row, g);
    joins(far, far, walls.farToFar[c]!);
    joins(near, far, walls.farToNear[c]!);
    joins(far, near, walls.nearToFar[c]!);
  }
  for (let i = 0; i < n; i++) addPanes(rooms, i, add);
  return fixed;
}

interface Face {
  readonly g: number;
  readonly sees: readonly { readonly row: number; readonly g: number }[];
}

function faceOf(room: number, air: number, radiant: number): Face {
  return {
    g: air + radiant,
    sees: [
      { row: 2 * room, g: radiant },
      { row: 2 * room + 1, g: air },
    ],
  };
}

/** Panes join air and radiant node with each other and with outdoors; a room without surfaces has one temperature. */
function addPanes(
  rooms: Float64Array,
  i: number,
  add: (row: number, column: number, g: number) => void,
): void {
  const r = i * ROOM.stride;
  const air = rooms[r + ROOM.paneAir]!;
  const radiant = rooms[r + ROOM.paneRadiant]!;
  const between = rooms[r + ROOM.paneBetween]!;
  add(2 * i + 1, 2 * i + 1, air + between);
  add(2 * i, 2 * i, radiant + between);
  add(2 * i + 1, 2 * i, -between);
  add(2 * i, 2 * i + 1, -between);
  if (rooms[r + ROOM.radiantG]! > 0) return;
  add(2 * i, 2 * i, 1);
  add(2 * i, 2 * i + 1, -1);
}
