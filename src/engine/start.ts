import { MOLAR_RATIO } from '../physics/moist-air/constants.ts';
import { saturationPressure } from '../physics/moist-air/saturation-pressure.ts';
import type { Model } from './layout/model.ts';
import { ROOM, TRACER } from './layout/state-layout.ts';
import type { Season } from './outdoors/season.ts';
import type { RunInput } from './run.ts';

/**
 * Initial state of every store, whose effect the spin-up removes: rooms at their usual setting (or
 * at the year's mean where nothing heats them), walls between room and outdoors, air at half
 * saturation, as in a warm room where a setting is higher than any room's.
 */
export function settleStart(m: Model, { household, home }: RunInput, season: Season): void {
  const { rooms, roomCount, tracers } = m;
  for (let i = 0; i < roomCount; i++) {
    const r = i * ROOM_STRIDE;
    const setting = household.setpoints[i]!.base;
    const heated = rooms[r + ROOM.heated] === 1 && Number.isFinite(setting);
    const t = heated ? setting : season.mean;
    const p = 0.5 * saturationPressure(Math.min(t, WARM));
    const humidity = (MOLAR_RATIO * p) / (m.pressure - p);
    rooms[r + ROOM.temperature] = t;
    rooms[r + ROOM.meanTemperature] = t;
    rooms[r + ROOM.radiantMean] = t;
    rooms[r + ROOM.feltNow] = t;
    rooms[r + ROOM.humidity] = humidity;
    rooms[r + ROOM.meanHumidity] = humidity;
    rooms[r + ROOM.buffer] = 0.5;
    rooms[r + ROOM.deep] = 0.5;
  }
  startWalls(m, season);
  home.species.forEach(({ outdoor }, s) => {
    for (let i = 0; i < roomCount; i++) {
      tracers[(i * home.species.length + s) * TRACER_STRIDE + TRACER.level] = outdoor;
    }
  });
}

/** Nodes straight between what lies at either end. */
function startWalls({ rooms, walls, wallModes }: Model, season: Season): void {
  const temperatureOf = (i: number): number => rooms[i * ROOM_STRIDE + ROOM.temperature]!;
  wallModes.forEach(({ perNode, decay: { length: n } }, c) => {
    const near = temperatureOf(walls.near[c]!);
    const j = walls.far[c]!;
    const open = walls.boundary[c]! >= 0;
    const far = j >= 0 ? temperatureOf(j) : open ? season.mean : near;
    for (let mode = 0; mode < n; mode++) {
      let z = 0;
      for (let k = 0; k < n; k++) {
        z += perNode[mode * n + k]! * (near + ((far - near) * (k + 0.5)) / n);
      }
      walls.mode[walls.firstMode[c]! + mode] = z;
    }
  });
}

/** [°C] */
const WARM = 30;

const ROOM_STRIDE = ROOM.stride;
const TRACER_STRIDE = TRACER.stride;
