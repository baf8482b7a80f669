import { along } from '../../units/along.ts';
import type { f64 } from '../../units/portable.ts';
import type { Model } from '../layout/model.ts';
import { COOLER, OUTSIDE, ROOM } from '../layout/state-layout.ts';

/** Let units with one duct blow out room air, as much as they ran in the step before. */
export function blowOut({ rooms, coolers: { count, records, room } }: Model): void {
  for (let c = 0; c < count; c++) {
    const at = c * COOLER_STRIDE;
    const r = room[c]! * ROOM_STRIDE;
    rooms[r + EXTRACT] = rooms[r + EXTRACT]! + records[at + SHARE]! * records[at + EXHAUST]!;
  }
}

/**
 * Most sensible heat that each room's coolers can remove in this step. [W]
 *
 * A coil cools the share of the air that does not bypass it to its own temperature, and dries it to
 * saturation there where the air is moister; together that is at most the unit's power.
 */
export function coolerLimits({ rooms, airCp, evaporation, coolers }: Model): void {
  const { count, records, room } = coolers;
  for (let c = 0; c < count; c++) {
    const r = room[c]! * ROOM_STRIDE;
    rooms[r + COOL_MOST] = 0;
    rooms[r + COOL_RADIANT] = 0;
  }
  for (let c = 0; c < count; c++) {
    const at = c * COOLER_STRIDE;
    const r = room[c]! * ROOM_STRIDE;
    const power = records[at + POWER]!;
    const air = records[at + COOLED]!;
    let most = power;
    let full: f64 = 1;
    if (air > 0) {
      const warmer = rooms[r + GUESS]! - records[at + COIL]!;
      const moister = rooms[r + HUMIDITY]! - records[at + COIL_HUMIDITY]!;
      const sensible = warmer > 0 ? air * airCp * warmer : 0;
      const latent = moister > 0 ? air * evaporation * moister : 0;
      full = sensible + latent > power ? power / (sensible + latent) : 1;
      most = full * sensible;
    }
    records[at + MOST] = most;
    records[at + FULL] = full;
    // Coolers of a room share its load in proportion to what each can do.
    rooms[r + COOL_MOST] = rooms[r + COOL_MOST]! + most;
    rooms[r + COOL_RADIANT] = rooms[r + COOL_RADIANT]! + most * records[at + RADIANT_SHARE]!;
  }
  for (let c = 0; c < count; c++) {
    const at = c * COOLER_STRIDE;
    const r = room[c]! * ROOM_STRIDE;
    const most = rooms[r + COOL_MOST]!;
    // Infinity over Infinity where something is without limit: its own share stands.
    rooms[r + COOL_SHARE] =
      most < Number.POSITIVE_INFINITY && most > 0
        ? rooms[r + COOL_RADIANT]! / most
        : records[at + RADIANT_SHARE]!;
  }
}

/** Share each room's sensible cooling among its coolers, and let their coils dry the air. */
export function settleCoolers({ rooms, coolers: { count, records, room } }: Model): void {
  for (let c = 0; c < count; c++) {
    const r = room[c]! * ROOM_STRIDE;
    rooms[r + COIL_AIR] = 0;
    rooms[r + COIL_WATER] = 0;
  }
  for (let c = 0; c < count; c++) {
    const at = c * COOLER_STRIDE;
    const r = room[c]! * ROOM_STRIDE;
    const most = rooms[r + COOL_MOST]!;
    const own = records[at + MOST]!;
    const asked = rooms[r + COOLING]!;
    const part = most < Number.POSITIVE_INFINITY && most > 0 ? asked / most : 0;
    const infinite = own === Number.POSITIVE_INFINITY;
    records[at + SENSIBLE] = infinite ? asked : part * own;
    records[at + SHARE] = infinite ? (asked > 0 ? 1 : 0) : part * records[at + FULL]!;
    const dries = rooms[r + HUMIDITY]! > records[at + COIL_HUMIDITY]!;
    const air = dries ? records[at + SHARE]! * records[at + COOLED]! : 0;
    records[at + DRIED] = air;
    rooms[r + COIL_AIR] = rooms[r + COIL_AIR]! + air;
    rooms[r + COIL_WATER] = rooms[r + COIL_WATER]! + air * records[at + COIL_HUMIDITY]!;
  }
}

/** What each cooler removed and drew, once the humidity of its room is known. */
export function finishCoolers({ rooms, evaporation, coolers, outside }: Model): void {
  const { count, records, room, eer } = coolers;
  for (let c = 0; c < count; c++) {
    const at = c * COOLER_STRIDE;
    const humidity = rooms[room[c]! * ROOM_STRIDE + MEAN_HUMIDITY]!;
    const water = records[at + DRIED]! * (humidity - records[at + COIL_HUMIDITY]!);
    const removed = records[at + SENSIBLE]! + evaporation * water;
    records[at + WATER] = water;
    records[at + REMOVED] = removed;
    records[at + ELECTRICITY] = removed > 0 ? removed / along(eer[c]!, outside[OUTDOOR]!) : 0;
  }
}

const { extract: EXTRACT, guess: GUESS, humidity: HUMIDITY, meanHumidity: MEAN_HUMIDITY } = ROOM;
const { coolMost: COOL_MOST, coolRadiant: COOL_RADIANT, coolShare: COOL_SHARE } = ROOM;
const { cooling: COOLING, coilAir: COIL_AIR, coilWater: COIL_WATER } = ROOM;
const { power: POWER, exhaust: EXHAUST, radiantShare: RADIANT_SHARE, cooled: COOLED } = COOLER;
const { coil: COIL, coilHumidity: COIL_HUMIDITY, most: MOST, full: FULL, share: SHARE } = COOLER;
const { sensible: SENSIBLE, dried: DRIED, water: WATER, removed: REMOVED } = COOLER;
const { electricity: ELECTRICITY } = COOLER;
const { temperature: OUTDOOR } = OUTSIDE;

const ROOM_STRIDE = ROOM.stride;
const COOLER_STRIDE = COOLER.stride;
