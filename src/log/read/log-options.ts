import type { LocalClock } from '../../units/local-clock.ts';
import type { Log, LoggedPlace, LoggedQuantity } from '../log.ts';
import type { LoggedQuantityFacts } from '../quantities.ts';

/** What a person says beside the files of a log. */
export interface LogOptions {
  /** Clock of the logger where times do not say their zone; null where nobody said. */
  readonly clock: LocalClock | null;
  /** Name of that clock for words, such as "Europe/London". */
  readonly zone: string;
  /** True where the zone was said of the log itself and not taken from the home. */
  readonly zoneIsLoggers: boolean;
  /** Order of day and month; absent: seen from the numbers. */
  readonly dates?: DateOrder;
  /** What columns (or names, in a long file) are, by their name as the file writes it. */
  readonly readings: Readonly<Record<string, NamedReading | 'leave out'>>;
  /** Species that the scenario names itself. */
  readonly own: readonly LoggedQuantityFacts[];
  /** Devices of the home that draw electricity; empty where none is known. */
  readonly devices: readonly LoggedDevice[];
  /** Rooms of the home; empty where none is known, then columns name them. */
  readonly rooms: readonly string[];
}

/** A device whose power may be among the columns. */
interface LoggedDevice {
  readonly name: string;
  /** What it is, such as "dehumidifier" or "heater". */
  readonly kind: string;
  /** Name of its room; null where it has none of its own. */
  readonly room: string | null;
}

export type DateOrder = 'day first' | 'month first' | 'year first';

/** What one column or name stands for. */
export interface NamedReading {
  readonly quantity: LoggedQuantity;
  readonly place: LoggedPlace;
  readonly room: string | null;
  readonly device: string | null;
  /** Unit of the numbers; null where nobody said. */
  readonly unit: string | null;
}

/** A log with what was understood of each of its files. */
export interface ReadLog {
  readonly log: Log;
  readonly files: readonly UnderstoodFile[];
}

/** How a file was taken, to be shown to whoever has it. */
export interface UnderstoodFile {
  readonly file: string;
  readonly form: 'wide' | 'long';
  /** In words: "comma", "semicolon", "tab", "bar". */
  readonly separator: string;
  readonly decimal: 'point' | 'comma';
  /** Lines above the first row, header included. */
  readonly head: number;
  readonly rows: number;
  /** Columns that the time is in, and how it is written. */
  readonly time: string;
  readonly zone: string;
  readonly columns: readonly UnderstoodColumn[];
  /** Columns and names that were not read, each with the reason. */
  readonly leftOut: readonly { readonly name: string; readonly why: string }[];
  /** What else was seen and done, in sentences. */
  readonly notes: readonly string[];
}

export interface UnderstoodColumn {
  readonly name: string;
  readonly quantity: LoggedQuantity;
  readonly where: string;
  readonly unit: string;
  /** Whether the header or the person said so, or the numbers did. */
  readonly unitBy: 'said' | 'numbers' | 'usual';
}

/** No word beside the file. */
export const NOTHING_SAID: LogOptions = {
  clock: null,
  zone: '',
  zoneIsLoggers: false,
  readings: {},
  own: [],
  devices: [],
  rooms: [],
};
