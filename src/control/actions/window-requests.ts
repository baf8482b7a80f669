import { evenDraw, hashFrom } from '../../units/seeded-draw.ts';
import { SECONDS_PER_HOUR } from '../../units/time-units.ts';
import type { Automation } from '../automation.ts';
import type { ControlContext } from '../control-context.ts';
import { STREAM, stemsByName } from '../random-streams.ts';
import { actionsOf } from './rule-requests.ts';
import type { RuleTally } from './rule-tally.ts';
import type { Windows } from './windows.ts';

/** Windows that rules ask people to open. */
export interface WindowRequests {
  /** The rule has fired. @param at  when it was due to, within half a step [s UTC] */
  readonly ask: (rule: number, at: number) => void;
  /** Once a step, after the rules: who was asked and could, does. */
  readonly step: () => void;
}

/**
 * Each message is taken up or not, by the action's probability. Taken up, the window is opened after
 * the delay, to the nearest step, by whoever is home and awake then, or becomes so within an hour of
 * the message; later nobody remembers it. A newer message takes the place of one still open.
 */
export function createWindowRequests(
  { rules, airings, seed }: Automation,
  windows: Windows,
  tally: RuleTally,
  { moment, presence, dt }: ControlContext,
): WindowRequests {
  const requests = actionsOf(rules, 'window');
  const names = requests.map(({ rule }) => rules[rule]!.name);
  const columns = {
    rule: Int32Array.from(requests, (one) => one.rule),
    delay: Float64Array.from(requests, ({ action }) => action.delay),
    probability: Float64Array.from(requests, ({ action }) => action.probability),
    stream: stemsByName(seed, STREAM.windowRequests, names),
    // When somebody is to do it, and when nobody remembers it. [s UTC]
    due: new Float64Array(requests.length).fill(Number.POSITIVE_INFINITY),
    forgotten: new Float64Array(requests.length),
  };

  const ask = (fired: number, at: number): void => {
    const { count: now } = moment;
    const { rule, delay, probability, stream, due, forgotten } = columns;
    for (let k = 0; k < rule.length; k++) {
      if (rule[k] !== fired || evenDraw(hashFrom(stream[k]!, now)) >= probability[k]!) continue;
      due[k] = Math.min(due[k]!, at + delay[k]!);
      forgotten[k] = at + Math.max(SECONDS_PER_HOUR, delay[k]! + dt);
    }
  };

  const carryOut = (k: number): void => {
    const { openings, openShare, lasts } = requests[k]!.action;
    const end = moment.utc + lasts;
    for (let o = 0; o < openings.length; o++) {
      if (openShare === 0) windows.shut(openings[o]!, end);
      else windows.hold(openings[o]!, openShare, end, airings.length + k);
    }
    tally.actedOn(columns.rule[k]!);
  };

  const step = (): void => {
    const { utc, middle } = moment;
    const { due, forgotten } = columns;
    for (let k = 0; k < due.length; k++) {
      if (middle < due[k]!) continue;
      const late = utc >= forgotten[k]!;
      if (!late && !presence.awakeHome) continue;
      due[k] = Number.POSITIVE_INFINITY;
      if (!late) carryOut(k);
    }
  };
  return { ask, step };
}
