import type { Thermostat } from '../automation.ts';
import type { Household } from '../household.ts';
import { createDemandAhead } from '../schedules/demand-ahead.ts';
import { createHeatingRate } from './heating-rate.ts';

/** Starts heating before it is wanted. */
export interface WarmUp {
  readonly beginDay: (start: number, steps: number) => void;
  /** What each room is being warmed up to in the step at hand; -Infinity while it is not. [°C] */
  readonly target: Float64Array;
  /**
   * Once a step and room: see whether to begin.
   *
   * @param now      instant of the step's start [s UTC]
   * @param setting  what it would be held at without warming up [°C]
   * @param t        air of the room, plus what its sensor reads too much [°C]
   */
  readonly decide: (s: number, room: number, now: number, setting: number, t: number) => void;
  /** Look at a room to learn how fast it warms; see `HeatingRate`. */
  readonly watch: ReturnType<typeof createHeatingRate>['watch'];
}

/**
 * Heating starts a fixed time before a rise in what the room wants, or so long before it as the room
 * would take at the rate learned, but never longer than the most; nothing learned yet, no lead. Once
 * begun, a warm-up goes on until the rise it was for.
 */
export function createWarmUp(
  household: Household,
  thermostats: readonly Thermostat[],
  dt: number,
  perDay: number,
): WarmUp {
  const most = Float64Array.from(thermostats, ({ lead }) =>
    lead.by === 'none' ? 0 : lead.by === 'fixed' ? lead.seconds : lead.most,
  );
  const ahead = Math.max(0, ...most.map((seconds) => Math.ceil(seconds / dt)));
  const demand = createDemandAhead(household, thermostats, dt, perDay, ahead);
  const { rate, watch } = createHeatingRate(thermostats.length);
  const until = new Float64Array(thermostats.length).fill(Number.NEGATIVE_INFINITY);
  const target = new Float64Array(thermostats.length).fill(Number.NEGATIVE_INFINITY);

  /** How long before a rise heating has to start. [s] */
  function lead(room: number, warmer: number): number {
    if (thermostats[room]!.lead.by === 'fixed') return most[room]!;
    const needed = warmer / rate[room]! + dt; // a step begun too late is a step too cold
    return needed > dt ? Math.min(most[room]!, needed) : 0; // also where nothing is known
  }

  function decide(s: number, room: number, now: number, setting: number, t: number): void {
    if (most[room] === 0) return;
    if (!(now < until[room]!)) target[room] = Number.NEGATIVE_INFINITY;
    let rise = demand.nextRise(s, room);
    while (rise >= 0 && (rise - s) * dt <= most[room]!) {
      const wanted = demand.riseTo(rise, room);
      const early = (rise - s) * dt;
      if (wanted > setting && wanted > target[room]! && early <= lead(room, wanted - t)) {
        until[room] = Math.max(now, until[room]!, now + early);
        target[room] = wanted;
      }
      rise = demand.nextRise(rise, room);
    }
  }

  return { beginDay: demand.beginDay, target, decide, watch };
}
