import { groundTemperature } from '../../home/ground.ts';
import { dayOfYear } from '../../physics/sun/day-of-year.ts';
import { along } from '../../units/along.ts';
import type { Model } from '../layout/model.ts';
import { EMITTER, OUTSIDE, ROOM } from '../layout/state-layout.ts';
import type { Outdoors } from './outdoors.ts';
import type { Season } from './season.ts';
import type { Sunlight } from './sunlight.ts';

/** Outdoors in step `s`: air, temperatures at the far ends of walls, and the sun through panes. */
export function setOutdoors(m: Model, sunlight: Sunlight, outdoors: Outdoors, s: number): void {
  const { boundaries, boundary, rooms, roomCount, outside, species } = m;
  const outdoor = outdoors.temperature[s]!;
  const interval = outdoors.interval[s]!;
  outside[TEMPERATURE] = outdoor;
  outside[HUMIDITY] = outdoors.humidityRatio[s]!;
  outside[WIND] = outdoors.windSpeed[s]!;
  outside[WIND_FROM] = outdoors.windFrom[s]!;
  for (let q = 0; q < species.count; q++) species.outdoor[q] = outdoors.species[q]![s]!;
  setSources(m);
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
function setSources(m: Model): void {
  const { sources } = m.home;
  const outdoor = m.outside[TEMPERATURE]!;
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

const { temperature: TEMPERATURE, humidity: HUMIDITY } = OUTSIDE;
const { windSpeed: WIND, windFrom: WIND_FROM } = OUTSIDE;
const { sun: SUN } = ROOM;
const ROOM_STRIDE = ROOM.stride;
/** How far the ground under a floor lags behind the outdoor year; about a month (ISO 13370, from memory). [d] */
const GROUND_LAG = 30;
