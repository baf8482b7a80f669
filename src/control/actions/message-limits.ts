import { localDay, toLocal, toUtc } from '../../units/local-clock.ts';
import { SECONDS_PER_DAY } from '../../units/time-units.ts';
import type { MessageLimits, Rule } from '../automation.ts';
import type { ControlContext } from '../control-context.ts';
import { fillArray } from '../fill-array.ts';
import { createScheduleValues } from '../schedules/week-schedule.ts';

/** Says when rules may tell people something. */
export interface MessageAllowance {
  /** @param start  instant at which the day's first step begins [s UTC] */
  readonly beginDay: (start: number, steps: number) => void;
  /** Once a step, before any rule fires. */
  readonly step: () => void;
  /** Whether it is no quiet hour for the rule, and its messages of the local day are not used up. */
  readonly mayTell: (rule: number) => boolean;
  /** Count a message. */
  readonly told: (rule: number) => void;
}

/** Rules that share a `series` count their messages together; a step that is half quiet or more is quiet. */
export function createMessageAllowance(
  rules: readonly Rule[],
  { moment, household, dt }: ControlContext,
): MessageAllowance {
  const { clock } = household;
  const limits = rules.map((rule): Partial<MessageLimits> => rule.limits ?? {});
  const limited = limits.some(({ quiet, mostPerDay }) => quiet ?? mostPerDay);
  const quiet = createScheduleValues(
    limits.map((limit) => limit.quiet ?? NEVER),
    clock,
    dt,
  );
  const most = Float64Array.from(limits, ({ mostPerDay = Number.POSITIVE_INFINITY }) => mostPerDay);
  const counter = Int32Array.from(rules, ({ series }, r) =>
    series === undefined ? r : rules.findIndex((other) => other.series?.number === series.number),
  );
  const today = new Float64Array(rules.length);
  const midnight = Float64Array.of(Number.NEGATIVE_INFINITY);

  const step = (): void => {
    if (!limited || moment.utc < midnight[0]!) return;
    const tomorrow = localDay(toLocal(clock, moment.utc)) + 1;
    midnight[0] = toUtc(clock, tomorrow * SECONDS_PER_DAY);
    fillArray(today, 0);
  };

  return {
    beginDay: (start, steps) => {
      if (limited) quiet.beginDay(start, steps);
    },
    step,
    mayTell: (r) =>
      !limited ||
      (quiet.values[moment.s * rules.length + r]! < HALF && today[counter[r]!]! < most[r]!),
    told: (r) => {
      today[counter[r]!]! += 1;
    },
  };
}

const NEVER = { base: 0, spells: [] };
const HALF = 0.5;
