import type { Household } from '../../control/household.ts';
import type { LocalClock } from '../../units/local-clock.ts';
import type { ScenarioData } from '../model/scenario-model.ts';
import { activities, activityData } from './activities.ts';
import { openingLines } from './airing.ts';
import type { BuiltHome } from './build-home.ts';
import type { Fill } from './fill.ts';
import { type PersonData, people } from './people.ts';
import { setpointLines } from './setpoint-lines.ts';

/** What people set, do and are, for a home that was built from the same scenario. */
export function buildHousehold(
  data: ScenarioData,
  { home, plans, doors }: BuiltHome,
  persons: readonly PersonData[],
  clock: LocalClock,
  fill: Fill,
): Household {
  const done = activityData(data, persons, fill);
  return {
    clock,
    people: people(persons, data.household?.bodies ?? {}, plans, home.species, fill),
    activities: activities(data, done, plans, home.species, fill),
    setpoints: setpointLines(data, plans, home.emitters, fill),
    openings: openingLines(data, home.openings, plans, fill),
    doorways: doors,
  };
}
