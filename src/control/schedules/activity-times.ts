import { SECONDS_PER_DAY } from '../../units/time-units.ts';
import type { ControlContext } from '../control-context.ts';
import type { Activity } from '../household.ts';
import { attended } from '../lay-out-day.ts';
import { activityStretches } from './activity-stretches.ts';
import { type Stretch, shareOf } from './step-range.ts';

/** When activities truly go on, for those who act upon them. */
export interface ActivityTimes {
  readonly beginDay: (start: number, steps: number) => void;
  /** Once a step; then the two below are of the step at hand. */
  readonly follow: () => void;
  /** Share of the step in which each goes on. [-] */
  readonly going: Float64Array;
  /** Share of the step in which each goes on, or ended less than its run-on ago. [-] */
  readonly withRunOn: Float64Array;
  /** When each is to go on in the day at hand, in order; whether somebody is at home is not asked. */
  readonly stretches: readonly (readonly Stretch[])[];
}

/** An activity to be followed, and for how long it counts after its end. [s] */
export interface ActivityAsked {
  readonly activity: Activity;
  readonly runOn: number;
}

/**
 * Follows what keeps activities from happening (holidays, an empty home), as the day's lay-out
 * does; a run-on comes only after an activity that took place, by the share of it that last did, and to
 * the second.
 */
export function createActivityTimes(
  asked: readonly ActivityAsked[],
  { household, moment, dt }: ControlContext,
): ActivityTimes {
  const count = asked.length;
  // Step by step, side by side.
  const clocked = new Float64Array(Math.ceil(SECONDS_PER_DAY / dt) * count);
  const extended = new Float64Array(clocked.length);
  const needsPeople = Uint8Array.from(asked, ({ activity }) =>
    activity.stopsFor === 'an empty home' ? 1 : 0,
  );
  // Share of an activity that took place, when it last was to. [-]
  const tookPlace = new Float64Array(count).fill(1);
  const stretches: Stretch[][] = asked.map(() => []);
  const going = new Float64Array(count);
  const withRunOn = new Float64Array(count);

  const beginDay = (start: number, steps: number): void => {
    const range = { clock: household.clock, start, dt, steps };
    clocked.fill(0);
    extended.fill(0);
    for (let n = 0; n < count; n++) {
      const { activity, runOn } = asked[n]!;
      stretches[n] = activityStretches(activity, 0, household, range);
      addTo(clocked, n, stretches[n]!);
      addTo(extended, n, activityStretches(activity, runOn, household, range));
    }
  };

  const addTo = (shares: Float64Array, n: number, some: readonly Stretch[]): void => {
    for (const stretch of some) {
      for (let s = stretch.first; s <= stretch.last; s++) {
        shares[s * count + n]! += shareOf(stretch, s);
      }
    }
  };

  const follow = (): void => {
    const { day, s } = moment;
    for (let n = 0; n < count; n++) {
      const share = clocked[s * count + n]!;
      if (share > 0 && needsPeople[n] === 1) {
        tookPlace[n] = Math.min(share, attended(day, s)) / share;
      }
      going[n] = share * tookPlace[n]!;
      withRunOn[n] = extended[s * count + n]! * tookPlace[n]!;
    }
  };
  return { beginDay, follow, going, withRunOn, stretches };
}
