/** What control did over the reported period, for the measures. */
export interface ControlReport {
  readonly rules: readonly RuleReport[];
  readonly airings: readonly AiringReport[];
  /** Per device control, in the order of Automation.deviceControls. */
  readonly devices: readonly {
    readonly device: number;
    readonly starts: number;
    readonly emptied: number;
  }[];
}

export interface RuleReport {
  readonly name: string;
  readonly fired: number;
  /** Of those: somebody was home; was home and awake; could have acted within the hour; did act. */
  readonly someoneHome: number;
  readonly someoneAwake: number;
  readonly couldAct: number;
  readonly actedOn: number;
  /** Fired again within an hour of the last time. */
  readonly duplicates: number;
  /** Hours in a row out of the rule's own conditions with nobody told: counted once per spell of an hour or more. */
  readonly missed: number;
}

export interface AiringReport {
  readonly name: string;
  readonly occasions: number;
  readonly opened: number;
}
