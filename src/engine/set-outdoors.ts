import { groundTemperature } from '../home/ground.ts';
import { dayOfYear } from '../physics/sun/day-of-year.ts';
import type { Model } from './model.ts';
import { along } from './numerics/along.ts';
import type { Outdoors } from './outdoors.ts';
import type { Season } from './season.ts';
import { EMITTER, ROOM } from './state-layout.ts';
import type { Sunlight } from './sunlight.ts';

/** Temperatures at the far ends of chains, and the sun through panes. */
export function setOutdoors(
  m: Model,
  sunlight: Sunlight,
  outdoor: number,
  humidity: number,
  interval: number,
): void {
  const { boundaries, boundary, rooms, roomCount } = m;
  m.outdoorHumidity[0] = humidity;
  setSources(m, outdoor);
  let plane = 0;
  for (let b = 0; b < boundaries.length; b++) {
    const far = boundaries[b]!;
    if (far.is !== 'outdoors') continue;
    boundary[b] = outdoor + far.perSun * sunlight.on[plane++]![interval]! - far.skyDrop;
  }
  const from = interval * roomCount;
  for (let i = 0; i < roomCount; i++) rooms[i * ROOM_STRIDE + SUN] = sunlight.gain[from + i]!;
}

/** What sources can feed and how warm their water is, where that follows the weather. */
function setSources(m: Model, outdoor: number): void {
  const { sources } = m.home;
  for (let s = 0; s < sources.length; s++) {
    const { powerCurve, waterCurve } = sources[s]!;
    if (powerCurve !== undefined) m.power[s] = along(powerCurve, outdoor);
    if (waterCurve === undefined) continue;
    const water = along(waterCurve, outdoor);
    for (let e = 0; e < m.emitterCount; e++) {
      if (m.emitterSource[e] === s) m.emitters[e * EMITTER.stride + EMITTER.water] = water;
    }
  }
}

/** Outdoor levels of the species in step `s`. */
export function setOutdoorSpecies({ species }: Model, outdoors: Outdoors, s: number): void {
  for (let q = 0; q < species.count; q++) species.outdoor[q] = outdoors.species[q]![s]!;
}

/** Temperatures of ground and neighbours, which change too slowly to be set more than daily. */
export function setGround({ boundaries, boundary }: Model, season: Season, utc: number): void {
  const today = Math.min(366, dayOfYear(utc));
  boundaries.forEach((far, b) => {
    if (far.is === 'neighbour') boundary[b] = far.temperature;
    if (far.is !== 'ground') return;
    const coldest = season.coldest + GROUND_LAG;
    boundary[b] = groundTemperature(season.mean, season.amplitude, far.damping, today, coldest);
  });
}

const { sun: SUN } = ROOM;
const ROOM_STRIDE = ROOM.stride;
/** How far the ground under a floor lags behind the outdoor year; about a month (ISO 13370, from memory). [d] */
const GROUND_LAG = 30;
