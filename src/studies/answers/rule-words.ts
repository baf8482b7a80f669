import { figureText } from '../../units/figure-text.ts';
import type { AskedPlan } from './asked.ts';
import { heardAlerts } from './heard-alerts.ts';

/** "rings 13 times a week (38 % with nobody awake ...)"; of a plan that gives up the rules, what it spares; empty for nothing. */
export function ringing({ measures }: AskedPlan, against: AskedPlan): string {
  const { alerts } = measures;
  if (Object.keys(alerts.by_rule).length === 0) return spared(against.measures);
  if (alerts.fired === 0) return `never rings${stuckOn(measures)}`;
  const unheard = Math.round(100 * (1 - heardAlerts(measures) / alerts.fired));
  const lost =
    unheard === 0 ? '' : ` (${unheard}\u00a0% with nobody awake at home within the hour)`;
  return `rings ${timesText(alerts.per_week)} times a week${lost}`;
}

/** What nobody is told any more who gives up these rules; empty where they told nobody. */
function spared(had: AskedPlan['measures']): string {
  const { fired, per_week, by_rule } = had.alerts;
  if (fired > 0) return `spares ${timesText(per_week)} alerts a week`;
  const tell = Object.values(by_rule).some(({ tells }) => tells);
  return tell ? `gives up rules that never ring${stuckOn(had)}` : '';
}

/** "\"stale air\" rings most, 12 times a week, most often from 18 to 19 h; 20 % of that is within an hour of the time before." */
export function busiestRule(plans: readonly AskedPlan[]): string[] {
  const rules = plans.flatMap(({ measures }) => Object.entries(measures.alerts.by_rule));
  const [busiest] = rules
    .filter(([, { tells }]) => tells)
    .toSorted(([, a], [, b]) => b.fired - a.fired);
  if (busiest === undefined || busiest[1].per_week < 1) return [];
  const [name, { per_week, by_hour, duplicates, fired }] = busiest;
  const hour = by_hour.indexOf(Math.max(...by_hour));
  const again = Math.round((100 * duplicates) / fired);
  return [
    `"${name}" rings most, ${countText(per_week)} a week, most often from ${hour} to ` +
      `${hour + 1}\u00a0h${again === 0 ? '' : `; ${again}\u00a0% of that is within an hour of the time before`}.`,
  ];
}

/** " (\"damp air\" is on 94 % of the time)": a rule whose reading hardly ever returns to normal tells nothing new. */
function stuckOn({ alerts, period }: AskedPlan['measures']): string {
  const [stuck] = Object.entries(alerts.by_rule).filter(
    ([, { tells, active_hours }]) => tells && active_hours >= STUCK * period.hours,
  );
  if (stuck === undefined) return '';
  const share = figureText((100 * stuck[1].active_hours) / period.hours, 0);
  return ` ("${stuck[0]}" is on ${share === '100' ? 'all' : `${share}\u00a0% of`} the time)`;
}

const countText = (perWeek: number): string => {
  const count = figureText(perWeek, 0);
  return count === '1' ? 'once' : `${count} times`;
};

/** Share of the time from which on a rule counts as stuck. [-] */
const STUCK = 0.9;
const timesText = (perWeek: number): string => figureText(perWeek, perWeek < 10 ? 1 : 0);
