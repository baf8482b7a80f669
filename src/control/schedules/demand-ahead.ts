import { localDay, toLocal } from '../../units/local-clock.ts';
import type { HolidaySetback, Thermostat } from '../automation.ts';
import type { Household } from '../household.ts';
import { fillSchedules } from './fill-schedule.ts';
import { isSetBack } from './heating-calendar.ts';
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
 * at the pattern of people's weeks: holidays and their setback are known to it, irregular days are not.
 *
 * @param ahead  how far beyond the day's end it has to see [steps]; 0 where nothing is asked of it
 */
export function createDemandAhead(
  household: Household,
  thermostats: readonly Thermostat[],
  dt: number,
  perDay: number,
  ahead: number,
  holidaySetback?: HolidaySetback,
): DemandAhead {
  const rooms = thermostats.length;
  const length = ahead === 0 ? 0 : perDay + ahead + 1;
  const wanted = new Float64Array(length * rooms);
  const next = new Int32Array(length * rooms).fill(-1);
  // 1 where somebody usually is, by room and step, and anywhere at home.
  const usual = thermostats.map(() => new Uint8Array(length));
  const usualHome = new Uint8Array(length);
  const asksForPeople = thermostats.some(({ gate }) => gate.present !== 'no matter');
  let seen = 0;

  function beginDay(start: number, steps: number): void {
    if (ahead === 0) return;
    seen = steps + ahead + 1;
    const range = { clock: household.clock, start, dt, steps: seen };
    fillSchedules(wanted, household.setpoints, range);
    if (holidaySetback !== undefined) setBack(holidaySetback, range);
    if (asksForPeople) expectPeople(range);
    for (let i = 0; i < rooms; i++) {
      const { present } = thermostats[i]!.gate;
      if (present === 'at home') clearUnlessExpected(wanted, i, rooms, usualHome, seen);
      if (present === 'in the room') clearUnlessExpected(wanted, i, rooms, usual[i]!, seen);
      linkRises(next, wanted, i, rooms, seen);
    }
  }

  /** Cap what rooms want on holidays. */
  function setBack(setback: HolidaySetback, { clock, start, steps }: StepRange): void {
    let date = Number.NaN;
    let lower = false;
    for (let s = 0; s < steps; s++) {
      const local = localDay(toLocal(clock, start + s * dt));
      if (local !== date) {
        date = local;
        lower = isSetBack(setback, household, date);
      }
      if (!lower) continue;
      for (let i = 0; i < rooms; i++) {
        const at = s * rooms + i;
        wanted[at] = Math.min(wanted[at]!, setback.setpoint);
      }
    }
  }

  function expectPeople(range: StepRange): void {
    usualHome.fill(0);
    for (const room of usual) room.fill(0);
    for (const person of household.people) {
      eachStay(person, null, range, ({ room }, { first, last }) => {
        usual[room]!.fill(1, first, last + 1);
        usualHome.fill(1, first, last + 1);
      });
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

/** A room wants nothing in steps in which nobody is expected. */
function clearUnlessExpected(
  wanted: Float64Array,
  i: number,
  rooms: number,
  expected: Uint8Array,
  steps: number,
): void {
  for (let s = 0; s < steps; s++) {
    if (expected[s] !== 1) wanted[s * rooms + i] = Number.NEGATIVE_INFINITY;
  }
}

/** Tell each step which after it is the first at which room `i` wants to be warmer. */
function linkRises(
  next: Int32Array,
  wanted: Float64Array,
  i: number,
  rooms: number,
  steps: number,
): void {
  let ahead = -1;
  let after = wanted[(steps - 1) * rooms + i]!;
  next[(steps - 1) * rooms + i] = ahead;
  for (let s = steps - 2; s >= 0; s--) {
    const at = s * rooms + i;
    if (after > wanted[at]!) ahead = s + 1;
    after = wanted[at]!;
    next[at] = ahead;
  }
}
