import { MOLAR_RATIO } from '../physics/moist-air/constants.ts';
import { saturationPressure } from '../physics/moist-air/saturation-pressure.ts';
import type { Model } from './model.ts';
import type { RunInput } from './run.ts';
import type { Season } from './season.ts';
import { LINK, NODE, ROOM, TRACER } from './state-layout.ts';

/**
 * Initial state of every store, whose effect the spin-up removes: rooms at their usual setting (or
 * at the year's mean where nothing heats them), walls between room and outdoors, air at half
 * saturation.
 */
export function settleStart(m: Model, { household, home }: RunInput, season: Season): void {
  const { rooms, roomCount, tracers } = m;
  for (let i = 0; i < roomCount; i++) {
    const r = i * ROOM_STRIDE;
    const setting = household.setpoints[i]!.base;
    const heated = rooms[r + ROOM.heated] === 1 && Number.isFinite(setting);
    const t = heated ? setting : season.mean;
    const p = 0.5 * saturationPressure(t);
    const humidity = (MOLAR_RATIO * p) / (m.pressure - p);
    rooms[r + ROOM.temperature] = t;
    rooms[r + ROOM.meanTemperature] = t;
    rooms[r + ROOM.humidity] = humidity;
    rooms[r + ROOM.meanHumidity] = humidity;
    rooms[r + ROOM.buffer] = 0.5;
  }
  startChains(m, season);
  home.species.forEach(({ outdoor }, s) => {
    for (let i = 0; i < roomCount; i++) {
      tracers[(i * home.species.length + s) * TRACER_STRIDE + TRACER.level] = outdoor;
    }
  });
}

function startChains({ rooms, chains: { count, links, nodes } }: Model, season: Season): void {
  const temperatureOf = (i: number): number => rooms[i * ROOM_STRIDE + ROOM.temperature]!;
  for (let c = 0; c < count; c++) {
    const link = c * LINK_STRIDE;
    const near = temperatureOf(links[link + LINK.room]!);
    const j = links[link + LINK.farRoom]!;
    const open = links[link + LINK.boundary]! >= 0;
    const far = j >= 0 ? temperatureOf(j) : open ? season.mean : near;
    const first = links[link + LINK.first]!;
    const n = (links[link + LINK.last]! - first) / NODE_STRIDE + 1;
    for (let k = 0; k < n; k++) {
      const t = near + ((far - near) * (k + 0.5)) / n;
      nodes[first + k * NODE_STRIDE + NODE.temperature] = t;
    }
  }
}

const ROOM_STRIDE = ROOM.stride;
const TRACER_STRIDE = TRACER.stride;
const LINK_STRIDE = LINK.stride;
const NODE_STRIDE = NODE.stride;
