import type { Observer } from '../../engine/record/trace.ts';
import type { PlanSeries } from '../../measures/series/plan-series.ts';
import type { PlanRequest } from '../../studies/run-plan.ts';
import { type LocalClock, localDay, toLocal } from '../../units/local-clock.ts';
import { HOURS_PER_WEEK, SECONDS_PER_HOUR } from '../../units/time-units.ts';
import { requireName } from '../load/require-name.ts';
import { both } from '../usage-error.ts';
import { type AskedDays, askedDays, daysOfPeriod, type LocalDays } from './plot-days.ts';

/** Watches a run and draws some days of one room. */
export interface RoomPlot {
  readonly observe: Observer;
  /** @param width  characters of a line */
  text(width: number): string;
}

/**
 * Before a run: get ready to draw a room over the days named, or over the coldest week.
 *
 * @throws UsageError for a room that the plan does not have and days that the period does not have
 */
export async function plotRoom(
  { plan, period }: PlanRequest,
  room: string,
  asked: AskedDays,
): Promise<RoomPlot> {
  const { createPlanSeries } = await import('../../measures/series/plan-series.ts');
  const { mildHours } = await import('../../measures/comfort/mild-hours.ts');
  const coldest = await import('../../measures/series/extreme-week.ts');
  const { roomPicture } = await import('../../report/tables/room-picture.ts');
  const { clock } = plan.household;
  const names = plan.home.rooms.map(({ name }) => name);
  const known = daysOfPeriod(period, clock);
  const [, days] = both(
    () => requireName(room, names, 'room'),
    () => askedDays(asked, known),
  );
  const series = createPlanSeries({ ...plan, period, clock });
  const index = names.indexOf(room);

  function text(width: number): string {
    const kept = series.result();
    const week = days === null ? weekFrom(coldest, kept, clock) : null;
    const [begin, end] = hoursOf(days ?? week ?? known, kept, clock);
    const own = kept.rooms[index]!;
    const { temperature, humidity } = plan.bands[index]!;
    return roomPicture(
      {
        ...{ scenario: plan.scenario, plan: plan.plan, room, clock },
        chosen: days !== null ? '' : week === null ? 'the whole period' : 'the coldest week',
        bands: { temperature, humidity },
        start: kept.start + begin * SECONDS_PER_HOUR,
        mild: mildHours(kept.outdoors.temperature, temperature.mild).subarray(begin, end),
        series: {
          operativeTemperature: own.operativeTemperature.subarray(begin, end),
          relativeHumidity: own.relativeHumidity.subarray(begin, end),
          coldSpotHumidity: own.coldSpotHumidity.subarray(begin, end),
          occupied: own.occupied.subarray(begin, end),
        },
      },
      width,
    );
  }

  return { observe: series.observe, text };
}

/** The seven coldest days; null where the series does not have seven whole ones. */
function weekFrom(
  { extremeWeek, beginsDay }: ExtremeWeek,
  { start, outdoors: { temperature } }: PlanSeries,
  clock: LocalClock,
): LocalDays | null {
  const hour = extremeWeek(temperature, start, clock, 'lowest');
  const begin = start + hour * SECONDS_PER_HOUR;
  if (!beginsDay(begin, clock) || hour + HOURS_PER_WEEK > temperature.length) return null;
  const first = localDay(toLocal(clock, begin));
  return { first, last: first + 6 };
}

/** Number of the first hour of some days, and of the first after them. */
function hoursOf(
  { first, last }: LocalDays,
  { start, outdoors }: PlanSeries,
  clock: LocalClock,
): [number, number] {
  const hours = [...outdoors.temperature.keys()].filter((h) => {
    const day = localDay(toLocal(clock, start + h * SECONDS_PER_HOUR));
    return day >= first && day <= last;
  });
  return [hours[0]!, hours.at(-1)! + 1];
}

type ExtremeWeek = typeof import('../../measures/series/extreme-week.ts');
