import type { Thermostat } from '../automation.ts';
import type { Household } from '../household.ts';
import { fillSchedules } from './fill-schedule.ts';
import { eachStay } from './irregular-days.ts';
import type { StepRange } from './step-range.ts';

/** When rooms will next want to be warmer, as far as the clock and people's habits tell. */
export interface DemandAhead {
  /** @param start  instant at which the day's first step begins [s UTC] */
  readonly beginDay: (start: number, steps: number) => void;
  /**
   * First step after `s` at which the room wants to be warmer than the step before; -1 for none in
   * sight. May lie in the next day, and may be asked from there on.
   */
  readonly nextRise: (s: number, room: number) => number;
  /** The step at which such a rise is over: a setting that changes inside a step rises in two. */
  readonly topOfRise: (rise: number, room: number) => number;
  /** What rooms want, step by step, side by side: `[s * rooms + i]`. [°C] */
  readonly wanted: Float64Array;
}

/**
 * Looks a while beyond the day's end at the heating programmes and, where a gate asks for somebody,
 * at the pattern of people's weeks: holidays are known to it, irregular days are not.
 *
 * @param ahead  how far beyond the day's end it has to see [steps]; 0 where nothing is asked of it
 */
export function createDemandAhead(
  household: Household,
  thermostats: readonly Thermostat[],
  dt: number,
  perDay: number,
  ahead: number,
): DemandAhead {
  const rooms = thermostats.length;
  const length = ahead === 0 ? 0 : perDay + ahead + 1;
  const wanted = new Float64Array(length * rooms);
  const next = new Int32Array(length * rooms).fill(-1);
  const usual = new Uint8Array(length * rooms);
  const usualHome = new Uint8Array(length);
  const asksForPeople = thermostats.some(({ gate }) => gate.present !== 'no matter');
  let seen = 0;

  function beginDay(start: number, steps: number): void {
    if (ahead === 0) return;
    seen = steps + ahead + 1;
    const range = { clock: household.clock, start, dt, steps: seen };
    fillSchedules(wanted, household.setpoints, range);
    if (asksForPeople) expectPeople(range);
    for (let i = 0; i < rooms; i++) {
      const { present } = thermostats[i]!.gate;
      if (present !== 'no matter') clearUnlessExpected(i, present === 'at home');
      linkRises(i);
    }
  }

  function expectPeople(range: StepRange): void {
    usual.fill(0);
    usualHome.fill(0);
    for (const person of household.people) {
      eachStay(person, null, range, (stay, step) => {
        usual[step * rooms + stay.room] = 1;
        usualHome[step] = 1;
      });
    }
  }

  function clearUnlessExpected(i: number, anywhere: boolean): void {
    for (let s = 0; s < seen; s++) {
      const expected = anywhere ? usualHome[s] : usual[s * rooms + i];
      if (expected !== 1) wanted[s * rooms + i] = Number.NEGATIVE_INFINITY;
    }
  }

  function linkRises(i: number): void {
    next[(seen - 1) * rooms + i] = -1;
    for (let s = seen - 2; s >= 0; s--) {
      const rises = wanted[(s + 1) * rooms + i]! > wanted[s * rooms + i]!;
      next[s * rooms + i] = rises ? s + 1 : next[(s + 1) * rooms + i]!;
    }
  }

  return {
    beginDay,
    nextRise: (s, room) => (s < seen ? next[s * rooms + room]! : -1),
    topOfRise(rise, room) {
      let s = rise;
      while (s < seen && next[s * rooms + room] === s + 1) s++;
      return s;
    },
    wanted,
  };
}
