import { SECONDS_PER_DAY } from '../../units/local-clock.ts';
import type { ControlContext } from '../control-context.ts';
import { attended } from '../day-inputs.ts';
import type { Activity } from '../household.ts';
import { takesPlaceOn } from './on-holiday.ts';
import { eachStep } from './step-range.ts';

/** When one activity truly goes on, for those who act upon it. */
export interface ActivityTimes {
  readonly beginDay: (start: number, steps: number) => void;
  /** Once a step; then the two below are of the step at hand. */
  readonly step: () => void;
  /** Share of the step in which it goes on. [-] */
  readonly going: number;
  /** Share of the step in which it goes on, or ended less than the run-on ago. [-] */
  readonly withRunOn: number;
}

/**
 * Follows what keeps the activity from happening (holidays, an empty home), as the day's lay-out
 * does; a run-on comes only after an activity that took place, and to the second.
 *
 * @param runOn  [s]
 */
export function createActivityTimes(
  activity: Activity,
  runOn: number,
  { household, moment, dt }: ControlContext,
): ActivityTimes {
  const { when, stopsFor } = activity;
  const clocked = new Float64Array(Math.ceil(SECONDS_PER_DAY / dt));
  const extended = new Float64Array(clocked.length);
  const takesPlace = (date: number): boolean => takesPlaceOn(date, activity, household);
  let people = 1;

  const times = {
    going: 0,
    withRunOn: 0,
    beginDay(start: number, steps: number): void {
      const range = { clock: household.clock, start, dt, steps };
      clocked.fill(0);
      extended.fill(0);
      for (const spell of when) {
        const longer = { ...spell, to: spell.to + runOn / 60 };
        eachStep(spell, range, (step, share) => add(clocked, step, share), takesPlace);
        eachStep(longer, range, (step, share) => add(extended, step, share), takesPlace);
      }
    },
    step(): void {
      const { day, s } = moment;
      const share = clocked[s]!;
      if (share > 0) people = stopsFor === 'an empty home' ? attended(day, s) : 1;
      times.going = share * people;
      times.withRunOn = extended[s]! * people;
    },
  };
  return times;
}

function add(shares: Float64Array, step: number, share: number): void {
  shares[step] = Math.min(1, shares[step]! + share);
}
