import type { Opening } from '../../../home/home.ts';
import type { ScenarioData } from '../../model/scenario-model.ts';
import { HERE, roomsOfRule } from '../../rule-rooms.ts';
import type { Finding } from '../../unplaced-problem.ts';
import type { RoomPlan } from '../room-plans.ts';
import { openingsCalled } from './openings-called.ts';

/** Windows that rules name and that are not there. */
export function ruleWindowFindings(
  data: ScenarioData,
  openings: readonly Opening[],
  plans: readonly RoomPlan[],
): Finding[] {
  const rooms = new Set(openings.map(({ room }) => plans[room]!.name));
  const names = [...rooms, ...openings.map(({ name }) => name)];
  const all = plans.map(({ name }) => name);
  return (data.rules ?? []).flatMap((rule, r) =>
    rule.response.flatMap((action, a): Finding[] => {
      const key = action.open === undefined ? 'close' : 'open';
      const path = ['rules', r, 'response', a, key];
      const name = action[key];
      const here = name === HERE ? roomsOfRule(rule, all) : null;
      const shut = here?.find((room) => openingsCalled(room, openings, plans).length === 0);
      if (shut !== undefined) {
        const expected = `rooms with a window that opens: ${[...rooms].join(', ')}`;
        return [{ path, expected, got: `here, which is ${shut} too` }];
      }
      if (here !== null || name === undefined) return [];
      if (openingsCalled(name, openings, plans).length > 0) return [];
      const expected = `a room with a window that opens, or an opening: ${names.join(', ')}`;
      return [{ path, expected, names }];
    }),
  );
}
