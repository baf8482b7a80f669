import type { LocalClock } from '../../units/local-clock.ts';
import { nearestName } from '../../units/nearest-name.ts';
import { UsageError } from '../usage-error.ts';

/** The clock that `--zone` names: a zone of the world, UTC, or a distance from it such as +01:00. */
export async function logClock(zone: string): Promise<LocalClock> {
  const { logClockOf } = await import('../../scenario/checks/log.ts');
  const clock = logClockOf(zone);
  if (clock !== null) return clock;
  const { zoneNames } = await import('../../scenario/zone-clock.ts');
  const near = nearestName(zone, zoneNames());
  const hint = near === null ? '' : ` (did you mean "${near}"?)`;
  throw new UsageError(`error: no time zone is called '${zone}'${hint}`);
}
