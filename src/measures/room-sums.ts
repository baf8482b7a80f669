import type { TraceView } from '../engine/record/trace.ts';
import { JOULES_PER_KWH } from '../units/joules-per-kwh.ts';

/** Means and sums of one room over the period. */
export interface RoomSums {
  readonly heatingKwh: number;
  /** Part of `heatingKwh` given while a window of the room stood open, by the share of each step. [kWh] */
  readonly heatingWithWindowOpenKwh: number;
  /** Mean air temperature over the period. [°C] */
  readonly meanTemperature: number;
  /** [%] */
  readonly meanRelativeHumidity: number;
  /** Time with water condensing on a pane. [h] */
  readonly condensationHours: number;
  /** Water condensed on panes in all, whether it dried or ran off later. [kg] */
  readonly condensationKg: number;
  /** Time with an opening of the room open, however little. [h] */
  readonly windowOpenHours: number;
  /** Time with somebody in the room; two people count once. [h] */
  readonly occupiedHours: number;
}

/** Adds up what a room does, step by step. */
export function createRoomSums(rooms: number): {
  observe(trace: TraceView): void;
  result(room: number): RoomSums;
} {
  const heating = new Float64Array(rooms); // J
  const airedHeat = new Float64Array(rooms); // J
  const temperature = new Float64Array(rooms); // °C s
  const humidity = new Float64Array(rooms); // % s
  const wet = new Float64Array(rooms); // s
  const condensed = new Float64Array(rooms); // kg
  const open = new Float64Array(rooms); // s
  const inhabited = new Float64Array(rooms); // s
  let time = 0; // s

  function observe({ steps, dt, room }: TraceView): void {
    const { airTemperature, relativeHumidity, windowOpen, condensation, occupants } = room;
    const end = steps * rooms;
    for (let i = 0; i < rooms; i++) {
      let heat = heating[i]!;
      let lost = airedHeat[i]!;
      let there = inhabited[i]!;
      let warmth = temperature[i]!;
      let damp = humidity[i]!;
      let aired = open[i]!;
      let wetFor = wet[i]!;
      let water = condensed[i]!;
      for (let at = i; at < end; at += rooms) {
        const given = room.heating[at]! * dt;
        heat += given;
        lost += given * windowOpen[at]!;
        there += Math.min(1, occupants[at]!) * dt;
        warmth += airTemperature[at]! * dt;
        damp += relativeHumidity[at]! * dt;
        aired += windowOpen[at]! * dt;
        const rate = condensation[at]!;
        if (rate > LEAST_CONDENSATION) {
          wetFor += dt;
          water += rate * dt;
        }
      }
      heating[i] = heat;
      airedHeat[i] = lost;
      inhabited[i] = there;
      temperature[i] = warmth;
      humidity[i] = damp;
      open[i] = aired;
      wet[i] = wetFor;
      condensed[i] = water;
    }
    time += steps * dt;
  }

  const result = (i: number): RoomSums => ({
    heatingKwh: heating[i]! / JOULES_PER_KWH,
    heatingWithWindowOpenKwh: airedHeat[i]! / JOULES_PER_KWH,
    meanTemperature: time > 0 ? temperature[i]! / time : 0,
    meanRelativeHumidity: time > 0 ? humidity[i]! / time : 0,
    condensationHours: wet[i]! / 3600,
    condensationKg: condensed[i]!,
    windowOpenHours: open[i]! / 3600,
    occupiedHours: inhabited[i]! / 3600,
  });

  return { observe, result };
}

/** Less than this nobody sees: 0.004 g in an hour. [kg/s] */
const LEAST_CONDENSATION = 1e-9;
