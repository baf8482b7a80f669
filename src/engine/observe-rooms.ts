import type { Commands, Observation } from '../control/observations.ts';
import { MOLAR_RATIO, VAPOUR_GAS_CONSTANT, ZERO_CELSIUS } from '../physics/moist-air/constants.ts';
import type { Model } from './layout/model.ts';
import { ROOM, TRACER } from './layout/state-layout.ts';
import type { Outdoors } from './outdoors/outdoors.ts';

/**
 * Fill the observations of control with the state of the rooms at the start of a step.
 *
 * @param saturation  saturation pressure by temperature, [°C] -> [Pa]
 */
export function observeRooms(
  m: Model,
  observed: Observation,
  outdoors: Outdoors,
  s: number,
  saturation: (temperature: number) => number,
): void {
  const { rooms, roomCount, tracers, pressure } = m;
  const { temperature, felt, relativeHumidity, absoluteHumidity, output, species, outdoor } =
    observed;
  for (let i = 0; i < roomCount; i++) {
    const r = i * ROOM_STRIDE;
    const t = rooms[r + TEMPERATURE]!;
    const w = rooms[r + HUMIDITY]!;
    const p = (pressure * w) / (MOLAR_RATIO + w);
    const most = rooms[r + HIGH]!;
    temperature[i] = t;
    felt[i] = rooms[r + FELT_NOW]!;
    relativeHumidity[i] = (100 * p) / saturation(t);
    absoluteHumidity[i] = (1000 * p) / (VAPOUR_GAS_CONSTANT * (t + ZERO_CELSIUS));
    output[i] = most > 0 ? rooms[r + EMITTED]! / most : 0;
  }
  const count = species.length;
  for (let q = 0; q < count; q++) {
    const column = species[q]!;
    for (let i = 0; i < roomCount; i++) {
      column[i] = tracers[(i * count + q) * TRACER_STRIDE + LEVEL]!;
    }
    observed.outdoorSpecies[q] = outdoors.species[q]![s]!;
  }
  const t = outdoors.temperature[s]!;
  const w = outdoors.humidityRatio[s]!;
  const p = (pressure * w) / (MOLAR_RATIO + w);
  outdoor[0] = t;
  outdoor[1] = (100 * p) / saturation(t);
  outdoor[2] = (1000 * p) / (VAPOUR_GAS_CONSTANT * (t + ZERO_CELSIUS));
}

/** Apply the thermostat commands of control to the rooms. */
export function applyCommands({ rooms, roomCount }: Model, { band }: Commands): void {
  for (let i = 0; i < roomCount; i++) rooms[i * ROOM_STRIDE + BAND] = band[i]!;
}

const {
  temperature: TEMPERATURE,
  humidity: HUMIDITY,
  emitted: EMITTED,
  high: HIGH,
  band: BAND,
} = ROOM;
const { feltNow: FELT_NOW } = ROOM;
const { level: LEVEL } = TRACER;
const ROOM_STRIDE = ROOM.stride;
const TRACER_STRIDE = TRACER.stride;
