import type { MonthlyClimate } from '../series/monthly-climate.ts';

/** Months in which homes of a place are heated, whatever a plan does. */
export interface HeatingSeason {
  /** Rows of the ledger. */
  readonly rows: readonly number[];
  /** False where no month is cold enough, so that the rows are those of the whole period. */
  readonly cold: boolean;
}

/**
 * The months of the period whose mean temperature outdoors, to a tenth of a kelvin as normals are
 * given, lies below the heating limit; every month where none does. It depends on weather and period
 * alone, so that means over it compare for all plans of a home, with emitters, plug-in heaters or a
 * stove.
 *
 * @param months  rows of the ledger
 */
export function heatingSeason(climate: MonthlyClimate, months: number): HeatingSeason {
  const every = Array.from({ length: months }, (_, row) => row);
  const rows = every.filter((row) => {
    const { seconds, outdoor } = climate.over([row]);
    return seconds > 0 && Math.round(10 * outdoor) < 10 * HEATING_LIMIT;
  });
  return rows.length > 0 ? { rows, cold: true } : { rows: every, cold: false };
}

/**
 * Limits of 12 to 15 °C are in use (common practice). 13 leaves September to May in the demonstration
 * weather, the months in which its homes are heated. [°C]
 */
const HEATING_LIMIT = 13;
