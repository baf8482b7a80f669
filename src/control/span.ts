/** Places in a row of a list or table, the last not included. */
export interface Span {
  readonly from: number;
  readonly to: number;
}
