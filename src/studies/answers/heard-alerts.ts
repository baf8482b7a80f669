import type { PlanMeasures } from '../../measures/plan-measures.ts';

/** Alerts of all rules that tell something at which somebody was home and awake then or within the hour. */
export const heardAlerts = ({ alerts }: Pick<PlanMeasures, 'alerts'>): number =>
  Object.values(alerts.by_rule).reduce((sum, rule) => sum + (rule.tells ? rule.could_act : 0), 0);
