import type { Rule } from '../../control/automation.ts';
import type { PreparedPlan } from '../../scenario/prepared.ts';
import { type Change, changesBetween, type PlanParts } from '../effects/plan-changes.ts';

/** A plan with the parts by which it is told from others. */
export interface PlanOfParts {
  readonly prepared: PreparedPlan;
  readonly parts: PlanParts;
}

/** What a plan asks about: all that it changes, where rules that run a device it changes belong to that device. */
export function askedChanges(against: PlanOfParts, plan: PlanOfParts): ReadonlySet<Change> {
  const changes = changesBetween(against.parts, plan.parts);
  if (!changes.has('devices') || !changes.has('rules')) return changes;
  const devices = apart(devicesOf(plan.prepared), devicesOf(against.prepared));
  const rules = apart(rulesOf(plan.prepared), rulesOf(against.prepared));
  const belong = [...rules.values()].every((rule) => rule.runs.some((name) => devices.has(name)));
  return new Set([...changes].filter((change) => change !== 'rules' || !belong));
}

interface Part {
  readonly text: string;
  /** Names of the devices that a rule starts or stops. */
  readonly runs: readonly string[];
}

/** What only one of two plans has, or both have otherwise, by name. */
function apart(has: ReadonlyMap<string, Part>, had: ReadonlyMap<string, Part>) {
  const names = [...new Set([...has.keys(), ...had.keys()])];
  return new Map(
    names.flatMap((name) =>
      has.get(name)?.text === had.get(name)?.text
        ? []
        : [[name, (has.get(name) ?? had.get(name))!]],
    ),
  );
}

const devicesOf = ({ home, automation }: PreparedPlan): ReadonlyMap<string, Part> =>
  new Map(
    home.devices.map((device, d) => {
      const controls = automation.deviceControls.filter((each) => each.device === d);
      const how = controls.map((each) => ({ ...each, device: device.name }));
      return [device.name, { text: JSON.stringify([device, how]), runs: [] }];
    }),
  );

/** Devices by name, because a number moves where others come and go. */
const rulesOf = ({ home, automation }: PreparedPlan): ReadonlyMap<string, Part> =>
  new Map(
    automation.rules.map((rule) => {
      const nameOf = (device: number): string => home.devices[device]!.name;
      const actions = rule.actions.map((action) =>
        action.do === 'device' ? { ...action, device: nameOf(action.device) } : action,
      );
      const { series: _, ...own }: Rule = rule;
      const runs = rule.actions.flatMap((one) => (one.do === 'device' ? [nameOf(one.device)] : []));
      return [rule.name, { text: JSON.stringify({ ...own, actions }), runs }];
    }),
  );
