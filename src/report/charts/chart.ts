/** A picture, before anybody draws it. */
export interface Chart {
  /** States what the picture finds, made from its figures. */
  readonly title: string;
  /** What somebody reads who does not see the picture. */
  readonly description: string;
  /** Vega-Lite as plain data, without functions; [px] wide as asked for, all margins included. */
  readonly spec: ChartSpec;
  /** The picture's figures, for a table that can be opened below it. */
  readonly table: ChartTable;
  /** Positions of the table's rows along the level axis, where they can be pointed at. */
  readonly along?: Along;
}

/** Rows of a table evenly spread along the level axis. */
export interface Along {
  /** Number of the first row that has a place. */
  readonly row: number;
  /** Place of that row on the axis, or the number of its bar, and the distance to the next. */
  readonly from: number;
  readonly step: number;
}

export type ChartSpec = Readonly<Record<string, unknown>>;

interface ChartTable {
  /** One per column, with its unit in brackets where it has one. */
  readonly headers: readonly string[];
  /** Figures as they are printed; the first cell is the row's name. */
  readonly rows: readonly (readonly string[])[];
}
