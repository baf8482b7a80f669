import { SECONDS_PER_HOUR } from '../../units/time-units.ts';
import { type Automation, type Rule, reachesPeople } from '../automation.ts';
import { type ControlContext, windowOpen } from '../control-context.ts';
import type { RuleReport } from '../control-report.ts';
import type { ConditionIndex } from '../sensors/condition-index.ts';
import { allMet } from '../sensors/conditions.ts';
import type { Span } from '../span.ts';
import { gateIsOpen } from './gate-is-open.ts';
import { createMessageAllowance } from './message-limits.ts';
import { createRuleRequests } from './rule-requests.ts';
import { createRuleTally } from './rule-tally.ts';
import { createWindowRequests } from './window-requests.ts';
import type { Windows } from './windows.ts';

export interface Rules {
  /** @param start  instant at which the day's first step begins [s UTC] */
  readonly beginDay: (start: number, steps: number) => void;
  /** What rules want of devices in this step: 1 asked to run, 1 asked to stop. */
  readonly run: Uint8Array;
  readonly stop: Uint8Array;
  readonly step: () => void;
  readonly startCounting: () => void;
  readonly report: () => RuleReport[];
}

/**
 * A rule is active while its conditions have held for the on delay and its gate is open; it fires
 * when it becomes so. A gate that shuts and opens again therefore fires it again. Quiet hours and a used-up
 * day hold a message back until they are over, if the rule is still active then.
 *
 * Delays count to the nearest step: what is seen first at the start of a step came about half a step
 * before, in the mean. Repeats keep their rhythm, whatever the step.
 *
 * The gate's room is the rule's own, or that of the first condition that has one; without any, the whole
 * home counts.
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
  const { home, moment, presence, dt } = context;
  const allowance = createMessageAllowance(rules, context);
  const tally = createRuleTally(rules.length, context);
  const messages = createWindowRequests(automation, windows, tally, context);
  const states = rules.map((rule, r) => createRuleState(rule, needs[r]!));
  const active = new Uint8Array(rules.length);
  const requests = createRuleRequests(rules, active, home.devices.length, asked);

  /** @param due  when the message is due [s UTC]; what follows counts from then, from now where it is overdue */
  const tell = (rule: RuleState, r: number, due: number): void => {
    if (!allowance.mayTell(r)) {
      if (!rule.waiting) tally.heldBack(r);
      rule.waiting = true;
      return;
    }
    rule.waiting = false;
    const from = due > moment.middle - dt ? due : moment.utc;
    rule.tellAgain = from + rule.repeatAfter;
    rule.known = Math.max(rule.known, TOLD);
    allowance.told(r);
    tally.fired(r);
    messages.ask(r, from);
  };

  const holds = (rule: RuleState, r: number): void => {
    const { utc, middle } = moment;
    if (Number.isNaN(rule.since)) rule.since = utc;
    const held = utc - rule.since;
    const { gate, room } = rule;
    const on =
      middle - rule.since >= rule.onDelay &&
      gateIsOpen(gate, room, presence, windowOpen(windows.readOpen, room));
    if (!on) rule.waiting = false;
    else if (active[r] === 0 || rule.waiting) tell(rule, r, rule.since + rule.onDelay);
    else if (middle >= rule.tellAgain) tell(rule, r, rule.tellAgain);
    active[r] = on ? 1 : 0;
    if (on) tally.active(r);
    if (rule.known === 0 && held >= SECONDS_PER_HOUR) {
      rule.known = MISSED;
      tally.missed(r);
    }
  };

  const step = (): void => {
    if (states.length === 0) return;
    tally.step();
    allowance.step();
    for (let r = 0; r < states.length; r++) {
      const rule = states[r]!;
      if (allMet(met, rule.needs)) {
        holds(rule, r);
      } else if (!Number.isNaN(rule.since)) {
        rule.since = Number.NaN;
        rule.known = 0;
        rule.waiting = false;
        active[r] = 0;
      }
    }
    requests.step();
    messages.step();
  };

  const report = (): RuleReport[] =>
    tally.report(
      rules.map(({ name, series, actions }) => ({
        ...{ name, tells: actions.some(reachesPeople) },
        ...(series !== undefined && { series }),
      })),
    );
  const { run, stop } = requests;
  const { beginDay } = allowance;
  return { beginDay, run, stop, step, startCounting: tally.startCounting, report };
}

/** A rule as the time loop goes by it, with what it remembers. */
function createRuleState(rule: Rule, needs: Span) {
  return {
    needs,
    gate: rule.gate,
    room: gateRoom(rule),
    onDelay: rule.onDelay,
    repeatAfter: rule.limits?.repeatAfter ?? Number.POSITIVE_INFINITY,
    /** When its conditions began to hold; NaN while they do not. [s UTC] */
    since: Number.NaN,
    /** In this spell: 1 once people were told, 2 once it counts as missed. */
    known: 0,
    /** When it tells people again if it stays active. [s UTC] */
    tellAgain: Number.POSITIVE_INFINITY,
    /** A message is held back. */
    waiting: false,
  };
}

type RuleState = ReturnType<typeof createRuleState>;

function gateRoom({ all, room: own }: Rule): number {
  return own ?? all.find(({ room }) => room >= 0)?.room ?? -1;
}

const TOLD = 1;
const MISSED = 2;
