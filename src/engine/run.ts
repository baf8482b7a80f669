import type { Automation } from '../control/automation.ts';
import type { ControlReport } from '../control/control-report.ts';
import type { Household } from '../control/household.ts';
import type { Home } from '../home/home.ts';
import type { Notice } from '../home/notices.ts';
import type { Weather } from '../weather/weather.ts';
import type { Ledger } from './ledger.ts';

/** What a run needs. */
export interface RunInput {
  readonly home: Home;
  readonly household: Household;
  /** What watches and acts; absent means that nothing does and no device runs. */
  readonly automation?: Automation;
  readonly weather: Weather;
  /** Control step: a whole number of them makes an hour. [s] */
  readonly dt: number;
  /** Start of the reported period, on the hour. [s UTC] */
  readonly start: number;
  /** Length of the reported period. [h] */
  readonly hours: number;
  /** Days simulated before the start, so that walls and furnishings have forgotten the first guess. */
  readonly spinUpDays: number;
}

/** What a run leaves besides what its observers kept. */
export interface Run {
  readonly start: number;
  readonly hours: number;
  readonly dt: number;
  readonly ledger: Ledger;
  /** What control did, or null where there was none. */
  readonly control: ControlReport | null;
  readonly notices: readonly Notice[];
}
