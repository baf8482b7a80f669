import { type Coordinates, furtherWords, readCoordinates } from '../../units/coordinates.ts';
import { nearestName } from '../../units/nearest-name.ts';
import { distance, nearestPlace, placeNamed, placeNames } from './known-places.ts';
import { type Answers, said } from './question.ts';
import type { StartContext, WeatherAtHand } from './start-context.ts';

/** The place that was answered, by name or coordinates. */
export function placeOf(answers: Answers): Coordinates {
  const read = placeIn(said(answers, 'place'));
  if (read === null) throw new RangeError(`no place: "${said(answers, 'place')}"`);
  return read;
}

/** Why a line is no place, in words; null where it is one. */
export function placeTrouble(line: string): string | null {
  if (placeIn(line) !== null) return null;
  const read = readCoordinates(line);
  if (/\d/.test(line) && 'refused' in read) {
    return `${read.refused.expected}${read.refused.hint === '' ? '' : ` (${read.refused.hint})`}`;
  }
  const near = nearestName(line, placeNames());
  const hint = near === null ? 'that town is not known here' : `did you mean ${near}?`;
  return `latitude and longitude in degrees, such as 54.2,-1.9, or a large town (${hint})`;
}

/** The likely time zone of a place: that of the nearest known town. */
export const zoneOf = (answers: Answers): string => nearestPlace(placeOf(answers)).timezone;

/**
 * Weather files at hand, the nearest in climate first.
 *
 * A rough order without any weather of the place itself: winters and sun follow the latitude, so a
 * degree of it counts as three of distance, and the other hemisphere comes last.
 */
export function nearestInClimate(
  place: Coordinates,
  weather: readonly WeatherAtHand[],
): readonly WeatherAtHand[] {
  const far = (other: Coordinates) =>
    distance(place, other) +
    2 * DEGREE * Math.abs(place.latitude - other.latitude) +
    (place.latitude * other.latitude < 0 ? HALF_WAY_ROUND : 0);
  return weather.toSorted((a, b) => far(a.place) - far(b.place));
}

/** How far a weather file's place is, in words for a list. */
export function farness(place: Coordinates, { place: other }: WeatherAtHand): string {
  const km = Math.round(distance(place, other) / 10) * 10;
  return km === 0
    ? 'of this place'
    : `${km} km away, ${furtherWords(other.latitude - place.latitude)}`;
}

/** The place of the first file at hand, for who has nothing to say. */
export function usualPlace({ weather: [first] }: StartContext): string {
  return first === undefined ? 'London' : `${first.place.latitude},${first.place.longitude}`;
}

function placeIn(line: string): Coordinates | null {
  const named = placeNamed(line);
  if (named !== null) return { latitude: named.latitude, longitude: named.longitude };
  const read = readCoordinates(line);
  return 'place' in read ? read.place : null;
}

const DEGREE = 111; // km of a degree of latitude
const HALF_WAY_ROUND = 20_000; // km
