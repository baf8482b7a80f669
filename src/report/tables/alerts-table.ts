import type { PlanMeasures, RuleMeasures } from '../../measures/plan-measures.ts';
import { type FigureColumn, figureTable } from './figure-columns.ts';
import { WIDTH } from './text-table.ts';

/** How often each rule fired and what came of it; nothing where there are no rules. */
export function alertsTable({ by_rule }: PlanMeasures['alerts'], width = WIDTH): string {
  return figureTable('rule', by_rule, FIGURES, width);
}

const FIGURES: readonly FigureColumn<RuleMeasures>[] = [
  { head: 'fired', decimals: 0, of: (r) => r.fired },
  { head: 'a week', decimals: 1, of: (r) => r.per_week },
  { head: 'somebody\nhome', decimals: 0, of: (r) => r.someone_home },
  { head: 'and\nawake', decimals: 0, of: (r) => r.someone_awake },
  { head: 'could be\nacted on', decimals: 0, of: (r) => r.could_act },
  { head: 'acted\non', decimals: 0, of: (r) => r.acted_on },
  { head: 'again in\nan hour', decimals: 0, of: (r) => r.duplicates },
  { head: 'active\n[h]', decimals: 0, of: (r) => r.active_hours },
  { head: 'missed', decimals: 0, of: (r) => r.missed },
  { head: 'held\nback', decimals: 0, of: (r) => r.held_back },
];
