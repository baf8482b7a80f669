import { UNLISTED } from '../assemble/defaults.ts';
import { activityData } from '../assemble/people/activities.ts';
import { peopleData } from '../assemble/people/people.ts';
import { EVERY_DAY } from '../clock-words.ts';
import type { ActivityData } from '../model/scenario-model.ts';
import { ALL_YEAR } from '../month-words.ts';
import { ACTIVITIES } from '../presets/activities.ts';
import { validate } from '../validate.ts';

/** Water that a household's activities give to the air, and how to change it. */
export interface HouseholdWater {
  /** Mean of the year, without people's breath. [L/day] */
  readonly litres_a_day: number;
  /** Settings with which all of it is so many times as much. */
  readonly times: (factor: number) => string[];
}

/**
 * Each activity's water, its times a day, its days of the week and its months, as the scenario gives
 * them or as they are filled in. Chance and holidays are left aside.
 *
 * @param raw  a scenario with its plan laid on, as plain values
 * @returns null where the scenario is wrong, nothing gives water, or its activities are the assumed
 *   ones, which have no places of their own to set
 */
export function householdWater(raw: unknown): HouseholdWater | null {
  const { data } = validate(raw);
  if (data?.household?.activities === undefined) return null;
  const list = activityData(data, peopleData(data, UNLISTED), UNLISTED);
  const litres = list.reduce((sum, activity) => sum + waterEach(activity) * perDay(activity), 0);
  if (litres === 0) return null;
  const times = (factor: number) =>
    list.flatMap((activity, k) => {
      const water = waterEach(activity);
      return water === 0 ? [] : [`/household/activities/${k}/water=${water * factor}`];
    });
  return { litres_a_day: litres, times };
}

const waterEach = ({ what, water }: ActivityData): number => water ?? ACTIVITIES[what].water.value;

/** Mean over the year. [1/day] */
function perDay({
  what,
  at,
  days = EVERY_DAY,
  months = ALL_YEAR,
  number = 1,
}: ActivityData): number {
  const starts = at?.length ?? ACTIVITIES[what].at?.length ?? 1;
  return ((starts * number * bits(days)) / bits(EVERY_DAY)) * (bits(months) / bits(ALL_YEAR));
}

function bits(mask: number): number {
  let count = 0;
  for (let rest = mask; rest !== 0; rest &= rest - 1) count++;
  return count;
}
