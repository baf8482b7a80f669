/** Readings that people's own sensors and meters took in a home, in SI units and UTC. */
export interface Log {
  /** One for each thing at each place; no two of the same. */
  readonly series: readonly LoggedSeries[];
  /** First and last reading of all. [s UTC] */
  readonly start: number;
  readonly end: number;
}

/** One thing that was logged at one place. */
export interface LoggedSeries {
  readonly quantity: LoggedQuantity;
  readonly place: LoggedPlace;
  /** Name of the room; null for the whole home and outdoors. */
  readonly room: string | null;
  /** Name of the device whose power it is; null for everything else. */
  readonly device: string | null;
  readonly reading: ReadingKind;
  /** Ascending, none twice. [s UTC] */
  readonly times: Float64Array;
  /**
   * One a time, in the unit of the quantity. NaN only in states and power, where it says that from then
   * on nothing is known (a sensor that fell silent), and in means that are not known, as the first.
   */
  readonly values: Float64Array;
  /** Until when the last of states holds; absent where nothing is known behind the last value. [s UTC] */
  readonly holdsUntil?: number;
  /** File and column, for words to people. */
  readonly from: string;
}

/**
 * What a series tells, and its unit: temperature and dew point [°C], relative humidity [%], window
 * and valve opening [share open, 0 to 1], presence [people], heating power (the heat given), heating
 * electricity (what electric heating draws), device power, electricity and gas [W], or a species by its name [its unit].
 */
export type LoggedQuantity = HouseQuantity | (string & {});

type HouseQuantity =
  | 'temperature'
  | 'relative humidity'
  | 'dew point'
  | 'window'
  | 'presence'
  | 'heating power'
  | 'heating electricity'
  | 'valve opening'
  | 'electricity'
  | 'gas'
  | 'device power';

export type LoggedPlace = 'room' | 'home' | 'outdoors';

/**
 * What a value stands for: the reading at its time (`instant`), a state from its time until the next
 * (`state`), or the mean from the time before until its own (`mean`), as of a meter.
 */
export type ReadingKind = 'instant' | 'state' | 'mean';

/** The series of one thing at one place, or undefined where nobody logged it. */
export function seriesOf(
  log: Log,
  quantity: LoggedQuantity,
  room: string | null,
  place: LoggedPlace = room === null ? 'home' : 'room',
): LoggedSeries | undefined {
  return log.series.find(
    (each) => each.quantity === quantity && each.room === room && each.place === place,
  );
}

/** Rooms of which something was logged, each once. */
export const roomsOf = ({ series }: Log): string[] => [
  ...new Set(series.flatMap(({ room }) => room ?? [])),
];
