import type { Activity } from '../../../control/household.ts';

/** Numbers of the activities that go by one of these names, or are of one of these kinds. */
export function activitiesNamed(
  names: readonly string[],
  activities: readonly Activity[],
  kinds: readonly string[],
): number[] {
  return activities.flatMap(({ name }, k) =>
    names.includes(name) || names.includes(kinds[k]!) ? [k] : [],
  );
}
