import type { WeekSchedule } from '../../control/household.ts';
import type { PreparedPlan } from '../../scenario/prepared.ts';
import { capital } from '../../units/capital.ts';
import { andList } from '../../units/word-list.ts';
import { newPurchases } from '../compare/new-purchases.ts';
import { type Change, highestSettings } from '../effects/plan-changes.ts';
import type { Asked, AskedPlan, Topic } from './asked.ts';
import { askedChanges } from './asked-changes.ts';
import { boughtWords, inPlaceOf } from './in-place-of.ts';

/** What a plan asks, as somebody would. */
export function titleOf({ about, plan, against }: Asked): string {
  if (about === 'purchase') return `Buy ${newThings(plan, against)}?`;
  if (about === 'devices') return deviceTitle(plan, against);
  if (about === 'the rest') return restTitle(plan, against);
  if (about === 'rules' && hasRules(plan) && hasRules(against)) return 'Other rules?';
  if (about === 'source' && !isHeated(against)) return 'Heat the home?';
  return about === 'setting' ? settingTitle(plan.prepared, against.prepared) : TITLES[about];
}

export const hasRules = ({ prepared }: AskedPlan): boolean => prepared.automation.rules.length > 0;
const isHeated = ({ prepared }: AskedPlan): boolean => prepared.home.emitters.length > 0;

/** Whether a room is kept warmer than it was at some hours and cooler at others. */
export function movesHeat({ household: plan }: PreparedPlan, { household }: PreparedPlan): boolean {
  // A setback that both have alike says nothing of either.
  const values = ({ base, spells }: WeekSchedule, other: WeekSchedule): number[] =>
    [...spells.map(({ value }) => value), ...(base === other.base ? [] : [base])].filter(
      Number.isFinite,
    );
  return plan.setpoints.some((setpoints, i) => {
    const before = household.setpoints[i]!;
    const [has, had] = [values(setpoints, before), values(before, setpoints)];
    if (has.length === 0 || had.length === 0) return false;
    return Math.max(...has) > Math.max(...had) && Math.min(...has) < Math.min(...had);
  });
}

/** "19 °C or 21 °C?", or with the rooms where only some have another setting. */
function settingTitle(plan: PreparedPlan, other: PreparedPlan): string {
  if (movesHeat(plan, other)) return 'Warmer at some hours, cooler at others?';
  const [has, had] = [highestSettings(plan), highestSettings(other)];
  const changed = has.flatMap((setting, i) => (setting === had[i] ? [] : [i]));
  const heated = has.filter((setting, i) => setting !== null || had[i] !== null).length;
  const names = changed.map((i) => plan.home.rooms[i]!.name);
  const more = names.length > 3 ? ` and ${names.length - 2} more` : '';
  const told = more === '' ? andList(names) : names.slice(0, 2).join(', ') + more;
  const where = changed.length === heated ? '' : ` (${told})`;
  const values = [...new Set(changed.flatMap((i) => [has[i]!, had[i]!]))];
  if (values.length !== 2 || values.includes(null!)) return `Another setting${where}?`;
  const [low, high] = values.sort((a, b) => a - b);
  return `${low} °C or ${high} °C${where}?`;
}

/** "Another setting, devices and other habits at once?", or by the plan's name where what it changes has none. */
function restTitle(plan: AskedPlan, against: AskedPlan): string {
  const changes = askedChanges(against, plan);
  const things = [...changes].flatMap((change) => {
    if (change === 'people') return [livesOtherwise(plan.prepared, against.prepared)];
    return change === 'purchase' ? [] : [THINGS[change]];
  });
  if (things.length === 0) return `Is ${plan.figures.plan} worth it?`;
  return `${capital(andList(things))}${things.length === 1 ? '' : ' at once'}?`;
}

function livesOtherwise({ household: plan }: PreparedPlan, { household }: PreparedPlan): string {
  const differ = (key: 'people' | 'activities' | 'decaying'): boolean =>
    JSON.stringify(plan[key]) !== JSON.stringify(household[key]);
  if (differ('people')) return 'other people or hours';
  return differ('activities') || differ('decaying') ? 'other habits' : 'doors open at other hours';
}

/** "With or without the stove?", "The fan in place of the drier?", or how to run what both plans have. */
function deviceTitle({ prepared: plan }: AskedPlan, { prepared: other }: AskedPlan): string {
  const told = ({ home, automation }: PreparedPlan) =>
    new Map(
      home.devices.map((device, d) => [
        device.name,
        JSON.stringify([device, automation.deviceControls.filter((each) => each.device === d)]),
      ]),
    );
  const [has, had] = [told(plan), told(other)];
  const names = [...new Set([...has.keys(), ...had.keys()])];
  const all = (which: readonly string[]): string => `the ${which.join(' and the ')}`;
  const added = names.filter((name) => !had.has(name));
  const gone = names.filter((name) => !has.has(name));
  if (added.length > 0 && gone.length > 0)
    return `${capital(all(added))} in place of ${all(gone)}?`;
  if (added.length + gone.length > 0) return `With or without ${all([...added, ...gone])}?`;
  return `Run ${all(names.filter((name) => has.get(name) !== had.get(name)))} otherwise?`;
}

/** "dehumidifier for 180 GBP in place of the old one" */
function newThings({ prepared: plan }: AskedPlan, { prepared: other }: AskedPlan): string {
  const added = newPurchases(other.purchases, plan.purchases);
  return boughtWords(added, plan) + inPlaceOf(plan, other);
}

const THINGS: Readonly<Record<Exclude<Change, 'people' | 'purchase'>, string>> = {
  ...{ setting: 'another setting', hours: 'other heating hours', presence: 'heat by presence' },
  ...{ sensing: 'other valves and sensors', source: 'another source of heat', cooling: 'cooling' },
  ...{ devices: 'devices', blinds: 'blinds', airing: 'other airing', rules: 'rules' },
  ...{ building: 'another building', prices: 'other prices' },
};
const TITLES: Readonly<
  Record<Exclude<Topic, 'setting' | 'purchase' | 'devices' | 'the rest'>, string>
> = {
  hours: 'When to heat?',
  presence: 'Heat only where somebody is?',
  rules: 'Do the rules help?',
  sensing: 'Which valves and sensors?',
  source: 'Another source of heat?',
  building: 'Change the building?',
  cooling: 'Cool?',
  blinds: 'Close the blinds?',
  airing: 'Open windows otherwise?',
};
