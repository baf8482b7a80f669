import type { Ledger } from '../../engine/ledger/ledger.ts';
import type { TraceView } from '../../engine/record/trace.ts';
import type { Home } from '../../home/home.ts';
import type { HeatingSeason } from '../energy/heating-season.ts';
import type { MonthlyClimate } from '../series/monthly-climate.ts';
import { createAirAsleep } from './air-asleep.ts';
import { type AirFlows, airFlows } from './air-flows.ts';
import { createFanEffects, type FanEffect } from './fan-effects.ts';
import { createStoveHours } from './stove-hours.ts';

/** Where the outdoor air of a home comes in and who gets it, mean of the heating season. */
export interface FreshAir {
  readonly flows: AirFlows;
  readonly rooms: readonly RoomAir[];
  readonly fans: readonly FanEffect[];
  /** See StoveHours; of the whole period. [h] */
  readonly stoveHours: readonly (number | null)[];
  /** False where no month is cold, so that the season is the whole period. */
  readonly cold: boolean;
}

/** Air of one room. */
export interface RoomAir {
  /** Straight from outdoors. [L/s] */
  readonly outdoor: number;
  /** The same for each person asleep, while people sleep there; null where nobody does. [L/s] */
  readonly perPersonAsleep: number | null;
}

/** @param monthEnds  of the period, see there [s UTC] */
export function createFreshAir(
  home: Home,
  monthEnds: readonly number[],
): {
  observe(trace: TraceView): void;
  result(ledger: Ledger, climate: MonthlyClimate, season: HeatingSeason): FreshAir;
} {
  const asleep = createAirAsleep(home.rooms.length, monthEnds);
  const fans = createFanEffects(home, monthEnds);
  const stoves = createStoveHours(home);

  function observe(trace: TraceView): void {
    asleep.observe(trace);
    fans.observe(trace);
    stoves.observe(trace);
  }

  function result(
    ledger: Ledger,
    climate: MonthlyClimate,
    { rows, cold }: HeatingSeason,
  ): FreshAir {
    const flows = airFlows(home, ledger, rows, climate.over(rows).seconds);
    return {
      flows,
      rooms: flows.intoRooms.map((outdoor, room) => ({
        outdoor,
        perPersonAsleep: asleep.perPerson(room, rows),
      })),
      fans: fans.result(rows),
      stoveHours: stoves.hours(),
      cold,
    };
  }

  return { observe, result };
}
