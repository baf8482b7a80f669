import { drawFrom } from '../../units/seeded-draw.ts';
import type { AiringHabit, Automation } from '../automation.ts';
import { type ControlContext, OUTDOOR } from '../control-context.ts';
import type { AiringReport } from '../control-report.ts';
import { STREAM } from '../random-streams.ts';
import { createAiringTrigger } from '../schedules/airing-triggers.ts';
import type { ConditionIndex } from '../sensors/condition-index.ts';
import { allMet } from '../sensors/conditions.ts';
import type { Windows } from './windows.ts';

/** People who air the home by habit. */
export interface Airings {
  readonly beginDay: (start: number, steps: number) => void;
  readonly step: () => void;
  readonly startCounting: () => void;
  readonly report: () => AiringReport[];
}

export function createAirings(
  { airings, seed }: Automation,
  { airings: asks, shutting }: ConditionIndex,
  met: Uint8Array,
  windows: Windows,
  context: ControlContext,
): Airings {
  const habits = airings.map((habit, j) =>
    createHabit(habit, j, seed, {
      asks: asks[j]!,
      shutting: shutting[j]!,
      met,
      windows,
      context,
    }),
  );
  return {
    beginDay: (start, steps) => {
      for (const habit of habits) habit.trigger.beginDay(start, steps);
    },
    step: () => {
      for (let j = 0; j < habits.length; j++) habits[j]!.step();
    },
    startCounting: () => {
      for (const { tally } of habits) {
        tally.occasions = 0;
        tally.opened = 0;
      }
    },
    report: () => habits.map(({ tally }, j) => ({ name: airings[j]!.name, ...tally })),
  };
}

/**
 * An occasion is answered once, by whoever is home and awake. One that passes (an activity's end,
 * getting up) is gone when nobody is; readings that ask go on asking until somebody answers, and
 * ask again an hour after an answer. Between answer and window the person may have left: then
 * nothing happens.
 */
function createHabit(habit: AiringHabit, j: number, seed: number, parts: Parts) {
  const { asks, shutting, met, windows, context } = parts;
  const { moment, presence } = context;
  const trigger = createAiringTrigger(habit, asks, met, context);
  const tally = { occasions: 0, opened: 0 };
  const passing = habit.after.by !== 'readings';
  let waiting = false;
  let askAgain = Number.NEGATIVE_INFINITY;
  let due = Number.POSITIVE_INFINITY;

  const notice = (): void => {
    const comesUp = trigger.comesUp();
    if (!comesUp) {
      waiting = false;
      askAgain = Number.NEGATIVE_INFINITY;
    } else if (
      passing ||
      (!waiting && moment.utc >= askAgain && due === Number.POSITIVE_INFINITY && !windows.holds(j))
    ) {
      waiting = true;
      tally.occasions++;
    }
  };

  const answer = (): void => {
    waiting = false;
    askAgain = moment.utc + HOUR;
    if (drawFrom(seed, STREAM.airings + j, moment.count) < habit.probability) {
      due = Math.min(due, moment.utc + habit.delay);
    }
  };

  const step = (): void => {
    if (shutting.length > 0 && allMet(met, shutting)) windows.letGo(j);
    notice();
    if (waiting && presence.awakeHome) answer();
    if (moment.utc < due) return;
    due = Number.POSITIVE_INFINITY;
    if (presence.awakeHome && openUp(habit, j, windows, context)) tally.opened++;
  };
  return { trigger, tally, step };
}

/** @returns whether any of the habit's windows was opened; each room is judged by its own air */
function openUp(habit: AiringHabit, j: number, windows: Windows, context: ControlContext): boolean {
  const { home, moment } = context;
  const { outdoor, absoluteHumidity } = moment.observed;
  if (outdoor[OUTDOOR.temperature]! < habit.notBelow) return false;
  let opened = false;
  for (let k = 0; k < habit.openings.length; k++) {
    const o = habit.openings[k]!;
    const drier = absoluteHumidity[home.openings[o]!.room]! - outdoor[OUTDOOR.absoluteHumidity]!;
    if (habit.drierBy !== null && !(drier >= habit.drierBy)) continue;
    windows.hold(o, habit.openShare, moment.utc + habit.lasts, j);
    opened = true;
  }
  return opened;
}

interface Parts {
  readonly asks: readonly number[];
  readonly shutting: readonly number[];
  readonly met: Uint8Array;
  readonly windows: Windows;
  readonly context: ControlContext;
}

const HOUR = 3600;
