/** How far each input that is in doubt moves a figure, all else as it is. */
export interface DoubtData {
  /** Such as "extra money a year". */
  readonly figure: string;
  readonly unit: string;
  /** [unit] */
  readonly asIs: number;
  /** What moves the figure most comes first. */
  readonly inputs: readonly {
    readonly name: string;
    /** Of its ends, empty or absent for none. */
    readonly unit?: string;
    /** Ends of the input as they are printed. */
    readonly low: string;
    readonly high: string;
    /** The figure at these ends. [unit] */
    readonly atLow: number;
    readonly atHigh: number;
  }[];
}
