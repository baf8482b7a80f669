import type { Home } from '../../home/home.ts';
import type { Notice } from '../../home/notices.ts';
import { figureText } from '../../units/figure-text.ts';
import { andList } from '../../units/word-list.ts';
import type { PlanMeasures } from '../plan-measures.ts';

/** Things a plan has that did nothing in it, and heat that went out of open windows. */
export function idleNotices(
  heating: PlanMeasures['heating'],
  devices: PlanMeasures['devices'],
): Notice[] {
  return [
    ...Object.entries(devices.detail)
      .filter(([, { hours }]) => hours === 0)
      .map(([name]) => ({
        id: 'device-never-ran',
        text: `The device "${name}" never ran: look at its gate, its hours and its levels.`,
      })),
    ...openWindowHeat(heating),
  ];
}

/**
 * Rooms with something to cool them that removed nothing, all in one sentence.
 *
 * @param removed  from each room [kWh]
 */
export function idleCooling({ rooms, cooling = [] }: Home, removed: readonly number[]): Notice[] {
  const idle = new Set(cooling.map(({ room }) => room).filter((room) => removed[room] === 0));
  if (idle.size === 0) return [];
  const names = andList([...idle].map((room) => `"${rooms[room]!.name}"`));
  const they =
    idle.size === 1
      ? 'it stayed under its setpoint while its hours and its gate let it'
      : 'they stayed under their setpoints while their hours and gates let them';
  return [{ id: 'cooling-never-ran', text: `Nothing was cooled in ${names}: ${they}.` }];
}

function openWindowHeat({ useful_kwh, with_window_open_kwh: lost }: PlanMeasures['heating']) {
  if (!(lost > WORTH_A_WORD * useful_kwh)) return [];
  const text =
    `Emitters gave ${figureText(lost, 0)} kWh to rooms while a window of theirs stood open, ` +
    `${figureText((100 * lost) / useful_kwh, 0)} % of all their heat.`;
  return [{ id: 'heating-with-window-open', text }];
}

const WORTH_A_WORD = 0.02;
