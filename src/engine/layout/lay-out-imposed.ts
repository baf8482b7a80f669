import type { Home } from '../../home/home.ts';
import { IMPOSED } from './state-layout.ts';

/** What is imposed in the step at hand: IMPOSED records by room, and whether some room has each kind. */
export interface ImposedWork {
  readonly records: Float64Array;
  /** At TEMPERATURE, HUMIDITY, EXTRA and AIR. */
  readonly flags: Uint8Array;
}

export function layOutImposed({ rooms }: Home): ImposedWork {
  const records = new Float64Array(rooms.length * IMPOSED.stride).fill(Number.NaN);
  return { records, flags: new Uint8Array(4) };
}

/** Places of the flags. */
export const TEMPERATURE = 0;
export const HUMIDITY = 1;
/** Extra heat and vapour, windows. */
export const EXTRA = 2;
export const AIR = 3;
