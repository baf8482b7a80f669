import type { Automation } from '../control/automation.ts';
import type { ControlReport } from '../control/control-report.ts';
import type { Household } from '../control/household.ts';
import type { Home } from '../home/home.ts';
import type { Notice } from '../home/notices.ts';
import type { Weather } from '../weather/weather.ts';
import type { HeldStart, ImposedSeries, Series } from './imposed/imposed.ts';
import type { Ledger } from './ledger/ledger.ts';
import type { Preparation } from './preparation.ts';

/** What a run needs. */
export interface RunInput {
  readonly home: Home;
  readonly household: Household;
  /** Control: sensors, thermostats, rules, devices; absent means that no device runs and nothing acts. */
  readonly automation?: Automation;
  readonly weather: Weather;
  /** Control step: a whole number of them makes an hour. [s] */
  readonly dt: number;
  /** Start of the reported period, on the hour. [s UTC] */
  readonly start: number;
  /** Length of the reported period. [h] */
  readonly hours: number;
  /** Days of spin-up before the start, so that the initial state of walls and furnishings no longer matters. */
  readonly spinUpDays: number;
  /** False takes every step as JavaScript; absent is as WebAssembly where the machine allows it, with the same results. */
  readonly compiled?: boolean;
  /** Made once by `prepareRuns` for many runs of this home; absent is made anew. */
  readonly preparation?: Preparation;
  /** What is known and takes the place of what the model would work out, by name of the room. */
  readonly imposed?: Readonly<Record<string, ImposedSeries>>;
  /**
   * Electric power that devices drew, by their names, one value a control step: they run as it says, in the
   * place of their control. In the spin-up, and without `automation`, it counts for nothing. [W]
   */
  readonly devicePower?: Readonly<Record<string, Series>>;
  /** Rooms held at given values until an instant, and then let go. */
  readonly heldStart?: HeldStart;
}

/** Results of a run, besides what its observers kept. */
export interface Run {
  readonly start: number;
  readonly hours: number;
  readonly dt: number;
  readonly ledger: Ledger;
  /** What control did, or null where there was none. */
  readonly control: ControlReport | null;
  readonly notices: readonly Notice[];
}
