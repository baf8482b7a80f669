import { type LocalClock, nextJump, toLocal } from '../../units/local-clock.ts';
import { SECONDS_PER_DAY } from '../../units/time-units.ts';

/**
 * The winter half of the year by the wall clock: October to March, or April to September south of
 * the equator. It begins and ends at local midnight.
 */
export interface Winter {
  /** Share of a span of time that lies in it; asking allocates nothing within a half-year. [-] */
  share(utc: number, seconds: number): number;
  /** Number of winter days by the wall clock in a period that begins at an instant. [d] */
  days(utc: number, hours: number): number;
}

/** @param latitude  of the home [deg] */
export function createWinter(clock: LocalClock, latitude: number): Winter {
  const south = latitude < 0;
  let from = 0; // what is held goes from here
  let until = 0; // to here [s UTC]
  let held = 0;

  function hold(utc: number): void {
    const local = toLocal(clock, utc);
    const half = halfYearOf(local);
    from = utc;
    until = Math.min(nextJump(clock, utc), utc + half.end - local);
    held = half.fromOctober === south ? 0 : 1;
  }

  function share(utc: number, seconds: number): number {
    const end = utc + seconds;
    let inside = 0;
    for (let t = utc; t < end; ) {
      if (t < from || t >= until) hold(t);
      const part = Math.min(end, until) - t;
      inside += held * part;
      t += part;
    }
    return inside / seconds;
  }

  function days(utc: number, hours: number): number {
    const end = toLocal(clock, utc + hours * 3600);
    let inside = 0;
    for (let local = toLocal(clock, utc); local < end; ) {
      const half = halfYearOf(local);
      const next = Math.min(end, half.end);
      if (half.fromOctober !== south) inside += next - local;
      local = next;
    }
    return inside / SECONDS_PER_DAY;
  }

  return { share, days };
}

/** The half-year that a reading of the wall clock falls in, and the reading at which it ends. [s local] */
function halfYearOf(local: number): { readonly fromOctober: boolean; readonly end: number } {
  const date = new Date(local * 1000);
  const [year, month] = [date.getUTCFullYear(), date.getUTCMonth()];
  const fromOctober = month < APRIL || month >= OCTOBER;
  const end = fromOctober
    ? Date.UTC(month < APRIL ? year : year + 1, APRIL)
    : Date.UTC(year, OCTOBER);
  return { fromOctober, end: end / 1000 };
}

const APRIL = 3; // months are counted from 0
const OCTOBER = 9;
