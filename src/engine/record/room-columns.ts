import type { DayInputs } from '../../control/day-inputs.ts';
import { MOLAR_RATIO } from '../../physics/moist-air/constants.ts';
import type { i32 } from '../../units/portable.ts';
import type { Shell } from '../air/lay-out-shell.ts';
import type { Model } from '../layout/model.ts';
import { ROOM, TRACER } from '../layout/state-layout.ts';

/** Columns of the trace that every step fills, room by room: `[step * rooms + room]`. */
export interface RoomColumns {
  /** [°C] */
  readonly airTemperature: Float64Array;
  /** Mean radiant temperature: of the inner surfaces, by area. [°C] */
  readonly radiantTemperature: Float64Array;
  /** Mean of air and mean radiant temperature. [°C] */
  readonly operativeTemperature: Float64Array;
  /** [kg/kg] */
  readonly humidityRatio: Float64Array;
  /** [%] */
  readonly relativeHumidity: Float64Array;
  /** Vapour pressure. [Pa] */
  readonly vapourPressure: Float64Array;
  /** Heat from emitters. [W] */
  readonly heating: Float64Array;
  /** Sensible heat removed by cooling. [W] */
  readonly cooling: Float64Array;
  /** Air straight from outdoors, by leaks, windows and fans; as volume at 20 °C. [m3/s] */
  readonly outdoorAir: Float64Array;
  /** Pressure at half the room's height, above that of still air outdoors at the same height. [Pa] */
  readonly pressureDifference: Float64Array;
  /** People in the room; a fraction when for part of the step. [-] */
  readonly occupants: Float64Array;
  /** Of them, asleep. [-] */
  readonly asleep: Float64Array;
  /** Share of the step in which a window of the room stands open, however little. [-] */
  readonly windowOpen: Float64Array;
  /** Net condensation on panes, negative while a film dries. [kg/s] */
  readonly condensation: Float64Array;
  /** Net condensation on cold corners and tiles and out of saturated air, negative while it dries. [kg/s] */
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
    outdoorAir: column(),
    pressureDifference: column(),
    occupants: column(),
    asleep: column(),
    windowOpen: column(),
    condensation: column(),
    wallCondensation: column(),
    levels: new Float64Array(length * species),
    length,
  };
}

/** Record what the rooms were like in the step whose first room is at `at`. */
export function recordRooms(
  m: Model,
  shell: Shell,
  day: DayInputs,
  columns: RoomColumns,
  at: i32,
): void {
  const { rooms, roomCount, pressure, density, tracers, species } = m;
  const { network, middle } = shell;
  const { airTemperature, radiantTemperature, operativeTemperature, humidityRatio } = columns;
  const { relativeHumidity, vapourPressure, heating, cooling, occupants, windowOpen } = columns;
  const { condensation, wallCondensation, levels, length } = columns;
  const { outdoorAir, pressureDifference, asleep } = columns;
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
    outdoorAir[k] = (rooms[r + EXCHANGE]! + rooms[r + FAN]!) / density;
    pressureDifference[k] = network.pressure[i]! + network.buoyancy[i]! * middle[i]!;
    occupants[k] = day.occupants[k]!;
    asleep[k] = Math.max(0, day.occupants[k]! - day.awake[k]!);
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
const { exchange: EXCHANGE, fan: FAN } = ROOM;
const { mean: MEAN_C } = TRACER;

const ROOM_STRIDE = ROOM.stride;
const TRACER_STRIDE = TRACER.stride;
