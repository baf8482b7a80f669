import type { LocalClock } from '../../units/local-clock.ts';
import { HOURS_PER_DAY } from '../../units/time-units.ts';
import { andList } from '../../units/word-list.ts';
import type { FittedStage } from '../fitted-stage.ts';
import type { Division } from '../readings/span.ts';
import type { Channel } from '../simulate/channel.ts';
import { meanOf } from '../statistics/misfit.ts';
import { hourOfDay } from './daily-habit.ts';

/**
 * Where heating, or cooling, begins or ends at other hours than the fitted home has it, by how fast rooms
 * warm and cool from hour to hour on an average day, in a sentence; none where both do so at the same hours.
 *
 * @param what  what the home has by the clock: "Heating", "Cooling" or both
 */
export function otherHours(
  what: string,
  stages: readonly FittedStage[],
  division: Division,
  clock: LocalClock,
): string[] {
  const rooms = new Map<string, string[]>();
  for (const { channels, fit } of stages) {
    for (const [c, channel] of channels.entries()) {
      const least = LEAST[String(channel.quantity)];
      if (least === undefined || channel.stretches !== undefined) continue;
      const { residuals } = fit.left[c]!.errors;
      const logged = changes(channel.observed, division, clock);
      const modelled = channel.observed.map((value, k) => value - residuals[k]!);
      const words = shiftWords(channel, logged, changes(modelled, division, clock), least);
      if (words !== '') rooms.set(words, [...(rooms.get(words) ?? []), channel.room]);
    }
  }
  if (rooms.size === 0) return [];
  const told = [...rooms].map(([words, names]) => `${andList(names)} (${words})`);
  return [
    `${what} seems to come on or go off, or windows to be opened, at other hours than the scenario says: ${told.join('; ')}. A fit does not look for hours: other values make up for them, above all steady heat, heat capacity and thermostat errors. Put the hours right and fit again, unless it is sensors that are slow.`,
  ];
}

function shiftWords(
  { quantity }: Channel,
  logged: Float64Array,
  fitted: Float64Array,
  least: number,
): string {
  const [up, down] = quantity === 'heating' ? ['more heat', 'less'] : ['warming', 'cooling'];
  const falls = (rises: Float64Array) => rises.map((x) => -x);
  const shifts = [
    [up, shiftOf(logged, fitted, least)],
    [down, shiftOf(falls(logged), falls(fitted), least)],
  ] as const;
  return shifts
    .flatMap(([how, shift]) =>
      shift === null ? [] : [`${how} from about ${shift.logged} h, as fitted ${shift.fitted} h`],
    )
    .join('; ');
}

/**
 * Hours by which a rise begins in both, where one was logged that the fitted home has not, and that has one
 * which was not logged, at most some hours apart. A rise behind a fall that is unlike the fitted home is a
 * window that was shut again.
 */
function shiftOf(
  logged: Float64Array,
  fitted: Float64Array,
  least: number,
): { logged: number; fitted: number } | null {
  const limit = Math.max(least, PART * Math.max(...logged));
  const beyond = (one: Float64Array, other: Float64Array): number[] =>
    [...one.keys()].filter((h) => one[h]! > limit && one[h]! - other[h]! > limit);
  const apart = (a: number, b: number) =>
    Math.min((a - b + HOURS_PER_DAY) % HOURS_PER_DAY, (b - a + HOURS_PER_DAY) % HOURS_PER_DAY);
  const missing = beyond(fitted, logged);
  const isRebound = (hour: number): boolean =>
    BEHIND.some((by) => {
      const before = (hour - by + HOURS_PER_DAY) % HOURS_PER_DAY;
      return logged[before]! < 0 && fitted[before]! - logged[before]! > limit;
    });
  for (const hour of beyond(logged, fitted)) {
    if (isRebound(hour)) continue;
    const instead = missing.find((other) => apart(hour, other) <= FURTHEST);
    // From the mean of this hour to that of the next.
    if (instead !== undefined)
      return { logged: (hour + 1) % HOURS_PER_DAY, fitted: (instead + 1) % HOURS_PER_DAY };
  }
  return null;
}

/** By how much each local hour is below the next one, on an average fitted day. [unit] */
function changes(
  values: Float64Array,
  { start, release, withheld }: Division,
  clock: LocalClock,
): Float64Array {
  const byHour = Array.from({ length: HOURS_PER_DAY }, (): number[] => []);
  for (let k = release; k < withheld - 1; k++) {
    const change = values[k + 1]! - values[k]!;
    if (!Number.isNaN(change)) byHour[hourOfDay(k, start, clock)]!.push(change);
  }
  return Float64Array.from(byHour, (each) =>
    each.length === 0 ? 0 : meanOf(Float64Array.from(each)),
  );
}

/** Hours between a rise that was logged and the one that the fitted home has instead. */
const FURTHEST = 6;
/** Hours within which a room that was aired is warm again. */
const BEHIND = [1, 2];
/** Least difference that counts, [K/h] and [W/h]: that, or a part of the sharpest change that was logged. */
const LEAST: Readonly<Record<string, number>> = { temperature: 0.3, heating: 100 };
const PART = 1 / 3;
