import type { RuleMeasures } from '../measures/plan-measures.ts';
import { figureText } from '../units/figure-text.ts';

/** How many of a rule's alerts a count is. [%] */
export const shareOfAlerts = (part: number, { fired }: Pick<RuleMeasures, 'fired'>): string =>
  fired > 0 ? figureText((100 * part) / fired, 0) : '-';

/** How much of the time a rule is active. @param hours  of the period [%] */
export const shareOfTime = (
  { active_hours }: Pick<RuleMeasures, 'active_hours'>,
  hours: number,
): string => figureText((100 * active_hours) / hours, 0);

/** A count a week: few with a decimal. */
export const perWeekText = (count: number): string => figureText(count, count < 9.95 ? 1 : 0);
