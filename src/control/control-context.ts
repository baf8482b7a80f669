import type { Home } from '../home/home.ts';
import { createDayInputs, type DayInputs } from './day-inputs.ts';
import type { Household } from './household.ts';
import { createObservation, type Observation } from './observations.ts';
import type { Presence } from './sensors/presence.ts';

/** Shared input of all parts of control; one object throughout a run, refilled at every step. */
export interface ControlContext {
  readonly home: Home;
  readonly household: Household;
  /** Control step. [s] */
  readonly dt: number;
  readonly moment: Moment;
  readonly presence: Pick<Presence, 'present' | 'anyone' | 'someoneHome' | 'awakeHome'>;
  readonly windows: WindowStates;
}

/** The step that is being decided. */
export interface Moment {
  day: DayInputs;
  /** Number of the step within its day. */
  s: number;
  /** Start of the step. [s UTC] */
  utc: number;
  /** Its middle: what is due by then is done in this step, so that delays count to the nearest. [s UTC] */
  middle: number;
  /** Number of the step counted from 1970, which random draws depend on. */
  count: number;
  observed: Observation;
}

/** Which windows stand open at all in this step. */
export interface WindowStates {
  /** 1 for each room in which a window stands open. */
  readonly open: Uint8Array;
  /** 1 for each room whose windows are read as open: what people did in a step is read from the next on. */
  readonly readOpen: Uint8Array;
}

/**
 * Whether a window of the room stands open; -1 for any at home.
 *
 * @param open  one of `WindowStates`
 */
export function windowOpen(open: Uint8Array, room: number): boolean {
  if (room >= 0) return open[room] === 1;
  for (let i = 0; i < open.length; i++) if (open[i] === 1) return true;
  return false;
}

export function createMoment(household: Household): Moment {
  const observed = createObservation(0, 0, 0);
  const day = createDayInputs(household, 0, 0, 0);
  return { day, s: 0, utc: 0, middle: 0, count: 0, observed };
}

/** Turn to step `s` of a day that began at `start` [s UTC]. */
export function turnTo(
  moment: Moment,
  day: DayInputs,
  s: number,
  start: number,
  dt: number,
  observed: Observation,
): void {
  moment.day = day;
  moment.s = s;
  moment.utc = start + s * dt;
  moment.middle = moment.utc + dt / 2;
  moment.count = Math.round(moment.utc / dt);
  moment.observed = observed;
}

/** Places in `Observation.outdoor`. */
export const OUTDOOR = { temperature: 0, relativeHumidity: 1, absoluteHumidity: 2 } as const;
