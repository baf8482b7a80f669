import type { Household } from '../../../control/household.ts';
import type { LocalClock } from '../../../units/local-clock.ts';
import type { ActivityData, PersonData, ScenarioData } from '../../model/scenario-model.ts';
import { carriedSpecies } from '../carried-species.ts';
import type { Defaults } from '../defaults.ts';
import { coolingSchedules } from '../heating/cooling-schedules.ts';
import { setpointSchedules } from '../heating/setpoint-schedules.ts';
import type { BuiltHome } from '../home/build-home.ts';
import { activities } from './activities.ts';
import { openingLines } from './airing.ts';
import { paint } from './paint.ts';
import { people } from './people.ts';
import { steadySources } from './steady-sources.ts';

/** What people set, do and are, for a home that was built from the same scenario. */
export function buildHousehold(
  data: ScenarioData,
  { home, plans, doors, blinds }: BuiltHome,
  { people: persons, done, clock }: Lived,
  defaults: Defaults,
): Household {
  const carried = carriedSpecies(data);
  const mild = data.household?.['open when mild'];
  return {
    clock,
    ...(data.seed !== undefined && { seed: data.seed }),
    people: people(persons, data.household ?? {}, plans, carried, defaults),
    activities: [
      ...activities(data, done, persons.length, plans, carried, defaults),
      ...steadySources(plans, home.species.length),
    ],
    setpoints: setpointSchedules(data, plans, home.emitters, defaults),
    ...(home.cooling !== undefined && {
      cooling: coolingSchedules(data, plans, home.emitters, defaults),
    }),
    openings: openingLines(data, home, plans, defaults),
    ...(mild !== undefined && { openWhenMild: mild }),
    ...(blinds.length > 0 && { blinds: blinds.map(({ hours }) => hours) }),
    doorways: doors,
    ...paint(data, plans, carried, defaults),
  };
}

/** Who lives here, what they do, and by which clock. */
interface Lived {
  readonly people: readonly PersonData[];
  readonly done: readonly ActivityData[];
  readonly clock: LocalClock;
}
