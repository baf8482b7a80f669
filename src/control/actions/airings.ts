import { evenDraw, hashFrom } from '../../units/seeded-draw.ts';
import { SECONDS_PER_HOUR } from '../../units/time-units.ts';
import type { Automation } from '../automation.ts';
import { type ControlContext, OUTDOOR } from '../control-context.ts';
import type { AiringReport } from '../control-report.ts';
import { STREAM, stemsByName } from '../random-streams.ts';
import { createAiringTriggers } from '../schedules/airing-triggers.ts';
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

/**
 * An occasion is answered once, by whoever is home and awake. One that passes (an activity's end,
 * getting up) is gone when nobody is; readings that ask go on asking until somebody answers, and
 * ask again an hour after an answer. Between answer and window, a delay that counts to the
 * nearest step, the person may have left: then nothing happens.
 */
export function createAirings(
  { airings: habits, seed }: Automation,
  { airings: asks, shutting }: ConditionIndex,
  met: Uint8Array,
  windows: Windows,
  context: ControlContext,
): Airings {
  const { moment, presence, home } = context;
  const count = habits.length;
  const triggers = createAiringTriggers(habits, asks, met, context);
  const { up } = triggers;
  const passing = Uint8Array.from(habits, ({ after }) => (after.by === 'readings' ? 0 : 1));
  const names = habits.map(({ name }) => name);
  const stream = stemsByName(seed, STREAM.airings, names);
  const delay = Float64Array.from(habits, (habit) => habit.delay);
  const probability = Float64Array.from(habits, (habit) => habit.probability);
  const waiting = new Uint8Array(count);
  // When readings may ask again, and when a window is to be opened. [s UTC]
  const askAgain = new Float64Array(count).fill(Number.NEGATIVE_INFINITY);
  const due = new Float64Array(count).fill(Number.POSITIVE_INFINITY);
  const occasions = new Int32Array(count);
  const opened = new Int32Array(count);

  const notice = (j: number): void => {
    if (up[j] === 0) {
      waiting[j] = 0;
      askAgain[j] = Number.NEGATIVE_INFINITY;
      return;
    }
    const mayAsk =
      waiting[j] === 0 && moment.utc >= askAgain[j]! && due[j] === Number.POSITIVE_INFINITY;
    if (passing[j] === 0 && !(mayAsk && !windows.holds(j))) return;
    waiting[j] = 1;
    occasions[j]!++;
  };

  const answer = (j: number): void => {
    const { utc, count: now } = moment;
    waiting[j] = 0;
    askAgain[j] = utc + SECONDS_PER_HOUR;
    if (evenDraw(hashFrom(stream[j]!, now)) >= probability[j]!) return;
    due[j] = Math.min(due[j]!, utc + delay[j]!);
  };

  /** @returns whether any of the habit's windows was opened; each room is judged by its own air */
  const openUp = (j: number): boolean => {
    const { outdoor, absoluteHumidity } = moment.observed;
    const { openings, openShare, lasts, drierBy, notBelow } = habits[j]!;
    if (outdoor[OUTDOOR.temperature]! < notBelow) return false;
    let any = false;
    for (let k = 0; k < openings.length; k++) {
      const o = openings[k]!;
      const drier = absoluteHumidity[home.openings[o]!.room]! - outdoor[OUTDOOR.absoluteHumidity]!;
      if (drierBy !== null && !(drier >= drierBy)) continue;
      windows.hold(o, openShare, moment.utc + lasts, j);
      any = true;
    }
    return any;
  };

  const step = (): void => {
    if (count === 0) return;
    triggers.step();
    for (let j = 0; j < count; j++) {
      const { from, to } = shutting[j]!;
      if (to > from && allMet(met, shutting[j]!)) windows.letGo(j);
      notice(j);
      if (waiting[j] === 1 && presence.awakeHome) answer(j);
      if (moment.middle < due[j]!) continue;
      due[j] = Number.POSITIVE_INFINITY;
      if (presence.awakeHome && openUp(j)) opened[j]!++;
    }
  };

  return {
    beginDay: triggers.beginDay,
    step,
    startCounting: () => {
      occasions.fill(0);
      opened.fill(0);
    },
    report: () =>
      habits.map(({ name }, j) => ({ name, occasions: occasions[j]!, opened: opened[j]! })),
  };
}
