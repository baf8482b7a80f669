import type { Model } from '../layout/model.ts';
import { FILM, ROOM, TRACER } from '../layout/state-layout.ts';
import type { Stores } from '../ledger/ledger-accumulator.ts';

/**
 * What every room holds at this moment: heat of air and of the walls that hang on it, against
 * 0 °C [J]; water of air, buffers and films [kg]; amount of each species [unit m3].
 */
export function storedAmounts(m: Model): Stores {
  const { rooms, roomCount, tracers, home } = m;
  const energy = new Float64Array(roomCount);
  const water = new Float64Array(roomCount);
  for (let i = 0; i < roomCount; i++) {
    const r = i * ROOM_STRIDE;
    energy[i] = rooms[r + ROOM.airCapacity]! * rooms[r + ROOM.temperature]!;
    water[i] =
      rooms[r + ROOM.airMass]! * rooms[r + ROOM.humidity]! +
      rooms[r + ROOM.bufferCapacity]! * rooms[r + ROOM.buffer]! +
      rooms[r + ROOM.deepCapacity]! * rooms[r + ROOM.deep]!;
  }
  const { count, near, firstMode, mode, stored } = m.walls;
  for (let c = 0; c < count; c++) {
    for (let k = firstMode[c]!; k < firstMode[c + 1]!; k++) {
      energy[near[c]!]! += stored[k]! * mode[k]!;
    }
  }
  for (let f = 0; f < m.films.count; f++) {
    water[m.films.room[f]!]! += m.films.records[f * FILM_STRIDE + FILM.water]!;
  }
  const species = home.species.map((_, s) =>
    Float64Array.from(
      home.rooms,
      ({ volume }, i) =>
        volume * tracers[(i * m.species.count + s) * TRACER_STRIDE + TRACER.level]!,
    ),
  );
  return { energy, water, species };
}

const ROOM_STRIDE = ROOM.stride;
const TRACER_STRIDE = TRACER.stride;
const FILM_STRIDE = FILM.stride;
