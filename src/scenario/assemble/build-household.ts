import type { Household } from '../../control/household.ts';
import type { LocalClock } from '../../units/local-clock.ts';
import type { ScenarioData } from '../model/scenario-model.ts';
import { type ActivityData, activities } from './activities.ts';
import { openingLines } from './airing.ts';
import type { BuiltHome } from './build-home.ts';
import type { Fill } from './defaults.ts';
import { paint } from './paint.ts';
import { type PersonData, people } from './people.ts';
import { setpointLines } from './setpoint-lines.ts';

/** What people set, do and are, for a home that was built from the same scenario. */
export function buildHousehold(
  data: ScenarioData,
  { home, plans, doors }: BuiltHome,
  { people: persons, done, clock }: Lived,
  fill: Fill,
): Household {
  return {
    clock,
    ...(data.seed !== undefined && { seed: data.seed }),
    people: people(persons, data.household ?? {}, plans, home.species, fill),
    activities: activities(data, done, plans, home.species, fill),
    setpoints: setpointLines(data, plans, home.emitters, fill),
    openings: openingLines(data, home.openings, plans, fill),
    doorways: doors,
    ...paint(data, plans, home.species, fill),
  };
}

/** Who lives here, what they do, and by which clock. */
interface Lived {
  readonly people: readonly PersonData[];
  readonly done: readonly ActivityData[];
  readonly clock: LocalClock;
}
