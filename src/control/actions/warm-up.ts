import type { Automation } from '../automation.ts';
import type { Household } from '../household.ts';
import { createDemandAhead } from '../schedules/demand-ahead.ts';
import { createHeatingRate } from './heating-rate.ts';

/** Starts heating before it is wanted. */
export interface WarmUp {
  /** @param start  instant at which the day's first step begins [s UTC] */
  readonly beginDay: (start: number, steps: number) => void;
  /** What each room is being warmed up to in the step at hand; -Infinity while it is not. [°C] */
  readonly target: Float64Array;
  /**
   * Once a step and room: see whether to begin. Allocates nothing.
   *
   * @param settings     per room: what it would be held at without warming up [°C]
   * @param felt  by the thermostats [°C]
   */
  readonly decide: (s: number, room: number, settings: Float64Array, felt: Float64Array) => void;
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
  { thermostats, holidaySetback }: Pick<Automation, 'thermostats' | 'holidaySetback'>,
  dt: number,
  perDay: number,
): WarmUp {
  const most = Float64Array.from(thermostats, ({ lead }) =>
    lead.by === 'none' ? 0 : lead.by === 'fixed' ? lead.seconds : lead.most,
  );
  const ahead = Math.max(0, ...most.map((seconds) => Math.ceil(seconds / dt)));
  const demand = createDemandAhead(household, thermostats, dt, perDay, ahead, holidaySetback);
  const { nextRise, topOfRise, wanted } = demand;
  const { rate, watch } = createHeatingRate(thermostats.length, dt);
  const rooms = thermostats.map(({ lead, bias }, i) => ({
    fixed: lead.by === 'fixed',
    most: most[i]!,
    bias,
    until: Number.NEGATIVE_INFINITY,
  }));
  const target = new Float64Array(rooms.length).fill(Number.NEGATIVE_INFINITY);
  let begin = 0;

  /** Begin warming up for a rise if it is time to. */
  function consider(
    rise: number,
    s: number,
    i: number,
    settings: Float64Array,
    felt: Float64Array,
  ): void {
    const room = rooms[i]!;
    const goal = wanted[topOfRise(rise, i) * rooms.length + i]!;
    if (!(goal > settings[i]! && goal > target[i]!)) return;
    const warmer = goal - (felt[i]! + room.bias);
    const needed = warmer / rate[i]! + dt; // a step begun too late is a step too cold
    const learned = needed > dt ? Math.min(room.most, needed) : 0; // also where nothing is known
    const early = (rise - s) * dt;
    if (early > (room.fixed ? room.most : learned)) return;
    const now = begin + s * dt;
    room.until = Math.max(now, room.until, now + early);
    target[i] = goal;
  }

  const decide: WarmUp['decide'] = (s, i, settings, felt) => {
    const { most: longest, until } = rooms[i]!;
    if (longest === 0) return;
    if (!(begin + s * dt < until)) target[i] = Number.NEGATIVE_INFINITY;
    let rise = nextRise(s, i);
    while (rise >= 0 && (rise - s) * dt <= longest) {
      consider(rise, s, i, settings, felt);
      rise = nextRise(rise, i);
    }
  };

  const beginDay = (start: number, steps: number): void => {
    begin = start;
    demand.beginDay(start, steps);
  };
  return { beginDay, target, decide, watch };
}
