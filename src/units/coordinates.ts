import type { QuantityResult } from './quantity.ts';

/** A place on the earth. [deg] */
export interface Coordinates {
  /** North positive. */
  readonly latitude: number;
  /** East positive. */
  readonly longitude: number;
}

type Refused = Extract<QuantityResult, { refused: unknown }>;

/**
 * A place that a person wrote as "LAT,LON" in degrees, such as "54.2,-1.9" or "54.2 N, 1.9 W".
 *
 * Numbers that only fit the other way round are refused with the question whether they were swapped.
 */
export function readCoordinates(written: string): { readonly place: Coordinates } | Refused {
  const refuse = (got: string, hint = ''): Refused => ({ refused: { expected: WORDS, got, hint } });
  const found = PAIR.exec(written.trim());
  if (found === null) {
    const comma = /^\s*-?\d+,\d+\s*[,;]/.test(written);
    return refuse(`"${written}"`, comma ? 'decimals have a point, such as 54.2' : '');
  }
  const [, first, ns = '', second, ew = ''] = found;
  if (/[EW]/i.test(ns) || /[NS]/i.test(ew)) {
    return refuse(`"${written}"`, 'the latitude, north or south, comes first');
  }
  const latitude = signed(first!, ns, 'S');
  const longitude = signed(second!, ew, 'W');
  if (Math.abs(latitude) <= 90 && Math.abs(longitude) <= 180)
    return { place: { latitude, longitude } };
  const swapped = Math.abs(latitude) <= 180 && Math.abs(longitude) <= 90;
  return refuse(
    `"${written}"`,
    swapped ? `are they swapped? did you mean ${longitude},${latitude}?` : '',
  );
}

/** "54.20° N, 1.90° W": a place in words that show which number is which. */
export function coordinatesText({ latitude, longitude }: Coordinates): string {
  const part = (degrees: number, positive: string, negative: string) =>
    `${Math.abs(degrees).toFixed(2)}° ${degrees < 0 ? negative : positive}`;
  return `${part(latitude, 'N', 'S')}, ${part(longitude, 'E', 'W')}`;
}

/** "1.7° further south". @param degrees  north */
export const furtherWords = (degrees: number): string =>
  `${Math.abs(degrees).toFixed(1)}° further ${degrees < 0 ? 'south' : 'north'}`;

/** How far one meridian lies east of another, the shorter way round: from -180 up to 180. [deg] */
export const degreesEast = (longitude: number, of: number): number =>
  ((((longitude - of + 180) % 360) + 360) % 360) - 180;

function signed(number: string, hemisphere: string, negative: string): number {
  const degrees = Number(number);
  return hemisphere.toUpperCase() === negative ? -degrees : degrees;
}

const WORDS = 'latitude and longitude in degrees, such as 54.2,-1.9 (north and east positive)';
const PAIR =
  /^([-+]?\d+(?:\.\d*)?)\s*°?\s*([NSEW]?)\s*[,;\s]\s*([-+]?\d+(?:\.\d*)?)\s*°?\s*([NSEW]?)$/i;
