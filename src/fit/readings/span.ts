/** A stretch of whole hours. */
export interface Span {
  /** [s UTC] */
  readonly start: number;
  readonly hours: number;
}

/** Hours of a log of which the last are withheld. */
export interface DividedSpan extends Span {
  /** Hours before it are fitted, the others withheld. */
  readonly withheld: number;
}

/** How a log is divided, in hours from its start. */
export interface Division extends DividedSpan {
  /** Rooms are held at the log until here, and then let go. */
  readonly release: number;
}
