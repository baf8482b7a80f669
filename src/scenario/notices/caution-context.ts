import type { Automation } from '../../control/automation.ts';
import type { Household } from '../../control/household.ts';
import type { Home } from '../../home/home.ts';
import type { PersonData } from '../model/scenario-model.ts';

/** What cautions depend on. */
export interface CautionContext {
  readonly home: Home;
  readonly household: Household;
  readonly automation: Automation;
  readonly people: readonly PersonData[];
  /** True where electricity is cheaper at night. */
  readonly nightTariff: boolean;
}
