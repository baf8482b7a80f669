import { type Automation, type Rule, reachesPeople } from '../../control/automation.ts';
import type { Notice } from '../../home/notices.ts';
import { momentsOf, valueAt } from '../week-value.ts';
import { isOfHour, isThen, turnsOf } from './hour-conditions.ts';

/**
 * Rules whose quiet hours cover every time of day at which their conditions could hold, so that nobody
 * is ever told.
 */
export function alwaysQuiet({ rules }: Pick<Automation, 'rules'>): Notice[] {
  const quiet = rules.filter((rule) => rule.actions.some(reachesPeople) && isAlwaysQuiet(rule));
  // One that stands for several rooms is told of once.
  const names = new Set(quiet.map(({ name, series }) => series?.name ?? name));
  return [...names].map((name) => ({
    id: 'always-quiet',
    text: `The rule ${name} never tells anybody: its quiet hours cover every hour at which its conditions could hold. Is another time meant?`,
  }));
}

function isAlwaysQuiet({ all, limits }: Rule): boolean {
  const quiet = limits?.quiet;
  if (quiet === undefined) return false;
  const hours = all.filter(isOfHour);
  let holds = false;
  for (const moment of momentsOf([quiet], turnsOf(hours))) {
    if (!hours.every((hour) => isThen(hour, moment))) continue;
    if (valueAt(quiet, moment) === 0) return false;
    holds = true;
  }
  return holds;
}
