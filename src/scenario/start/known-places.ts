import type { Coordinates } from '../../units/coordinates.ts';
import { cosineOf, sineOf } from '../../units/portable-math.ts';

/** A town that can be named instead of its coordinates. */
export interface KnownPlace extends Coordinates {
  readonly name: string;
  /** IANA name. */
  readonly timezone: string;
}

/** The town of a name, whatever its case; null for none. */
export const placeNamed = (name: string): KnownPlace | null =>
  PLACES.find((place) => place.name.toLowerCase() === name.trim().toLowerCase()) ?? null;

/** The known town nearest to a place, for its time zone. */
export const nearestPlace = (place: Coordinates): KnownPlace =>
  PLACES.reduce((a, b) => (distance(b, place) < distance(a, place) ? b : a));

/** Great-circle distance by the haversine formula on a sphere of 6371 km. [km] */
export function distance(a: Coordinates, b: Coordinates): number {
  const rad = Math.PI / 180;
  const half = (x: number) => sineOf((x * rad) / 2) ** 2;
  const across = cosineOf(a.latitude * rad) * cosineOf(b.latitude * rad);
  const h = half(b.latitude - a.latitude) + across * half(b.longitude - a.longitude);
  return 2 * 6371 * Math.asin(Math.min(1, Math.sqrt(h)));
}

/** Towns that a questionnaire knows by name. */
export const placeNames = (): string[] => PLACES.map(({ name }) => name);

/** To a tenth of a degree, some 10 km; from memory. */
const PLACES: readonly KnownPlace[] = (
  [
    ['London', 51.5, -0.1, 'Europe/London'],
    ['Birmingham', 52.5, -1.9, 'Europe/London'],
    ['Manchester', 53.5, -2.2, 'Europe/London'],
    ['Newcastle', 55.0, -1.6, 'Europe/London'],
    ['Cardiff', 51.5, -3.2, 'Europe/London'],
    ['Glasgow', 55.9, -4.3, 'Europe/London'],
    ['Edinburgh', 55.9, -3.2, 'Europe/London'],
    ['Belfast', 54.6, -5.9, 'Europe/London'],
    ['Dublin', 53.3, -6.3, 'Europe/Dublin'],
    ['Paris', 48.9, 2.4, 'Europe/Paris'],
    ['Lyon', 45.8, 4.8, 'Europe/Paris'],
    ['Brussels', 50.8, 4.4, 'Europe/Brussels'],
    ['Amsterdam', 52.4, 4.9, 'Europe/Amsterdam'],
    ['Hamburg', 53.6, 10.0, 'Europe/Berlin'],
    ['Berlin', 52.5, 13.4, 'Europe/Berlin'],
    ['Cologne', 50.9, 7.0, 'Europe/Berlin'],
    ['Munich', 48.1, 11.6, 'Europe/Berlin'],
    ['Zurich', 47.4, 8.5, 'Europe/Zurich'],
    ['Vienna', 48.2, 16.4, 'Europe/Vienna'],
    ['Prague', 50.1, 14.4, 'Europe/Prague'],
    ['Warsaw', 52.2, 21.0, 'Europe/Warsaw'],
    ['Copenhagen', 55.7, 12.6, 'Europe/Copenhagen'],
    ['Oslo', 59.9, 10.8, 'Europe/Oslo'],
    ['Stockholm', 59.3, 18.1, 'Europe/Stockholm'],
    ['Helsinki', 60.2, 24.9, 'Europe/Helsinki'],
    ['Milan', 45.5, 9.2, 'Europe/Rome'],
    ['Rome', 41.9, 12.5, 'Europe/Rome'],
    ['Madrid', 40.4, -3.7, 'Europe/Madrid'],
    ['Naples', 40.9, 14.3, 'Europe/Rome'],
    ['Barcelona', 41.4, 2.2, 'Europe/Madrid'],
    ['Valencia', 39.5, -0.4, 'Europe/Madrid'],
    ['Seville', 37.4, -6.0, 'Europe/Madrid'],
    ['Lisbon', 38.7, -9.1, 'Europe/Lisbon'],
    ['Porto', 41.2, -8.6, 'Europe/Lisbon'],
    ['Budapest', 47.5, 19.0, 'Europe/Budapest'],
    ['Bucharest', 44.4, 26.1, 'Europe/Bucharest'],
    ['Athens', 38.0, 23.7, 'Europe/Athens'],
    ['Istanbul', 41.0, 29.0, 'Europe/Istanbul'],
    ['New York', 40.7, -74.0, 'America/New_York'],
    ['Boston', 42.4, -71.1, 'America/New_York'],
    ['Toronto', 43.7, -79.4, 'America/Toronto'],
    ['Montreal', 45.5, -73.6, 'America/Toronto'],
    ['Atlanta', 33.7, -84.4, 'America/New_York'],
    ['Miami', 25.8, -80.2, 'America/New_York'],
    ['Chicago', 41.9, -87.6, 'America/Chicago'],
    ['Dallas', 32.8, -96.8, 'America/Chicago'],
    ['Houston', 29.8, -95.4, 'America/Chicago'],
    ['Winnipeg', 49.9, -97.1, 'America/Winnipeg'],
    ['Phoenix', 33.4, -112.1, 'America/Phoenix'],
    ['Calgary', 51.0, -114.1, 'America/Edmonton'],
    ['Vancouver', 49.3, -123.1, 'America/Vancouver'],
    ['Los Angeles', 34.1, -118.2, 'America/Los_Angeles'],
    ['Denver', 39.7, -105.0, 'America/Denver'],
    ['Seattle', 47.6, -122.3, 'America/Los_Angeles'],
    ['San Francisco', 37.8, -122.4, 'America/Los_Angeles'],
    ['Auckland', -36.8, 174.8, 'Pacific/Auckland'],
    ['Wellington', -41.3, 174.8, 'Pacific/Auckland'],
    ['Christchurch', -43.5, 172.6, 'Pacific/Auckland'],
    ['Melbourne', -37.8, 145.0, 'Australia/Melbourne'],
    ['Sydney', -33.9, 151.2, 'Australia/Sydney'],
    ['Brisbane', -27.5, 153.0, 'Australia/Brisbane'],
    ['Adelaide', -34.9, 138.6, 'Australia/Adelaide'],
    ['Perth', -32.0, 115.9, 'Australia/Perth'],
    ['Cape Town', -33.9, 18.4, 'Africa/Johannesburg'],
    ['Johannesburg', -26.2, 28.0, 'Africa/Johannesburg'],
    ['Santiago', -33.4, -70.7, 'America/Santiago'],
    ['Buenos Aires', -34.6, -58.4, 'America/Argentina/Buenos_Aires'],
    ['Singapore', 1.3, 103.8, 'Asia/Singapore'],
    ['Hong Kong', 22.3, 114.2, 'Asia/Hong_Kong'],
    ['Shanghai', 31.2, 121.5, 'Asia/Shanghai'],
    ['Seoul', 37.6, 127.0, 'Asia/Seoul'],
    ['Delhi', 28.6, 77.2, 'Asia/Kolkata'],
    ['Mumbai', 19.1, 72.9, 'Asia/Kolkata'],
    ['Tokyo', 35.7, 139.7, 'Asia/Tokyo'],
  ] as const
).map(([name, latitude, longitude, timezone]) => ({ name, latitude, longitude, timezone }));
