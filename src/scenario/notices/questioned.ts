import type { Automation } from '../../control/automation.ts';
import type { Household } from '../../control/household.ts';
import type { Home } from '../../home/home.ts';
import type { Prices } from '../../home/prices.ts';
import type { FloorsBetween } from '../assemble/home/floors-between.ts';
import type { ScenarioData } from '../model/scenario-model.ts';

/** What questions are asked of. */
export interface Questioned {
  readonly data: ScenarioData;
  readonly home: Home;
  readonly floors: FloorsBetween;
  readonly household: Household;
  readonly automation: Automation;
  readonly prices: Prices;
}
