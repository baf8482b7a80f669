import { type LocalClock, localDay, toLocal, toUtc } from '../../units/local-clock.ts';
import { startsOn } from '../../units/starts-on.ts';
import { MINUTES_PER_DAY, SECONDS_PER_DAY } from '../../units/time-units.ts';
import type { Spell } from '../household.ts';

/** Control steps in a row. */
export interface StepRange {
  readonly clock: LocalClock;
  /** Instant at which the first step begins. [s UTC] */
  readonly start: number;
  /** [s] */
  readonly dt: number;
  readonly steps: number;
}

/** Steps in a row that a time takes up: the first and the last in part, those between wholly. */
export interface Stretch {
  readonly first: number;
  readonly last: number;
  /** Share of the first and of the last step; both are the same where there is but one. [-] */
  readonly ofFirst: number;
  readonly ofLast: number;
  /** Instants of its beginning and end, which may lie outside the steps. [s UTC] */
  readonly from: number;
  readonly to: number;
}

/** Share that a stretch takes of one of its steps. [-] */
export function shareOf({ first, last, ofFirst, ofLast }: Stretch, step: number): number {
  if (step === first) return ofFirst;
  return step === last ? ofLast : 1;
}

/** Whether a stretch goes on in the middle of one of the range's steps. */
export function goesOnInMiddle(
  { from, to }: Stretch,
  step: number,
  { start, dt }: StepRange,
): boolean {
  const middle = start + (step + 0.5) * dt;
  return from <= middle && middle < to;
}

/**
 * Visit every stretch of the range's steps that a spell takes up.
 *
 * @param visit  called with the stretch and the local day on which its spell starts, by number
 */
export function eachStretch(
  spell: Spell,
  range: StepRange,
  visit: (stretch: Stretch, date: number) => void,
): void {
  const { clock, start, dt, steps } = range;
  const reach = Math.ceil(spell.to / MINUTES_PER_DAY);
  const firstDay = localDay(toLocal(clock, start)) - reach;
  const lastDay = localDay(toLocal(clock, start + steps * dt));
  for (let date = firstDay; date <= lastDay; date++) {
    if (!startsOn(spell, date)) continue;
    const midnight = date * SECONDS_PER_DAY;
    const from = toUtc(clock, midnight + spell.from * 60);
    const to = toUtc(clock, midnight + spell.to * 60);
    const stretch = stretchBetween(from, to, range);
    if (stretch !== null) visit(stretch, date);
  }
}

/** The range's steps between two instants; null where there are none. [s UTC] */
export function stretchBetween(
  begin: number,
  finish: number,
  { start, dt, steps }: StepRange,
): Stretch | null {
  const from = Math.max(start, begin);
  const to = Math.min(start + steps * dt, finish);
  if (to <= from) return null;
  const first = Math.floor((from - start) / dt);
  const last = Math.min(steps - 1, Math.ceil((to - start) / dt) - 1);
  return {
    first,
    last,
    ofFirst: shareBetween(from, to, start + first * dt, dt),
    ofLast: shareBetween(from, to, start + last * dt, dt),
    from: begin,
    to: finish,
  };
}

/** Share of a step that lies between two instants. [-] */
function shareBetween(from: number, to: number, stepStart: number, dt: number): number {
  return (Math.min(to, stepStart + dt) - Math.max(from, stepStart)) / dt;
}
