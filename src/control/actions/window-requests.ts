import { drawFrom } from '../../units/seeded-draw.ts';
import type { Automation, RuleAction } from '../automation.ts';
import type { ControlContext } from '../control-context.ts';
import { STREAM } from '../random-streams.ts';
import type { RuleTally } from './rule-tally.ts';
import type { Windows } from './windows.ts';

/** Windows that rules ask people to open. */
export interface WindowRequests {
  /** The rule has fired. */
  readonly ask: (rule: number) => void;
  /** Once a step, after the rules: who was asked and could, does. */
  readonly step: () => void;
}

/**
 * Each message is taken up or not, by the action's probability. Taken up, the window is opened after
 * the delay by whoever is home and awake then, or becomes so within an hour of the message; later
 * nobody remembers it. A newer message takes the place of one still open.
 */
export function createWindowRequests(
  { rules, airings, seed }: Automation,
  windows: Windows,
  tally: RuleTally,
  { moment, presence, dt }: ControlContext,
): WindowRequests {
  const requests = rules.flatMap((rule, r) =>
    rule.actions.filter(asksForWindow).map((action) => ({ action, rule: r })),
  );
  const due = new Float64Array(requests.length).fill(Number.POSITIVE_INFINITY);
  const forgotten = new Float64Array(requests.length);

  const ask = (rule: number): void => {
    for (let k = 0; k < requests.length; k++) {
      const request = requests[k]!;
      if (request.rule !== rule) continue;
      const { probability, delay } = request.action;
      if (drawFrom(seed, STREAM.windowRequests + k, moment.count) >= probability) continue;
      due[k] = Math.min(due[k]!, moment.utc + delay);
      forgotten[k] = moment.utc + Math.max(HOUR, delay + dt);
    }
  };

  const step = (): void => {
    for (let k = 0; k < requests.length; k++) {
      if (moment.utc < due[k]!) continue;
      const late = moment.utc >= forgotten[k]!;
      if (!late && !presence.awakeHome) continue;
      due[k] = Number.POSITIVE_INFINITY;
      if (late) continue;
      const { action, rule } = requests[k]!;
      for (let o = 0; o < action.openings.length; o++) {
        const end = moment.utc + action.lasts;
        if (action.openShare === 0) windows.shut(action.openings[o]!, end);
        else windows.hold(action.openings[o]!, action.openShare, end, airings.length + k);
      }
      tally.actedOn(rule);
    }
  };
  return { ask, step };
}

type WindowAction = Extract<RuleAction, { do: 'window' }>;

function asksForWindow(action: RuleAction): action is WindowAction {
  return action.do === 'window';
}

const HOUR = 3600;
