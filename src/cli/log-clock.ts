import type { LocalClock } from '../units/local-clock.ts';
import { nearestName } from '../units/nearest-name.ts';
import { UsageError } from './usage-error.ts';

/** The clock that `--zone` names: a zone of the world, UTC, or a distance from it such as +01:00. */
export async function logClock(zone: string): Promise<LocalClock> {
  if (/^(utc|gmt|z)$/i.test(zone)) return { from: [0], offset: [0] };
  const ahead = /^([+-])(\d\d):?(\d\d)?$/.exec(zone);
  if (ahead !== null) {
    const seconds = Number(ahead[2]) * 3600 + Number(ahead[3] ?? 0) * 60;
    return { from: [0], offset: [ahead[1] === '-' ? -seconds : seconds] };
  }
  const { zoneClock, zoneNames } = await import('../scenario/zone-clock.ts');
  const clock = zoneClock(zone);
  if (clock !== null) return clock;
  const near = nearestName(zone, zoneNames());
  const hint = near === null ? '' : ` (did you mean "${near}"?)`;
  throw new UsageError(`error: no time zone is called '${zone}'${hint}`);
}
