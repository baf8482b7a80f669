import type { Rule, RuleAction } from '../automation.ts';
import { fillArray } from '../fill-array.ts';

/** What active rules ask of devices and thermostats. */
export interface RuleRequests {
  /** Per device: 1 asked to run, 1 asked to stop. */
  readonly run: Uint8Array;
  readonly stop: Uint8Array;
  /** Once a step, when it is known which rules are active. */
  readonly step: () => void;
}

/**
 * @param active  1 for each rule that is active
 * @param asked   per room: the setting asked for, NaN for none; the last rule to ask wins [°C]
 */
export function createRuleRequests(
  rules: readonly Rule[],
  active: Uint8Array,
  devices: number,
  asked: Float64Array,
): RuleRequests {
  const run = new Uint8Array(devices);
  const stop = new Uint8Array(devices);
  const ofDevices = actionsOf(rules, 'device');
  const deviceRule = Int32Array.from(ofDevices, ({ rule }) => rule);
  const device = Int32Array.from(ofDevices, ({ action }) => action.device);
  const on = Uint8Array.from(ofDevices, ({ action }) => (action.on ? 1 : 0));
  const ofThermostats = actionsOf(rules, 'setpoint');
  const setpointRule = Int32Array.from(ofThermostats, ({ rule }) => rule);
  const room = Int32Array.from(ofThermostats, ({ action }) => action.room);
  const setpoint = Float64Array.from(ofThermostats, ({ action }) => action.setpoint);

  const askDevices = (): void => {
    fillArray(run, 0);
    fillArray(stop, 0);
    for (let k = 0; k < device.length; k++) {
      if (active[deviceRule[k]!] === 0) continue;
      if (on[k] === 1) run[device[k]!] = 1;
      else stop[device[k]!] = 1;
    }
  };

  const askThermostats = (): void => {
    fillArray(asked, Number.NaN);
    for (let k = 0; k < room.length; k++) {
      if (active[setpointRule[k]!] === 1) asked[room[k]!] = setpoint[k]!;
    }
  };

  fillArray(asked, Number.NaN);
  const step = (): void => {
    if (device.length > 0) askDevices();
    if (room.length > 0) askThermostats();
  };
  return { run, stop, step };
}

/** All actions of one kind, in the order of the rules, each with the number of its rule. */
export function actionsOf<K extends RuleAction['do']>(
  rules: readonly Rule[],
  kind: K,
): readonly { readonly action: Extract<RuleAction, { do: K }>; readonly rule: number }[] {
  const isOfKind = (action: RuleAction): action is Extract<RuleAction, { do: K }> =>
    action.do === kind;
  return rules.flatMap(({ actions }, rule) =>
    actions.filter(isOfKind).map((action) => ({ action, rule })),
  );
}
