import type { PreparedPlan } from '../../scenario/prepared.ts';
import type { FittedStage } from '../fitted-stage.ts';
import type { Division } from '../readings/span.ts';
import { otherClock } from './other-clock.ts';
import { otherHours } from './other-hours.ts';

/**
 * Whether the log's clock, or else the hours of heating and cooling, seem to be others than is taken, in a
 * sentence; none where neither does. Another clock moves those hours too, so that only the clock is told.
 */
export function otherTimes(
  { home, household }: Pick<PreparedPlan, 'home' | 'household'>,
  stages: readonly FittedStage[],
  division: Division,
): string[] {
  const clock = otherClock(stages, division);
  const [warms, cools] = [home.emitters.length > 0, (home.cooling ?? []).length > 0];
  if (clock.length > 0 || !(warms || cools)) return clock;
  const what = warms ? `Heating${cools ? ' or cooling' : ''}` : 'Cooling';
  return otherHours(what, stages, division, household.clock);
}
