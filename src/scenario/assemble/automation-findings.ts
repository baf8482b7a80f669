import type { Opening } from '../../home/home.ts';
import { nearestName } from '../../units/nearest-name.ts';
import type { Finding } from '../finding.ts';
import { WHATS } from '../model/household.ts';
import type { ScenarioData } from '../model/scenario-model.ts';
import type { Path } from '../yaml/place-of.ts';
import { openingsCalled } from './openings-called.ts';
import type { RoomPlan } from './room-plans.ts';

/** Windows and activities that rules, habits and fans name and that are not there. */
export function automationFindings(
  data: ScenarioData,
  openings: readonly Opening[],
  plans: readonly RoomPlan[],
): Finding[] {
  return [...windowFindings(data, openings, plans), ...activityFindings(data)];
}

function windowFindings(
  data: ScenarioData,
  openings: readonly Opening[],
  plans: readonly RoomPlan[],
): Finding[] {
  const rooms = new Set(openings.map(({ room }) => plans[room]!.name));
  const names = [...rooms, ...openings.map(({ name }) => name)];
  return (data.rules ?? []).flatMap((rule, r) =>
    rule.then.flatMap((action, a): Finding[] => {
      const key = action.open === undefined ? 'close' : 'open';
      const name = action[key];
      if (name === undefined || openingsCalled(name, openings, plans).length > 0) return [];
      const expected = `a room with a window that opens, or an opening: ${names.join(', ')}`;
      return [{ path: ['rules', r, 'then', a, key], expected, names }];
    }),
  );
}

function activityFindings(data: ScenarioData): Finding[] {
  const given = data.household?.activities;
  const known = [
    ...new Set(
      (given ?? []).flatMap(({ what, name }) => (name === undefined ? [what] : [name, what])),
    ),
  ];
  const names: readonly string[] = given === undefined ? WHATS : known;
  const check = (asked: readonly string[] | undefined, path: Path): Finding[] =>
    (asked ?? [])
      .filter((name) => !names.includes(name))
      .map((name) => {
        const near = nearestName(name, names);
        return {
          path,
          expected: `an activity of the household: ${names.join(', ')}`,
          got: JSON.stringify(name),
          ...(near !== null && { hint: `did you mean ${JSON.stringify(near)}?` }),
        };
      });
  const fans = Object.entries(data.devices ?? {}).flatMap(([name, device]): Finding[] => {
    if (device.kind !== 'extract fan') return [];
    const path = ['devices', name, 'with'];
    if (device.runs === 'with activities' && device.with === undefined) {
      return [
        { path: ['devices', name], expected: 'with: the activities it runs with', got: 'none' },
      ];
    }
    return check(device.with, path);
  });
  const habits = (data.household?.airing ?? []).flatMap((habit, k) =>
    check(habit.after, ['household', 'airing', k, 'after']),
  );
  return [...fans, ...habits];
}
