import type { TraceStretch } from '../engine/trace.ts';

/** Means and sums of one room over the period. */
export interface RoomSums {
  readonly heatingKwh: number;
  /** Of the air, as a thermometer in the room shows it. [°C] */
  readonly meanTemperature: number;
  /** [%] */
  readonly meanRelativeHumidity: number;
  /** With water condensing on a pane. [h] */
  readonly condensationHours: number;
  /** Condensed on panes in all, whether it dried or ran off later. [kg] */
  readonly condensationKg: number;
  /** With an opening of the room open, however little. [h] */
  readonly windowOpenHours: number;
}

/** Adds up what a room does, step by step. */
export function createRoomSums(rooms: number): {
  observe(stretch: TraceStretch): void;
  result(room: number): RoomSums;
} {
  const heating = new Float64Array(rooms); // J
  const temperature = new Float64Array(rooms); // °C s
  const humidity = new Float64Array(rooms); // % s
  const wet = new Float64Array(rooms); // s
  const condensed = new Float64Array(rooms); // kg
  const open = new Float64Array(rooms); // s
  let time = 0; // s

  function observe({ steps, dt, room }: TraceStretch): void {
    for (let s = 0; s < steps; s++) {
      for (let i = 0; i < rooms; i++) {
        const at = s * rooms + i;
        heating[i] = heating[i]! + room.heating[at]! * dt;
        temperature[i] = temperature[i]! + room.airTemperature[at]! * dt;
        humidity[i] = humidity[i]! + room.relativeHumidity[at]! * dt;
        open[i] = open[i]! + room.windowOpen[at]! * dt;
        if (room.condensation[at]! > LEAST_CONDENSATION) {
          wet[i] = wet[i]! + dt;
          condensed[i] = condensed[i]! + room.condensation[at]! * dt;
        }
      }
      time += dt;
    }
  }

  const result = (i: number): RoomSums => ({
    heatingKwh: heating[i]! / JOULES_PER_KWH,
    meanTemperature: time > 0 ? temperature[i]! / time : 0,
    meanRelativeHumidity: time > 0 ? humidity[i]! / time : 0,
    condensationHours: wet[i]! / 3600,
    condensationKg: condensed[i]!,
    windowOpenHours: open[i]! / 3600,
  });

  return { observe, result };
}

/** Less than this nobody sees: 0.004 g in an hour. [kg/s] */
const LEAST_CONDENSATION = 1e-9;
const JOULES_PER_KWH = 3.6e6;
