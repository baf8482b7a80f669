import type { ControlContext } from '../control-context.ts';
import type { Activity } from '../household.ts';
import { takesPlaceOn } from './on-holiday.ts';
import { stretchesOf } from './step-range.ts';

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
      const { activity } = asked[n]!;
      const stretches = activity.when
        .flatMap((spell) => stretchesOf(spell, range))
        .filter(({ date }) => takesPlaceOn(date, activity, household))
        .sort((a, b) => a.from - b.from);
      const from: number[] = [];
      const to: number[] = [];
      for (const stretch of stretches) {
        const last = to.length - 1;
        if (last >= 0 && stretch.from <= to[last]!) to[last] = Math.max(to[last]!, stretch.to);
        else {
          from.push(stretch.from);
          to.push(stretch.to);
        }
      }
      spells[n] = { from, to };
    }
  };
  return { beginDay, of: (n) => spells[n]! };
}
