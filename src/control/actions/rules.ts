import type { Automation, Rule } from '../automation.ts';
import { type ControlContext, windowOpen } from '../control-context.ts';
import type { RuleReport } from '../control-report.ts';
import { fillArray } from '../fill-array.ts';
import type { ConditionIndex } from '../sensors/condition-index.ts';
import { allMet } from '../sensors/conditions.ts';
import { gateIsOpen } from './gate-is-open.ts';
import { createRuleTally } from './rule-tally.ts';
import { createWindowRequests } from './window-requests.ts';
import type { Windows } from './windows.ts';

export interface Rules {
  /** What rules want of devices in this step: 1 asked to run, 1 asked to stop. */
  readonly run: Uint8Array;
  readonly stop: Uint8Array;
  readonly step: () => void;
  readonly startCounting: () => void;
  readonly report: () => RuleReport[];
}

/**
 * A rule is active while its conditions have held for the on delay and its gate is open; it fires
 * when it becomes so. A gate that shuts and opens again therefore fires it again.
 *
 * The gate's room is that of the first condition that has one; without any, the whole home counts.
 *
 * @param asked  filled with the settings that active rules ask for, NaN for none; where two ask, the
 *   later in the list wins [°C]
 */
export function createRules(
  automation: Automation,
  { rules: needs }: ConditionIndex,
  met: Uint8Array,
  windows: Windows,
  asked: Float64Array,
  context: ControlContext,
): Rules {
  const { rules } = automation;
  const { home, moment } = context;
  const tally = createRuleTally(rules.length, context);
  const requests = createWindowRequests(automation, windows, tally, context);
  const run = new Uint8Array(home.devices.length);
  const stop = new Uint8Array(home.devices.length);
  const gateRooms = rules.map(gateRoom);
  const since = new Float64Array(rules.length).fill(Number.NaN);
  const active = new Uint8Array(rules.length);
  // In this spell: 1 once people were told, 2 once it counts as missed.
  const known = new Uint8Array(rules.length);

  const judge = (r: number): void => {
    if (!allMet(met, needs[r]!)) {
      since[r] = Number.NaN;
      active[r] = 0;
      known[r] = 0;
      return;
    }
    if (Number.isNaN(since[r]!)) since[r] = moment.utc;
    const held = moment.utc - since[r]!;
    const { onDelay, gate } = rules[r]!;
    const room = gateRooms[r]!;
    const on =
      held >= onDelay && gateIsOpen(gate, room, context.presence, windowOpen(windows, room));
    if (on && active[r] === 0) {
      known[r] = Math.max(known[r]!, TOLD);
      tally.fired(r);
      requests.ask(r);
    }
    active[r] = on ? 1 : 0;
    if (known[r] === 0 && held >= HOUR) {
      known[r] = MISSED;
      tally.missed(r);
    }
  };

  const act = ({ actions }: Rule): void => {
    for (let k = 0; k < actions.length; k++) {
      const action = actions[k]!;
      if (action.do === 'device') (action.on ? run : stop)[action.device] = 1;
      else if (action.do === 'setpoint') asked[action.room] = action.setpoint;
    }
  };

  const step = (): void => {
    fillArray(run, 0);
    fillArray(stop, 0);
    fillArray(asked, Number.NaN);
    tally.step();
    for (let r = 0; r < rules.length; r++) {
      judge(r);
      if (active[r] === 1) act(rules[r]!);
    }
    requests.step();
  };

  const report = (): RuleReport[] => tally.report(rules.map(({ name }) => name));
  return { run, stop, step, startCounting: tally.startCounting, report };
}

function gateRoom({ all }: Rule): number {
  return all.find(({ room }) => room >= 0)?.room ?? -1;
}

const TOLD = 1;
const MISSED = 2;
const HOUR = 3600;
