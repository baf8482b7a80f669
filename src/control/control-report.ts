import type { RuleSeries } from './automation.ts';

/** Counts of what control did over the reported period, for the measures. */
export interface ControlReport {
  readonly rules: readonly RuleReport[];
  readonly airings: readonly AiringReport[];
  /** Counts of each device control, in the order of Automation.deviceControls. */
  readonly devices: readonly {
    readonly device: number;
    readonly starts: number;
    readonly emptied: number;
  }[];
}

export interface RuleReport {
  readonly name: string;
  /** Absent for a rule by itself. */
  readonly series?: RuleSeries;
  /** Whether it tells people anything or asks them for a window; one that only switches something does not. */
  readonly tells: boolean;
  readonly fired: number;
  /** Firings with somebody at home. */
  readonly someoneHome: number;
  /** Firings with somebody at home and awake. */
  readonly someoneAwake: number;
  /** Firings with somebody at home and awake then or within the hour after. */
  readonly couldAct: number;
  /** Firings after which somebody did what the rule asks. */
  readonly actedOn: number;
  /** Firings within an hour of the one before. */
  readonly duplicates: number;
  /** Time during which it was active, whether it became so in the period or before. [h] */
  readonly activeHours: number;
  /** Spells of an hour or more in which the rule's conditions held and nobody was told. */
  readonly missed: number;
  /** Messages that quiet hours or a used-up day held back, some of them told later. */
  readonly heldBack: number;
  /** Firings by the hour of the wall clock, 24 from midnight. */
  readonly byHour: readonly number[];
  /** Of these, firings with somebody at home and awake then or within the hour after. */
  readonly heardByHour: readonly number[];
}

export interface AiringReport {
  readonly name: string;
  readonly occasions: number;
  readonly opened: number;
}
