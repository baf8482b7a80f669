import type { Home } from '../../home/home.ts';
import type { i32 } from '../../units/portable.ts';
import { TRACER } from './state-layout.ts';

/** Room to solve all species of a home in; see species.ts. */
export interface SpeciesWork {
  readonly count: i32;
  /** How many matrices stand for all species. */
  readonly matrixCount: i32;
  /** Matrix of each species: those that are lost alike, wherever they are, share one. */
  readonly matrixOf: Int32Array;
  /** A species of each matrix. */
  readonly example: Int32Array;
  /** `[position * matrices + matrix]` and, one number a matrix, scratch. */
  readonly matrix: Float64Array;
  readonly factor: Float64Array;
  /** One over the implicit weight, and what a room's air stores over the step, by matrix. */
  readonly overWeight: Float64Array;
  readonly store: Float64Array;
  /** `[room * count + species]` */
  readonly rhs: Float64Array;
  readonly solution: Float64Array;
  /** Outdoor level of the step, by species. [species unit] */
  readonly outdoor: Float64Array;
  /** Share of the outdoor level that leaks keep out, by species. [-] */
  readonly heldBack: Float64Array;
  /** Share of it that open windows keep out, by screens or because grains fall, by species. [-] */
  readonly heldByWindows: Float64Array;
}

/** @param size  values of a matrix */
export function layOutSpecies(home: Home, size: number): SpeciesWork {
  const count = home.species.length;
  const losses = home.species.map((_, s) => lossesOf(home, s));
  const kinds = [...new Set(losses)];
  const perValue = (): Float64Array => new Float64Array(home.rooms.length * count);
  const perMatrix = (): Float64Array => new Float64Array(kinds.length);
  return {
    count,
    matrixCount: kinds.length,
    matrixOf: Int32Array.from(losses, (loss) => kinds.indexOf(loss)),
    example: Int32Array.from(kinds, (kind) => losses.indexOf(kind)),
    matrix: new Float64Array(size * kinds.length),
    factor: perMatrix(),
    overWeight: perMatrix(),
    store: perMatrix(),
    rhs: perValue(),
    solution: perValue(),
    outdoor: new Float64Array(count),
    heldBack: Float64Array.from(home.species, ({ penetration }) => 1 - penetration),
    heldByWindows: Float64Array.from(home.species, (s) => 1 - (s.windowPenetration ?? 1)),
  };
}

/** TRACER records, species side by side in each room. */
export function layOutTracers({ rooms, species }: Home): Float64Array {
  const all = new Float64Array(species.length * rooms.length * TRACER_STRIDE);
  rooms.forEach((room, i) => {
    species.forEach((_, s) => {
      const t = (i * species.length + s) * TRACER_STRIDE;
      all[t + TRACER.deposition] = (room.deposition[s] ?? 0) * room.volume;
      all[t + TRACER.emission] = room.emission?.[s] ?? 0;
    });
  });
  return all;
}

/** What takes a species out of the air besides air itself, as a text to compare. */
function lossesOf({ rooms, devices }: Home, s: number): string {
  const deposition = rooms.map((room) => room.deposition[s] ?? 0);
  const filters = devices.map(({ does }) => (does.kind === 'purifier' ? does.cleanAir[s] : 0));
  return JSON.stringify([deposition, filters]);
}

const TRACER_STRIDE = TRACER.stride;
