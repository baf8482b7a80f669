import type { AgainstLog, HoursBesideLog } from '../../studies/against/against-log.ts';
import type { PlanRequest } from '../../studies/run-plan.ts';
import { localDay, toLocal } from '../../units/local-clock.ts';
import { requireName } from '../load/require-name.ts';
import { type AskedDays, askedDays, daysOfPeriod } from './plot-days.ts';

/**
 * One room of a run beside its log, over the days named or all of them, as a picture of plain characters.
 *
 * @throws UsageError for a room that the plan does not have and days that log and run do not share
 */
export async function plotAgainst(
  { plan }: PlanRequest,
  { period, scenario }: AgainstLog,
  hours: HoursBesideLog,
  room: string,
  asked: AskedDays,
  width: number,
): Promise<string> {
  const { besideLogPicture } = await import('../../report/tables/beside-log-picture.ts');
  const { clock } = plan.household;
  requireName(room, hours.rooms, 'room');
  const days = askedDays(asked, daysOfPeriod({ start: hours.start, hours: period.hours }, clock));
  const dayOf = (h: number): number => localDay(toLocal(clock, hours.start + h * 3600));
  const inside = Array.from({ length: period.hours }, (_, h) => h).filter(
    (h) => days === null || (dayOf(h) >= days.first && dayOf(h) <= days.last),
  );
  return besideLogPicture(
    {
      ...{ scenario, plan: plan.plan, room, clock, hours },
      ...{ from: inside[0]!, to: inside.at(-1)! + 1 },
    },
    width,
  );
}
