import type { Observer } from '../../engine/record/trace.ts';
import type { Log } from '../../log/log.ts';
import { isoTime } from '../../units/iso-time.ts';
import { InputProblems } from '../../units/problem.ts';
import type { Weather } from '../../weather/weather.ts';
import { type PlanOutcome, type PlanRequest, runPlan } from '../run-plan.ts';
import { type HourlyRooms, loggedHours } from './hourly-rooms.ts';
import { measuresOfHours } from './measures-of-hours.ts';
import { type Misfit, misfitOf } from './misfit.ts';
import { simulatedHours } from './simulated-hours.ts';

/** A run beside what was logged; keys as JSON prints them. */
export interface AgainstLog {
  readonly scenario: string;
  readonly plan: string;
  readonly period: { readonly from: string; readonly to: string; readonly hours: number };
  /** The weather is a typical year, which was never that of the log. */
  readonly typical_weather: boolean;
  /** By room and quantity, rooms without readings left out. */
  readonly misfits: readonly RoomMisfit[];
  /** Figures of the hours that were logged, of the log and of the run, by the same rules. */
  readonly rooms: ReturnType<typeof measuresOfHours>;
}

/** Hours of log and run, for pictures. */
export interface HoursBesideLog {
  /** Instant at which the first begins. [s UTC] */
  readonly start: number;
  /** Names of the rooms. */
  readonly rooms: readonly string[];
  readonly logged: HourlyRooms;
  readonly simulated: HourlyRooms;
}

export interface RoomMisfit extends Misfit {
  readonly room: string;
  readonly quantity: string;
  readonly unit: string;
}

/**
 * Simulate the time that both weather and log cover, and set the run beside the log.
 *
 * @throws InputProblems where they do not overlap, or no room has readings
 */
export function againstLog(
  request: PlanRequest,
  log: Log,
  names: { readonly log: string; readonly weather: string },
  watchers: readonly Observer[],
): {
  readonly against: AgainstLog;
  readonly hours: HoursBesideLog;
  readonly outcome: PlanOutcome;
} {
  const period = commonPeriod(request, log, names);
  const { plan } = request;
  const simulated = simulatedHours(plan.home, period.hours);
  const outcome = runPlan({ ...request, period }, [simulated.observe, ...watchers]);
  const inside = simulated.result();
  const logged = loggedHours(log, plan.home, period, inside);
  if (!logged.rooms.some(({ columns }) => columns.size > 0))
    throw nothingLogged(log, plan.home, names);
  const misfits = plan.home.rooms.flatMap((room, i) => roomMisfits(room.name, logged, inside, i));
  return {
    against: {
      scenario: plan.scenario,
      plan: plan.plan,
      typical_weather: request.weather.periodic,
      period: {
        from: isoTime(period.start),
        to: isoTime(period.start + period.hours * 3600),
        hours: period.hours,
      },
      misfits,
      rooms: measuresOfHours(plan, logged, inside, period.start),
    },
    hours: {
      start: period.start,
      rooms: plan.home.rooms.map(({ name }) => name),
      logged,
      simulated: inside,
    },
    outcome,
  };
}

function roomMisfits(
  room: string,
  logged: HourlyRooms,
  simulated: HourlyRooms,
  i: number,
): RoomMisfit[] {
  return [...logged.rooms[i]!.columns].flatMap(([quantity, { values, unit }]) => {
    const run = simulated.rooms[i]!.columns.get(quantity);
    const misfit = run === undefined ? null : misfitOf(values, run.values);
    return misfit === null ? [] : [{ room, quantity, unit, ...misfit }];
  });
}

/** Whole hours that log, weather and the scenario's period share. */
function commonPeriod(
  { weather, period }: PlanRequest,
  log: Log,
  names: { readonly log: string; readonly weather: string },
): PlanRequest['period'] {
  const start = Math.ceil(Math.max(log.start, period.start) / 3600) * 3600;
  const end = Math.floor(Math.min(log.end, period.start + period.hours * 3600) / 3600) * 3600;
  const hours = (end - start) / 3600;
  if (hours >= FEWEST) return { start, hours };
  if (weather.periodic) throw typical(weather, log, names.weather);
  const spans = `${isoTime(log.start)} to ${isoTime(log.end)}`;
  const end2 = period.start + period.hours * 3600;
  throw new InputProblems([
    {
      ...{ file: names.weather, line: 0, column: 0, where: 'period' },
      expected: `a day or more of the log's time, ${spans}`,
      got: `${isoTime(period.start)} to ${isoTime(end2)}`,
      hint: 'give the weather of those days with --weather, and see "period" of the scenario',
    },
  ]);
}

function typical(weather: Weather, log: Log, file: string): InputProblems {
  const spans = `${isoTime(log.start)} to ${isoTime(log.end)}`;
  return new InputProblems([
    {
      ...{ file, line: 0, column: 0, where: '' },
      expected: `the weather of the log's own days, ${spans}`,
      got: `a typical year${weather.title === '' ? '' : ` (${weather.title})`}`,
      hint: 'give the weather that was measured with --weather',
    },
  ]);
}

function nothingLogged(
  log: Log,
  { rooms }: PlanRequest['plan']['home'],
  names: { readonly log: string },
): InputProblems {
  const logged = [
    ...new Set(log.series.map(({ room, quantity }) => `${quantity} of ${room ?? 'no room'}`)),
  ];
  return new InputProblems([
    {
      ...{ file: names.log, line: 0, column: 0, where: 'rooms' },
      expected: `temperature, humidity or air of a room of the home (${rooms.map(({ name }) => name).join(', ')}) in those hours`,
      got: logged.slice(0, 6).join(', '),
      hint: 'say which column is of which room under "log: readings:" of the scenario',
    },
  ]);
}

const FEWEST = 24;
