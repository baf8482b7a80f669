import type { PlanMeasures, RuleMeasures } from '../../measures/plan-measures.ts';
import { weeksIn } from '../../measures/years-in.ts';
import { visibleProse } from '../../units/visible-text.ts';
import { perWeekText, shareOfAlerts, shareOfTime } from '../rule-words.ts';
import { columnsOf, textTable } from './text-table.ts';
import { wrapText } from './wrap-text.ts';

/**
 * For each plan with rules: which rule rings how often and at which hours, what of that somebody
 * could act on, what came again within the hour, and what passed without a word.
 */
export function rulesByPlan(plans: readonly PlanMeasures[], width: number): string {
  const ruled = plans.filter(({ alerts }) => Object.keys(alerts.by_rule).length > 0);
  if (ruled.length === 0) return 'No plan has rules.';
  const tables = ruled.map(
    ({ plan, alerts, period }) =>
      `${visibleProse(plan)}: ${perWeekText(alerts.per_week)} alerts a week\n` +
      ruleTable(alerts.by_rule, period.hours, width),
  );
  return [...tables, LEGEND.map((line) => wrapText(line, '', width)).join('\n')].join('\n\n');
}

function ruleTable(rules: PlanMeasures['alerts']['by_rule'], hours: number, width: number): string {
  const weeks = weeksIn(hours);
  const all = Object.values(rules);
  const held = all.some(({ held_back }) => held_back > 0);
  const { figures, words } = columnsOf(all);
  return textTable(
    [
      { head: 'rule', cells: Object.keys(rules), align: 'left' },
      figures('rings\n/week', ({ tells, per_week }) =>
        tells ? perWeekText(per_week) : `(${perWeekText(per_week)})`,
      ),
      figures('heard\n%', (rule) => heard(rule, rule.could_act)),
      figures('done\n%', (rule) => heard(rule, rule.acted_on)),
      figures('again\n%', (rule) => shareOfAlerts(rule.duplicates, rule)),
      figures('on\n%', (rule) => shareOfTime(rule, hours)),
      ...(held ? [figures('held\n/week', ({ held_back }) => perWeekText(held_back / weeks))] : []),
      figures('missed\n/week', ({ missed }) => perWeekText(missed / weeks)),
      words('0     6     12    18    ', strip),
    ],
    width,
    1,
  );
}

/** Of what tells nobody nothing is heard or done. */
const heard = (rule: RuleMeasures, part: number): string =>
  rule.tells ? shareOfAlerts(part, rule) : '-';

/** A mark for each hour of the day: a dot for never, up to # for the hours in which it rings most. */
function strip({ by_hour }: RuleMeasures): string {
  const most = Math.max(0, ...by_hour);
  return by_hour
    .map((count) => (count === 0 ? '.' : MARKS[Math.ceil((MARKS.length * count) / most) - 1]!))
    .join('');
}

const MARKS = ['-', '+', '*', '#'];
const LEGEND = [
  'In brackets: switches something and tells nobody; no alert.',
  'heard: somebody was awake at home then or within the hour. done: somebody did what it asks. again: within an hour of the one before. on: active, of the time; a rule that stays on rings once.',
  'missed: spells of an hour or more in which its conditions held and nobody was told, because its gate was shut or it kept quiet; what it watches went on meanwhile. held: messages that quiet hours or a used-up day held back, some told later.',
  'Hours from midnight: . never, - + * # up to the busiest hour of that rule.',
];
