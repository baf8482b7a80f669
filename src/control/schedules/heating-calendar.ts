import { localDay, toLocal, toUtc } from '../../units/local-clock.ts';
import { monthAndDay } from '../../units/month-and-day.ts';
import { SECONDS_PER_DAY } from '../../units/time-units.ts';
import type { Automation, HolidaySetback } from '../automation.ts';
import type { Household } from '../household.ts';
import type { Observation } from '../observations.ts';
import { allOnHoliday, withinDates } from './on-holiday.ts';

/** What the local day says of heating. */
export interface HeatingCalendar {
  /** @param start  instant at which the day's first step begins [s UTC] */
  readonly beginDay: (start: number) => void;
  /**
   * Once a step, in order. Allocates nothing but at local midnight.
   *
   * @param programme  what each room should have by the clock [°C]
   * @param awake      people awake in each room, a fraction for part of the step [-]
   */
  readonly step: (
    s: number,
    observed: Pick<Observation, 'outdoor' | 'felt'>,
    programme: Float64Array,
    awake: Float64Array,
  ) => void;
  /** [0] 1 on days of the heating season, [1] 1 on holidays with a setback. */
  readonly today: Uint8Array;
}

/**
 * Decides at each local midnight whether the day belongs to the heating season, by its month and by
 * the mean outdoor temperature of the whole days before it, and whether it is a holiday. On another
 * day of the months people who have been cold for long enough switch the heating on, for that day and
 * as many more as the mean is taken over.
 *
 * Until a day has passed, the outdoor temperature of the moment stands for the mean.
 *
 * @param dt  control step [s]
 */
export function createHeatingCalendar(
  { heatingSeason: season, holidaySetback }: Automation,
  household: Household,
  dt: number,
): HeatingCalendar {
  const { clock } = household;
  const today = Uint8Array.of(1, 0);
  if (season === undefined && holidaySetback === undefined) {
    return { beginDay: () => undefined, step: () => undefined, today };
  }
  const means = new Float64Array(season?.days ?? 1).fill(Number.NaN);
  const held = Float64Array.of(0, Number.NEGATIVE_INFINITY, 0, 0, 0, 0, Number.NEGATIVE_INFINITY);
  const coldUnder = season?.ifCold?.under ?? Number.POSITIVE_INFINITY;
  const coldFor = season?.ifCold?.after ?? Number.POSITIVE_INFINITY;
  let days = 0;

  const meanBefore = (now: number): number => {
    let sum = 0;
    let count = 0;
    for (const mean of means) {
      if (Number.isNaN(mean)) continue;
      sum += mean;
      count++;
    }
    return count === 0 ? now : sum / count;
  };

  const beginLocalDay = (utc: number, outdoor: number): void => {
    if (held[STEPS]! > 0) means[days++ % means.length] = held[SUM]! / held[STEPS]!;
    held[SUM] = 0;
    held[STEPS] = 0;
    const date = localDay(toLocal(clock, utc));
    held[MIDNIGHT] = toUtc(clock, (date + 1) * SECONDS_PER_DAY);
    if (season !== undefined) {
      const inMonth = (season.months & (1 << (monthAndDay(date).month - 1))) !== 0;
      const byHand = date - held[SWITCHED_ON]! <= season.days;
      const isCold = meanBefore(outdoor) < season.outdoorBelow;
      today[IN_SEASON] = inMonth && (isCold || byHand) ? 1 : 0;
      held[COLD] = inMonth ? 0 : Number.NEGATIVE_INFINITY;
      held[DATE] = date;
    }
    if (holidaySetback !== undefined) {
      today[ON_HOLIDAY] = isSetBack(holidaySetback, household, date) ? 1 : 0;
    }
  };

  /** Add the part of the step in which somebody is cold; after enough of it in a day the heating is on. */
  const countCold = (felt: Float64Array, programme: Float64Array, awake: Float64Array): void => {
    let share = 0;
    for (let i = 0; i < felt.length; i++) {
      if (programme[i]! - felt[i]! > coldUnder && awake[i]! > share) share = awake[i]!;
    }
    if (share === 0) return;
    held[COLD]! += Math.min(1, share) * dt;
    if (held[COLD]! < coldFor) return;
    held[SWITCHED_ON] = held[DATE]!;
    today[IN_SEASON] = 1;
  };

  return {
    beginDay: (start) => {
      held[BEGIN] = start;
    },
    step: (s, { outdoor, felt }, programme, awake) => {
      const utc = held[BEGIN]! + s * dt;
      if (utc >= held[MIDNIGHT]!) beginLocalDay(utc, outdoor[0]!);
      if (today[IN_SEASON] === 0) countCold(felt, programme, awake);
      held[SUM]! += outdoor[0]!;
      held[STEPS]! += 1;
    },
    today,
  };
}

/** Whether a local day is one of the holidays that a setback holds on. */
export function isSetBack({ dates }: HolidaySetback, household: Household, date: number): boolean {
  return dates === null ? allOnHoliday(household, date) : withinDates(dates, date);
}

/** Places in `HeatingCalendar.today`. */
export const IN_SEASON = 0;
export const ON_HOLIDAY = 1;

const BEGIN = 0; // start of the day [s UTC]
const MIDNIGHT = 1; // next local midnight [s UTC]
const SUM = 2; // outdoor temperatures of the local day so far [°C]
const STEPS = 3;
const COLD = 4; // how long somebody has been cold today, without heating [s]
const DATE = 5; // number of the local day
const SWITCHED_ON = 6; // number of the local day on which people last switched the heating on
