import type { Home } from '../../home/home.ts';
import { relativeHumidity } from '../../physics/moist-air/relative-humidity.ts';
import { saturationTable } from '../../physics/moist-air/saturation-table.ts';
import { surfaceTemperature } from '../../physics/moisture/surface-temperature.ts';
import { MOULD_CLASSES, type MouldSensitivity } from '../../physics/mould/mould-kind.ts';
import { dryHoursAfter, mouldStep } from '../../physics/mould/mould-step.ts';
import type { Hour } from '../hourly-means.ts';
import { createTrailingMean } from '../trailing-mean.ts';

/** Humidity and mould at the coldest spot of each room. */
export interface ColdSpots {
  observe(hour: Hour): void;
  /**
   * Relative humidity at the spot in the latest hour, per room; 100 where water condenses on it. Written
   * anew every hour. [%]
   */
  readonly humidity: Float64Array;
  /** VTT index after the latest hour, per room; written anew every hour. [-] */
  readonly mouldIndex: Float64Array;
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
 * Source: 80 % as in ISO 13788; the index as in physics/mould.
 */
export function createColdSpots(home: Home, materials: readonly MouldSensitivity[]): ColdSpots {
  const rooms = home.rooms.length;
  const factor = Float64Array.from(home.rooms, (room) => room.coldSpotFactor);
  const kinds = materials.map((name) => MOULD_CLASSES[name]);
  const saturation = saturationTable();
  const outdoors = createTrailingMean(HOURS_OF_WALL);
  const index = new Float64Array(rooms);
  const dry = new Float64Array(rooms); // h
  const peak = new Float64Array(rooms);
  const damp = new Float64Array(rooms); // h
  const humid = new Float64Array(rooms); // %

  function observe({ outdoorTemperature, airTemperature, vapourPressure }: Hour): void {
    const wall = outdoors.add(outdoorTemperature);
    for (let i = 0; i < rooms; i++) {
      const kind = kinds[i]!;
      const spot = surfaceTemperature(factor[i]!, airTemperature[i]!, wall);
      const humidity = relativeHumidity(vapourPressure[i]!, spot, saturation);
      humid[i] = Math.min(100, humidity);
      if (humidity > DAMP) damp[i] = damp[i]! + 1;
      const dryFor = dry[i]!;
      const after = mouldStep(index[i]!, dryFor, spot, humidity, kind, 1);
      index[i] = after;
      dry[i] = dryHoursAfter(dryFor, spot, humidity, kind, 1);
      if (after > peak[i]!) peak[i] = after;
    }
  }

  return {
    observe,
    humidity: humid,
    mouldIndex: index,
    result: (i) => ({ hoursAbove80: damp[i]!, mouldPeak: peak[i]!, mouldEnd: index[i]! }),
  };
}

const HOURS_OF_WALL = 24;
const DAMP = 80; // %
