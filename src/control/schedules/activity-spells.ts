import type { ControlContext } from '../control-context.ts';
import type { Activity } from '../household.ts';
import { activityStretches } from './activity-stretches.ts';

/** When activities begin and end by the clock, to the second. */
export interface ActivitySpells {
  readonly beginDay: (start: number, steps: number) => void;
  /** Begin and end of each spell that reaches into the day, in order; what adjoins is one. [s UTC] */
  readonly of: (n: number) => { readonly from: readonly number[]; readonly to: readonly number[] };
}

/** Holidays keep activities from happening; whether somebody is at home is not asked. */
export function createActivitySpells(
  asked: readonly { readonly activity: Activity }[],
  { household, dt }: ControlContext,
): ActivitySpells {
  const spells = asked.map(() => ({ from: [] as number[], to: [] as number[] }));

  const beginDay = (start: number, steps: number): void => {
    const range = { clock: household.clock, start, dt, steps };
    for (let n = 0; n < asked.length; n++) {
      const stretches = activityStretches(asked[n]!.activity, 0, household, range);
      spells[n] = { from: stretches.map(({ from }) => from), to: stretches.map(({ to }) => to) };
    }
  };
  return { beginDay, of: (n) => spells[n]! };
}
