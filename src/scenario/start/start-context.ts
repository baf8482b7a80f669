import type { Coordinates } from '../../units/coordinates.ts';

/** What the questions may know of the machine that they are asked on. */
export interface StartContext {
  /** Weather files at hand. */
  readonly weather: readonly WeatherAtHand[];
}

/** A weather file that need not be fetched. */
export interface WeatherAtHand {
  /** How it is called among the answers. */
  readonly name: string;
  readonly title: string;
  readonly place: Coordinates;
}
