import type { Run } from '../engine/run.ts';
import type { AlertMeasures, RuleMeasures } from './plan-measures.ts';
import { weeksIn } from './years-in.ts';

/**
 * What rules did over the period, one by one, and together those that tell people something; zeros
 * without rules.
 */
export function alertMeasures(control: Run['control'], hours: number): AlertMeasures {
  const rules = (control?.rules ?? []).map((rule): [string, RuleMeasures] => [
    rule.name,
    {
      tells: rule.tells,
      fired: rule.fired,
      per_week: perWeek(rule.fired, hours),
      someone_home: rule.someoneHome,
      someone_awake: rule.someoneAwake,
      could_act: rule.couldAct,
      acted_on: rule.actedOn,
      duplicates: rule.duplicates,
      active_hours: rule.activeHours,
      missed: rule.missed,
      by_hour: rule.byHour,
      could_act_by_hour: rule.heardByHour,
      held_back: rule.heldBack,
    },
  ]);
  const sum = (of: (rule: RuleMeasures) => number): number =>
    rules.reduce((total, [, rule]) => total + (rule.tells ? of(rule) : 0), 0);
  const fired = sum((rule) => rule.fired);
  return {
    fired,
    someone_home: sum((rule) => rule.someone_home),
    acted_on: sum((rule) => rule.acted_on),
    per_week: perWeek(fired, hours),
    by_rule: Object.fromEntries(rules),
  };
}

const perWeek = (count: number, hours: number): number => count / weeksIn(hours);
