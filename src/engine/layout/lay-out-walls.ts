import type { Element, Home } from '../../home/home.ts';
import { INNER_RADIATIVE, splitFilm } from '../../physics/heat/surface-coefficients.ts';
import { ENERGY_TERMS } from '../ledger/ledger.ts';
import { BOOK } from '../ledger/ledger-accumulator.ts';
import { type WallModes, wallModes } from './wall-modes.ts';
import type { Walls } from './walls.ts';

/**
 * Lay out the walls of a home and the internal mass of its rooms.
 *
 * @param boundaryOf  number of the boundary temperature of an element's far side, or -1
 * @param dt          control step [s]
 */
export function layOutWalls(
  { rooms, elements, longWave = INNER_RADIATIVE }: Home,
  boundaryOf: (element: Element) => number,
  dt: number,
): WallLayout {
  const walled = elements.filter(({ area }) => area > 0);
  const specs = merge([...walled.map((e) => fromElement(e, boundaryOf(e))), ...massOf(rooms)]);
  const steps = specs.map((spec) => stepOf(spec, dt));
  const faces = specs.map((spec) => ({
    near: faceOf(spec.area, spec.resistance[0]!, longWave),
    far: faceOf(spec.area, spec.resistance.at(-1)!, longWave),
  }));
  const firstMode = Int32Array.from({ length: specs.length + 1 }, (_, c) =>
    steps.slice(0, c).reduce((sum, { decay }) => sum + decay.length, 0),
  );
  const whole = (of: (spec: Spec) => number): Int32Array => Int32Array.from(specs, of);
  const perWall = (of: (c: number) => number): Float64Array =>
    Float64Array.from(specs, (_, c) => of(c));
  const perMode = (of: (step: WallModes) => Float64Array): Float64Array =>
    Float64Array.from(steps.flatMap((step) => [...of(step)]));
  const sun = sunShares(specs, rooms.length);
  const toRoom = (c: number): boolean => specs[c]!.farRoom >= 0;
  return {
    steps,
    areas: specs.map(({ area }) => area),
    walls: {
      count: specs.length,
      near: whole((s) => s.room),
      far: whole((s) => s.farRoom),
      boundary: whole((s) => s.boundary),
      book: whole((s) => s.room * BOOK_STRIDE + WALLS + s.kind),
      farBook: whole((s) => s.farRoom * BOOK_STRIDE + WALLS + s.kind),
      firstMode,
      nearAir: perWall((c) => faces[c]!.near.air),
      nearRadiant: perWall((c) => faces[c]!.near.radiant),
      farAir: perWall((c) => (toRoom(c) ? faces[c]!.far.air : 0)),
      farRadiant: perWall((c) => (toRoom(c) ? faces[c]!.far.radiant : 0)),
      farG: perWall((c) => faces[c]!.far.air + faces[c]!.far.radiant),
      nearSun: perWall((c) => sun[c]!.near / (faces[c]!.near.air + faces[c]!.near.radiant)),
      farSun: perWall((c) =>
        toRoom(c) ? sun[c]!.far / (faces[c]!.far.air + faces[c]!.far.radiant) : 0,
      ),
      nearToNear: perWall((c) => steps[c]!.nearToNear),
      nearToFar: perWall((c) => steps[c]!.nearToFar),
      farToNear: perWall((c) => steps[c]!.farToNear),
      farToFar: perWall((c) => steps[c]!.farToFar),
      mode: new Float64Array(firstMode[specs.length]!),
      decay: perMode((s) => s.decay),
      intoNear: perMode((s) => s.intoNear),
      intoFar: perMode((s) => s.intoFar),
      atNear: perMode((s) => s.atNear),
      atFar: perMode((s) => s.atFar),
      stored: perMode((s) => s.stored),
    },
  };
}

/** Walls for the loop, and what only the start of a run and the layout of rooms need of them. */
export interface WallLayout {
  readonly walls: Walls;
  readonly steps: readonly WallModes[];
  /** [m2] */
  readonly areas: readonly number[];
}

interface Spec {
  readonly room: number;
  readonly farRoom: number;
  readonly boundary: number;
  readonly kind: number;
  readonly area: number;
  readonly resistance: readonly number[];
  readonly capacity: readonly number[];
}

function fromElement(element: Element, boundary: number): Spec {
  const { room, area, chain, far, kind } = element;
  const { resistance, capacity } = chain;
  return {
    room,
    farRoom: far.to === 'room' ? far.room : -1,
    boundary,
    kind: ELEMENT_KINDS.indexOf(kind),
    area,
    resistance: far.to === 'nothing' ? [...resistance.slice(0, -1), Infinity] : resistance,
    capacity,
  };
}

/** The internal mass of each room that has any: one node with nothing behind it. */
function massOf(rooms: Home['rooms']): Spec[] {
  return rooms.flatMap(({ mass }, room) =>
    mass.area > 0
      ? [
          {
            room,
            farRoom: -1,
            boundary: -1,
            kind: -1,
            area: mass.area,
            resistance: [MASS_SURFACE_RESISTANCE, Infinity],
            capacity: [mass.capacity / mass.area],
          },
        ]
      : [],
  );
}

/** Walls that are alike in all but size behave as one: fewer walls, the same heat. */
function merge(specs: readonly Spec[]): Spec[] {
  const groups = new Map<string, Spec>();
  for (const spec of specs) {
    const key = JSON.stringify({ ...spec, area: 0 });
    const known = groups.get(key);
    groups.set(key, known === undefined ? spec : { ...known, area: known.area + spec.area });
  }
  return [...groups.values()];
}

function stepOf({ area, resistance, capacity }: Spec, dt: number): WallModes {
  const conductance = resistance.map((r) => area / Math.max(r, LEAST_RESISTANCE));
  return wallModes(
    conductance,
    capacity.map((c) => c * area),
    dt,
  );
}

/** Conductance of a face to air and to the radiant node. [W/K] */
function faceOf(area: number, resistance: number, longWave: number) {
  const film = splitFilm(Math.max(resistance, LEAST_RESISTANCE), longWave);
  return { air: film.convective * area, radiant: film.radiative * area };
}

/** The sun falls on floors first; the rest spreads over all surfaces of the room by area. */
function sunShares(specs: readonly Spec[], rooms: number): { near: number; far: number }[] {
  const shares = specs.map(() => ({ near: 0, far: 0 }));
  for (let i = 0; i < rooms; i++) {
    let all = 0;
    let floors = 0;
    for (const { room, farRoom, area, kind } of specs) {
      if (room === i) all += area;
      if (farRoom === i) all += area;
      if (room === i && kind === FLOOR) floors += area;
    }
    const onFloor = floors > 0 ? SUN_ON_FLOOR : 0;
    specs.forEach(({ room, farRoom, area, kind }, c) => {
      const spread = ((1 - onFloor) * area) / all;
      const floor = kind === FLOOR && floors > 0 ? (onFloor * area) / floors : 0;
      if (room === i) shares[c]!.near = spread + floor;
      if (farRoom === i) shares[c]!.far = spread;
    });
  }
  return shares;
}

/** Elements by the ledger term that their heat is added to. */
const ELEMENT_KINDS = ['wall', 'floor', 'roof', 'partition'] as const;
const FLOOR = ELEMENT_KINDS.indexOf('floor');
const WALLS = ENERGY_TERMS.indexOf('walls');

/** Surface resistance of furniture and light partitions: ISO 6946, horizontal heat flow. [m2 K/W] */
const MASS_SURFACE_RESISTANCE = 0.13;

/** Stands in where a far side touches the boundary directly. [m2 K/W] */
const LEAST_RESISTANCE = 1e-4;

/** Share of the solar gain on surfaces that lands on the floor before the rest is spread. [-] */
const SUN_ON_FLOOR = 0.5;

const BOOK_STRIDE = BOOK.stride;
