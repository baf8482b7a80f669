/** Counts of what control did over the reported period, for the measures. */
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
  /** Firings with somebody home; with somebody home and awake; that could be acted on within the hour; that were. */
  readonly someoneHome: number;
  readonly someoneAwake: number;
  readonly couldAct: number;
  readonly actedOn: number;
  /** Firings within an hour of the one before. */
  readonly duplicates: number;
  /** Spells of an hour or more in which the rule's conditions held and nobody was told. */
  readonly missed: number;
}

export interface AiringReport {
  readonly name: string;
  readonly occasions: number;
  readonly opened: number;
}
