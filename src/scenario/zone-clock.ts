import { Temporal } from 'temporal-polyfill';
import type { LocalClock } from '../units/local-clock.ts';

/**
 * The wall clock of a time zone from 1970 to 2050, null for a name that no zone has.
 *
 * Beyond these years the first and last offset go on. Built once a zone and kept.
 */
export function zoneClock(name: string): LocalClock | null {
  const known = kept.get(name);
  if (known !== undefined) return known;
  const built = build(name);
  if (built !== null) kept.set(name, built);
  return built;
}

/** The clock of a place whose zone nobody gave: whole hours by its longitude, no daylight saving. */
export function longitudeClock(longitude: number): LocalClock {
  return { from: [0], offset: [Math.round(longitude / 15) * 3600] };
}

/** Names of zones, for finding the one that was meant. */
export function zoneNames(): readonly string[] {
  return Intl.supportedValuesOf('timeZone');
}

function build(name: string): LocalClock | null {
  let at: Temporal.ZonedDateTime | null;
  try {
    at = Temporal.Instant.fromEpochMilliseconds(0).toZonedDateTimeISO(name);
  } catch {
    return null;
  }
  const from: number[] = [];
  const offset: number[] = [];
  while (at !== null && at.year <= LAST_YEAR) {
    from.push(at.epochMilliseconds / 1000);
    offset.push(at.offsetNanoseconds / 1e9);
    at = at.getTimeZoneTransition('next');
  }
  return { from, offset };
}

const LAST_YEAR = 2050;
const kept = new Map<string, LocalClock>();
