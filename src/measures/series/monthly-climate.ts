import type { Home } from '../../home/home.ts';
import { vapourDensity } from '../../physics/moist-air/vapour-density.ts';
import { SECONDS_PER_HOUR } from '../../units/time-units.ts';
import type { Hour } from '../hourly-means.ts';

/** Means of the whole home by calendar month of the wall clock, the rows counted as in the ledger. */
export interface MonthlyClimate {
  observe(hour: Hour): void;
  /** Means over the chosen rows together; zeros where they hold no time. */
  over(rows: readonly number[]): Climate;
  /** Heating degree-days by the mean of each 24 hours since the period's start. [K d] */
  degreeDays(base: number): number;
}

export interface Climate {
  readonly seconds: number;
  /** Mean air temperature of all rooms, weighted by volume. [°C] */
  readonly indoor: number;
  /** [°C] */
  readonly outdoor: number;
  /** Leakage. [m3/s] */
  readonly infiltration: number;
  /** Vapour in the rooms' air, by volume, above that outdoors. [g/m3] */
  readonly vapourExcess: number;
}

/**
 * @param period  first instant [s UTC] and length [h]
 * @param ends    of its months, see monthEnds [s UTC]
 */
export function createMonthlyClimate(
  home: Home,
  period: { readonly start: number; readonly hours: number },
  ends: readonly number[],
): MonthlyClimate {
  const rooms = home.rooms.length;
  const volume = home.rooms.reduce((sum, room) => sum + room.volume, 0);
  const share = Float64Array.from(home.rooms, (room) => room.volume / volume);
  const seconds = new Float64Array(ends.length);
  const sums = new Float64Array(ends.length * QUANTITIES); // times s
  const days = new Float64Array(Math.ceil(period.hours / 24)); // °C s
  const dayLength = new Float64Array(days.length); // s
  let row = 0;

  function observe(hour: Hour): void {
    const { start, outdoorTemperature: outdoor } = hour;
    let indoor = 0;
    let vapour = -vapourDensity(hour.outdoorVapourPressure, outdoor);
    for (let i = 0; i < rooms; i++) {
      const t = hour.airTemperature[i]!;
      indoor += share[i]! * t;
      vapour += share[i]! * vapourDensity(hour.vapourPressure[i]!, t);
    }
    while (row < ends.length - 1 && start >= ends[row]!) row++;
    seconds[row] = seconds[row]! + SECONDS_PER_HOUR;
    const at = row * QUANTITIES;
    sums[at] = sums[at]! + indoor * SECONDS_PER_HOUR;
    sums[at + 1] = sums[at + 1]! + outdoor * SECONDS_PER_HOUR;
    sums[at + 2] = sums[at + 2]! + hour.infiltration * SECONDS_PER_HOUR;
    sums[at + 3] = sums[at + 3]! + vapour * SECONDS_PER_HOUR;
    const day = Math.floor((start - period.start) / 86_400);
    days[day] = days[day]! + outdoor * SECONDS_PER_HOUR;
    dayLength[day] = dayLength[day]! + SECONDS_PER_HOUR;
  }

  function over(rows: readonly number[]): Climate {
    const time = rows.reduce((sum, row) => sum + (seconds[row] ?? 0), 0);
    const mean = (q: number): number =>
      time === 0 ? 0 : rows.reduce((sum, row) => sum + (sums[row * QUANTITIES + q] ?? 0), 0) / time;
    return {
      seconds: time,
      indoor: mean(0),
      outdoor: mean(1),
      infiltration: mean(2),
      vapourExcess: mean(3),
    };
  }

  /** A last day that is cut short counts by its length. */
  function degreeDays(base: number): number {
    let sum = 0;
    for (let day = 0; day < days.length; day++) {
      sum += Math.max(0, base * dayLength[day]! - days[day]!) / 86_400;
    }
    return sum;
  }

  return { observe, over, degreeDays };
}

const QUANTITIES = 4;
