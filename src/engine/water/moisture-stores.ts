import type { f64 } from '../../units/portable.ts';
import type { Model } from '../layout/model.ts';
import { ROOM } from '../layout/state-layout.ts';
import { overImplicitWeight } from '../numerics/implicit-weight.ts';

/**
 * Eliminate the moisture stores of every room from the equation of its air.
 *
 * Surface store and deep store are in series behind the air, driven by differences of vapour
 * pressure; x is relative humidity, S the saturation pressure at the room's air:
 *
 *     surface/(weight dt) (x - x0) = g (p - S x) - d S (x - y)
 *     deep/(weight dt) (y - y0)    = d S (x - y)
 *
 * With the means x and y gone, the air loses `uptake p - release`.
 */
export function eliminateStores({ rooms, roomCount }: Model): void {
  for (let r = 0; r < roomCount * ROOM_STRIDE; r += ROOM_STRIDE) {
    const g = rooms[r + BUFFER_G]!;
    if (g === 0) continue;
    const saturation = rooms[r + SATURATION]!;
    const full = g * saturation;
    const between = rooms[r + DEEP_G]! * saturation;
    let intoDeep: f64 = 0;
    if (between > 0) {
      const perStep = rooms[r + DEEP_RATE]!;
      const store = perStep * overImplicitWeight(between / perStep);
      intoDeep = (between * store) / (between + store);
    }
    const perStep = rooms[r + BUFFER_RATE]!;
    const store = perStep * overImplicitWeight((full + between) / perStep);
    const stiff = store + intoDeep;
    const held = store * rooms[r + BUFFER]! + intoDeep * rooms[r + DEEP]!;
    rooms[r + UPTAKE] = (g * stiff) / (stiff + full);
    rooms[r + RELEASE] = (full * held) / (stiff + full);
    rooms[r + INTO_DEEP] = intoDeep;
  }
}

/** Advance the stores of every room to the end of the step, and begin `freed` with the latent heat of it. */
export function settleStores({ rooms, roomCount, dt, evaporation }: Model): void {
  for (let r = 0; r < roomCount * ROOM_STRIDE; r += ROOM_STRIDE) {
    rooms[r + FREED] = 0;
    const g = rooms[r + BUFFER_G]!;
    if (g === 0) continue;
    const p = rooms[r + PRESSURE]! * rooms[r + MEAN]!;
    const taken = rooms[r + UPTAKE]! * p - rooms[r + RELEASE]!;
    rooms[r + FREED] = evaporation * taken;
    const intoDeep = rooms[r + INTO_DEEP]!;
    let passedOn: f64 = 0;
    if (intoDeep > 0) {
      const mean = (p - taken / g) / rooms[r + SATURATION]!;
      passedOn = intoDeep * (mean - rooms[r + DEEP]!);
      rooms[r + DEEP] = rooms[r + DEEP]! + (passedOn * dt) / rooms[r + DEEP_CAPACITY]!;
    }
    rooms[r + BUFFER] =
      rooms[r + BUFFER]! + ((taken - passedOn) * dt) / rooms[r + BUFFER_CAPACITY]!;
  }
}

const { bufferG: BUFFER_G, bufferRate: BUFFER_RATE, bufferCapacity: BUFFER_CAPACITY } = ROOM;
const { deepG: DEEP_G, deepRate: DEEP_RATE, deepCapacity: DEEP_CAPACITY } = ROOM;
const { buffer: BUFFER, deep: DEEP, saturation: SATURATION, pressure: PRESSURE } = ROOM;
const { uptake: UPTAKE, release: RELEASE, intoDeep: INTO_DEEP, meanHumidity: MEAN } = ROOM;
const { freed: FREED } = ROOM;
const ROOM_STRIDE = ROOM.stride;
