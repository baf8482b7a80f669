import type { TraceStretch } from '../engine/trace.ts';
import type { Home } from '../home/home.ts';
import { saturationTable } from '../physics/moist-air/saturation-table.ts';
import { surfaceTemperature } from '../physics/moisture/surface-humidity.ts';
import { MOULD_CLASSES, type MouldSensitivity } from '../physics/mould/mould-kind.ts';
import { dryHoursAfter, mouldStep } from '../physics/mould/mould-step.ts';
import { createTrailingMean } from './trailing-mean.ts';

/** Humidity and mould at the coldest spot of each room. */
export interface ColdSpots {
  observe(stretch: TraceStretch): void;
  result(room: number): {
    /** Hours with more than 80 % at the spot. */
    readonly hoursAbove80: number;
    /** VTT index, 0 none to 6 dense cover. [-] */
    readonly mouldPeak: number;
    readonly mouldEnd: number;
  };
}

/**
 * Hour by hour: the spot's temperature follows from the room's cold-spot factor, the hour's mean air
 * temperature and the mean outdoors of the last 24 hours, because a corner follows its wall and not
 * the minute. Before 24 hours have passed it is the mean of those there are. The air at the spot
 * holds the room's vapour. The index begins at 0 with the period.
 *
 * @param materials  one per room: class of what the spot is made of
 * @throws RangeError for a trace whose steps do not fill the hour
 * Source: 80 % as in ISO 13788; the index as in physics/mould.
 */
export function createColdSpots(home: Home, materials: readonly MouldSensitivity[]): ColdSpots {
  const rooms = home.rooms.length;
  const factor = Float64Array.from(home.rooms, (room) => room.coldSpotFactor);
  const kinds = materials.map((name) => MOULD_CLASSES[name]);
  const saturation = saturationTable();
  const outdoors = createTrailingMean(HOURS_OF_WALL, 1);
  const temperature = new Float64Array(rooms); // sum over the steps of the hour
  const vapour = new Float64Array(rooms); // likewise
  const index = new Float64Array(rooms);
  const dry = new Float64Array(rooms); // h
  const peak = new Float64Array(rooms);
  const damp = new Float64Array(rooms); // h
  let outdoor = 0; // sum over the steps of the hour
  let inHour = 0; // steps

  function observe({ steps, dt, room, home: trace }: TraceStretch): void {
    const perHour = stepsPerHour(dt);
    for (let s = 0; s < steps; s++) {
      outdoor += trace.outdoorTemperature[s]!;
      for (let i = 0; i < rooms; i++) {
        temperature[i] = temperature[i]! + room.airTemperature[s * rooms + i]!;
        vapour[i] = vapour[i]! + room.vapourPressure[s * rooms + i]!;
      }
      inHour++;
      if (inHour === perHour) closeHour();
    }
  }

  function closeHour(): void {
    const wall = outdoors.add(0, outdoor / inHour);
    for (let i = 0; i < rooms; i++) {
      const spot = surfaceTemperature(factor[i]!, temperature[i]! / inHour, wall);
      const humidity = (100 * vapour[i]!) / inHour / saturation(spot);
      if (humidity > DAMP) damp[i] = damp[i]! + 1;
      index[i] = mouldStep(index[i]!, dry[i]!, spot, humidity, kinds[i]!, 1);
      dry[i] = dryHoursAfter(dry[i]!, spot, humidity, kinds[i]!, 1);
      if (index[i]! > peak[i]!) peak[i] = index[i]!;
    }
    temperature.fill(0);
    vapour.fill(0);
    outdoor = 0;
    inHour = 0;
  }

  return {
    observe,
    result: (i) => ({ hoursAbove80: damp[i]!, mouldPeak: peak[i]!, mouldEnd: index[i]! }),
  };
}

function stepsPerHour(dt: number): number {
  const steps = 3600 / dt;
  if (Number.isInteger(steps)) return steps;
  throw new RangeError(
    `createMeasures: a whole number of steps must make an hour, got steps of ${dt} s`,
  );
}

const HOURS_OF_WALL = 24;
const DAMP = 80; // %
