import type { Quantity } from '../quantity.ts';

/** How to read a CSV of no known layout: which column is what, in which unit, and what a time means. */
export interface ColumnMap {
  readonly time: {
    /** Header of the time column, or of two that belong together (date and time of day). */
    readonly column: string | readonly string[];
    /**
     * "iso" (default), "epoch s", "epoch ms", or a pattern of YYYY MM DD hh mm ss and A (AM/PM)
     * such as "DD.MM.YYYY hh:mm". Hour 24 is midnight at the end of the day.
     */
    readonly format?: string;
    /** Clock of the file ahead of UTC, where the times themselves do not say. [h] */
    readonly utcOffset?: number;
    /** Which part of its interval the stamp of a mean stands for. Default "beginning". */
    readonly stamp?: 'beginning' | 'ending' | 'instant';
    /** Whether temperature, humidity and wind too are means of that interval. Default false. */
    readonly airIsMean?: boolean;
  };
  readonly quantities: Readonly<Partial<Record<Quantity, MappedColumn>>>;
  /** Default: the one that the header line holds most of, of comma, semicolon and tab. */
  readonly delimiter?: string;
  /** True for numbers such as 3,5. Default false. */
  readonly decimalComma?: boolean;
  /** Lines above the header. Default 0. */
  readonly skipLines?: number;
  /** Texts and numbers that mean "no reading", besides the usual ones. */
  readonly missing?: readonly (string | number)[];
  /** Months of several years make one typical year. Default false. */
  readonly typical?: boolean;
}

interface MappedColumn {
  /** Header of the column. */
  readonly column: string;
  /** One of the units `unitsOf` knows for the quantity; default the quantity's own. */
  readonly unit?: string;
}
