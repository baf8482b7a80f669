import type { Observer, TraceView } from '../../engine/record/trace.ts';
import { localDay, toLocal } from '../../units/local-clock.ts';
import { SECONDS_PER_HOUR } from '../../units/time-units.ts';
import { createColdSpots } from '../damp/cold-spots.ts';
import { createHourlyMeans, type Hour } from '../hourly-means.ts';
import type { MeasuresSetup } from '../measures-setup.ts';
import { localDays } from './local-days.ts';

/** The hours of one plan, as means over each, kept small enough for many plans at once. */
export interface PlanSeries {
  /** Instant at which the first hour begins. [s UTC] */
  readonly start: number;
  readonly outdoors: {
    /** [°C] */
    readonly temperature: Float32Array;
    /** [Pa] */
    readonly vapourPressure: Float32Array;
  };
  /** Series of each room, in the order of the home. */
  readonly rooms: readonly RoomSeries[];
}

/** One value per hour; of the mould index one per day. */
export interface RoomSeries {
  readonly name: string;
  /** [°C] */
  readonly airTemperature: Float32Array;
  /** What the temperature band is about: mean of air and inner surfaces. [°C] */
  readonly operativeTemperature: Float32Array;
  /** [%] */
  readonly relativeHumidity: Float32Array;
  /** Relative humidity at the surface of the coldest spot. [%] */
  readonly coldSpotHumidity: Float32Array;
  /** Share of the hour with somebody in the room. [-] */
  readonly occupied: Float32Array;
  /** VTT index at the coldest spot, at the end of every day of the wall clock, or of the period. [-] */
  readonly mouldIndex: Float32Array;
}

/**
 * Keeps the series of a run for pictures: some 180 kB a room and year. Cold spot and mould index are
 * those of the figures.
 */
export function createPlanSeries(
  setup: Pick<MeasuresSetup, 'home' | 'mouldClasses' | 'period' | 'clock'>,
): {
  readonly observe: Observer;
  result(): PlanSeries;
} {
  const { home, mouldClasses, period, clock } = setup;
  const hours = period.hours;
  const days = localDays(period.start, hours, clock);
  const outdoors = { temperature: hourly(hours), vapourPressure: hourly(hours) };
  const rooms = home.rooms.map(({ name }) => ({
    name,
    airTemperature: hourly(hours),
    operativeTemperature: hourly(hours),
    relativeHumidity: hourly(hours),
    coldSpotHumidity: hourly(hours),
    occupied: hourly(hours),
    mouldIndex: new Float32Array(days.count),
  }));
  const coldSpots = createColdSpots(home, mouldClasses);
  const means = createHourlyMeans(rooms.length, [coldSpots.observe, keepHour]);

  function keepHour(hour: Hour): void {
    const h = Math.round((hour.start - period.start) / SECONDS_PER_HOUR);
    outdoors.temperature[h] = hour.outdoorTemperature;
    outdoors.vapourPressure[h] = hour.outdoorVapourPressure;
    const day = localDay(toLocal(clock, hour.start)) - days.first;
    for (let i = 0; i < rooms.length; i++) {
      const room = rooms[i]!;
      room.airTemperature[h] = hour.airTemperature[i]!;
      room.coldSpotHumidity[h] = coldSpots.humidity[i]!;
      room.mouldIndex[day] = coldSpots.mouldIndex[i]!;
    }
  }

  /** What the hourly means do not carry. */
  function addSteps({ room, steps, dt, start }: TraceView): void {
    const share = dt / SECONDS_PER_HOUR;
    for (let s = 0; s < steps; s++) {
      const h = Math.floor((start + s * dt - period.start) / SECONDS_PER_HOUR);
      for (let i = 0; i < rooms.length; i++) {
        const { operativeTemperature, relativeHumidity, occupied } = rooms[i]!;
        const at = s * rooms.length + i;
        operativeTemperature[h]! += room.operativeTemperature[at]! * share;
        relativeHumidity[h]! += room.relativeHumidity[at]! * share;
        occupied[h]! += Math.min(1, room.occupants[at]!) * share;
      }
    }
  }

  return {
    observe: (trace) => {
      means.observe(trace);
      addSteps(trace);
    },
    result: () => ({ start: period.start, outdoors, rooms }),
  };
}

const hourly = (hours: number): Float32Array => new Float32Array(hours);
