import type { DayInputs } from '../control/day-inputs.ts';
import { MOLAR_RATIO } from '../physics/moist-air/constants.ts';
import type { i32 } from '../units/portable.ts';
import type { Model } from './model.ts';
import { ROOM, TRACER } from './state-layout.ts';

/** Columns of the trace that every step fills, room by room: `[step * rooms + room]`. See TraceView. */
export interface RoomColumns {
  readonly airTemperature: Float64Array;
  readonly radiantTemperature: Float64Array;
  readonly operativeTemperature: Float64Array;
  readonly humidityRatio: Float64Array;
  readonly relativeHumidity: Float64Array;
  readonly vapourPressure: Float64Array;
  readonly heating: Float64Array;
  readonly cooling: Float64Array;
  readonly occupants: Float64Array;
  readonly windowOpen: Float64Array;
  readonly condensation: Float64Array;
  readonly wallCondensation: Float64Array;
  /** Concentrations, one species after another. */
  readonly levels: Float64Array;
  /** Values of one column. */
  readonly length: i32;
}

/** @param steps  most that the columns can hold */
export function createRoomColumns(rooms: number, species: number, steps: number): RoomColumns {
  const length = steps * rooms;
  const column = (): Float64Array => new Float64Array(length);
  return {
    airTemperature: column(),
    radiantTemperature: column(),
    operativeTemperature: column(),
    humidityRatio: column(),
    relativeHumidity: column(),
    vapourPressure: column(),
    heating: column(),
    cooling: column(),
    occupants: column(),
    windowOpen: column(),
    condensation: column(),
    wallCondensation: column(),
    levels: new Float64Array(length * species),
    length,
  };
}

/** Record what the rooms were like in the step whose first room is at `at`. */
export function recordRooms(m: Model, day: DayInputs, columns: RoomColumns, at: i32): void {
  const { rooms, roomCount, pressure, tracers, species } = m;
  const { airTemperature, radiantTemperature, operativeTemperature, humidityRatio } = columns;
  const { relativeHumidity, vapourPressure, heating, cooling, occupants, windowOpen } = columns;
  const { condensation, wallCondensation, levels, length } = columns;
  const { count } = species;
  for (let i = 0; i < roomCount; i++) {
    const r = i * ROOM_STRIDE;
    const k = at + i;
    const t = rooms[r + MEAN_T]!;
    const radiant = rooms[r + RADIANT_MEAN]!;
    const w = rooms[r + MEAN_W]!;
    const p = (pressure * w) / (MOLAR_RATIO + w);
    airTemperature[k] = t;
    radiantTemperature[k] = radiant;
    operativeTemperature[k] = 0.5 * (t + radiant);
    humidityRatio[k] = w;
    vapourPressure[k] = p;
    relativeHumidity[k] = (100 * p) / rooms[r + SATURATION]!;
    heating[k] = rooms[r + EMITTED]!;
    cooling[k] = rooms[r + COOLING]!;
    occupants[k] = day.occupants[k]!;
    windowOpen[k] = rooms[r + WINDOW_OPEN]!;
    condensation[k] = rooms[r + CONDENSING]!;
    wallCondensation[k] = rooms[r + WALL_CONDENSING]!;
    for (let q = 0; q < count; q++) {
      levels[q * length + k] = tracers[(i * count + q) * TRACER_STRIDE + MEAN_C]!;
    }
  }
}

const { meanTemperature: MEAN_T, meanHumidity: MEAN_W, emitted: EMITTED } = ROOM;
const { cooling: COOLING, radiantMean: RADIANT_MEAN, saturation: SATURATION } = ROOM;
const { windowOpen: WINDOW_OPEN, condensing: CONDENSING, wallCondensing: WALL_CONDENSING } = ROOM;
const { mean: MEAN_C } = TRACER;

const ROOM_STRIDE = ROOM.stride;
const TRACER_STRIDE = TRACER.stride;
