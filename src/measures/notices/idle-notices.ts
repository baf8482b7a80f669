import type { Home } from '../../home/home.ts';
import type { Notice } from '../../home/notices.ts';
import { figureText } from '../../units/figure-text.ts';
import type { PlanMeasures } from '../plan-measures.ts';

/** Things a plan has that did nothing in it, and heat that went out of open windows. */
export function idleNotices(
  heating: PlanMeasures['heating'],
  devices: PlanMeasures['devices'],
  alerts: PlanMeasures['alerts'],
): Notice[] {
  return [
    ...Object.entries(devices.detail)
      .filter(([, { hours }]) => hours === 0)
      .map(([name]) => ({
        id: 'device-never-ran',
        text: `The device "${name}" never ran: look at its gate, its hours and its levels.`,
      })),
    ...Object.entries(alerts.by_rule)
      .filter(([, { fired, active_hours }]) => fired === 0 && active_hours === 0)
      .map(([name]) => ({
        id: 'rule-never-fired',
        text: `The rule "${name}" never fired: its conditions and its gate never held together for long enough.`,
      })),
    ...Object.entries(alerts.by_rule)
      .filter(([, { fired, active_hours }]) => fired === 0 && active_hours > 0)
      .map(([name, { active_hours, tells }]) => ({
        id: 'rule-active-before',
        text:
          `The rule "${name}" was active when the period began, stayed so for ${figureText(active_hours, 0)} h and ` +
          `did not fire again: look at its levels.${tells ? ' It tells, or asks for a window, when it becomes active, and again only with "repeat after".' : ''}`,
      })),
    ...Object.entries(alerts.by_rule)
      .filter(([, { tells, fired, could_act }]) => tells && fired >= FEW && could_act < fired / 2)
      .map(([name, { fired, could_act }]) => ({
        id: 'rule-unheard',
        text:
          `The rule "${name}" fired ${fired} times, and ${could_act} times somebody was home and ` +
          'awake within the hour to do something about it.',
      })),
    ...openWindowHeat(heating),
  ];
}

/**
 * Rooms with something to cool them that removed nothing.
 *
 * @param removed  from each room [kWh]
 */
export function idleCooling({ rooms, cooling = [] }: Home, removed: readonly number[]): Notice[] {
  const idle = new Set(cooling.map(({ room }) => room).filter((room) => removed[room] === 0));
  return [...idle].map((room) => ({
    id: 'cooling-never-ran',
    text: `Nothing was cooled in "${rooms[room]!.name}": it stayed under its setpoint while its hours and its gate let it.`,
  }));
}

function openWindowHeat({ useful_kwh, with_window_open_kwh: lost }: PlanMeasures['heating']) {
  if (!(lost > WORTH_A_WORD * useful_kwh)) return [];
  const text =
    `Emitters gave ${figureText(lost, 0)} kWh to rooms while a window of theirs stood open, ` +
    `${figureText((100 * lost) / useful_kwh, 0)} % of all their heat.`;
  return [{ id: 'heating-with-window-open', text }];
}

const FEW = 10;
const WORTH_A_WORD = 0.02;
