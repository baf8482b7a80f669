import type { Opening } from '../../home/home.ts';
import type { ScenarioData } from '../model/scenario-model.ts';
import type { Finding } from '../unplaced-problem.ts';
import { openingsCalled } from './openings-called.ts';
import type { RoomPlan } from './room-plans.ts';

/** Windows that rules name and that are not there. */
export function ruleWindowFindings(
  data: ScenarioData,
  openings: readonly Opening[],
  plans: readonly RoomPlan[],
): Finding[] {
  const rooms = new Set(openings.map(({ room }) => plans[room]!.name));
  const names = [...rooms, ...openings.map(({ name }) => name)];
  return (data.rules ?? []).flatMap((rule, r) =>
    rule.response.flatMap((action, a): Finding[] => {
      const key = action.open === undefined ? 'close' : 'open';
      const name = action[key];
      if (name === undefined || openingsCalled(name, openings, plans).length > 0) return [];
      const expected = `a room with a window that opens, or an opening: ${names.join(', ')}`;
      return [{ path: ['rules', r, 'response', a, key], expected, names }];
    }),
  );
}
