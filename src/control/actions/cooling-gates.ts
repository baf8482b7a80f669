import type { Home } from '../../home/home.ts';
import { type Automation, OPEN_GATE } from '../automation.ts';
import { type ControlContext, windowOpen } from '../control-context.ts';
import type { Commands } from '../observations.ts';
import { gateIsOpen } from './gate-is-open.ts';

/**
 * Turns cooling off where its gate is shut, and keeps it from working against heating.
 *
 * To be called once a step after the thermostats: where one of them holds its room above the cooling
 * setpoint (a rule, a warm-up), nothing is cooled below what it holds. Allocates nothing.
 */
export function createCoolingGates(
  { rooms, cooling = [] }: Home,
  { coolingGates }: Automation,
  { presence, windows }: Pick<ControlContext, 'presence' | 'windows'>,
): (commands: Commands) => void {
  const gates = coolingGates ?? rooms.map(() => OPEN_GATE);
  const cooled = Int32Array.from(new Set(cooling.map(({ room }) => room)));
  return ({ setpoints, coolingSetpoints }) => {
    for (let k = 0; k < cooled.length; k++) {
      const i = cooled[k]!;
      if (!gateIsOpen(gates[i]!, i, presence, windowOpen(windows.open, i)))
        coolingSetpoints[i] = OFF;
      else if (coolingSetpoints[i]! < setpoints[i]!) coolingSetpoints[i] = setpoints[i]!;
    }
  };
}

const OFF = Number.POSITIVE_INFINITY;
