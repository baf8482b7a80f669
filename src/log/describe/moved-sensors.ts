import { isoDay } from '../../units/iso-time.ts';
import { SECONDS_PER_DAY } from '../../units/time-units.ts';
import { type Log, roomsOf, seriesOf } from '../log.ts';
import { longestGap } from '../longest-gap.ts';
import { middleOf } from '../middle-of.ts';
import { meansOverSteps } from '../onto-steps.ts';
import type { LogWarning } from './log-warning.ts';
import { usualDistance } from './series-facts.ts';

/**
 * Steps that one room takes against the others and keeps, as after a sensor was moved: the median of
 * five days' differences before and after, against how much the difference varies day by day.
 */
export function movedSensors(log: Log): LogWarning[] {
  return (['temperature', 'relative humidity'] as const).flatMap((quantity) => {
    const rooms = roomsOf(log).filter((room) => seriesOf(log, quantity, room) !== undefined);
    if (rooms.length < 2) return [];
    const start = Math.ceil(log.start / SECONDS_PER_DAY) * SECONDS_PER_DAY;
    const steps = {
      start,
      step: SECONDS_PER_DAY,
      count: Math.max(0, Math.floor((log.end - start) / SECONDS_PER_DAY)),
    };
    const daily = rooms.map((room) => {
      const series = seriesOf(log, quantity, room)!;
      return meansOverSteps(series, steps, longestGap(series));
    });
    const moves = rooms.flatMap((room, i) => moveOf(differences(daily, i), room, quantity, start));
    // A single move shifts the others a little the other way: only the largest is told.
    return moves
      .sort((a, b) => b.size - a.size)
      .slice(0, 1)
      .map(({ warning }) => warning);
  });
}

/** Daily means of a room less the middle of the others. */
function differences(daily: readonly Float64Array[], room: number): Float64Array {
  return daily[room]!.map((value, day) => {
    const others = daily.flatMap((one, k) =>
      k === room || Number.isNaN(one[day]!) ? [] : [one[day]!],
    );
    return others.length === 0 ? Number.NaN : value - middleOf(Float64Array.from(others));
  });
}

function moveOf(
  difference: Float64Array,
  room: string,
  quantity: 'temperature' | 'relative humidity',
  start: number,
) {
  let [best, clearest, at] = [0, 0, -1];
  for (let day = SIDE; day + SIDE <= difference.length; day++) {
    const before = known(difference.subarray(day - SIDE, day));
    const after = known(difference.subarray(day, day + SIDE));
    if (before.length < FEWEST || after.length < FEWEST) continue;
    const step = middleOf(after) - middleOf(before);
    const varies = usualDistance(before) + usualDistance(after);
    if (Math.abs(step) < LEAST[quantity] || Math.abs(step) < CLEAR * varies) continue;
    // What comes with a cold week goes with it: a step counts where days further off keep it.
    const [long, later] = [difference.slice(0, day), difference.slice(day)].map(knownMiddle);
    if (!((later! - long!) / step > KEPT)) continue;
    // Medians are alike on days near the step; means tell the day itself.
    const clear = Math.abs(meanOf(after) - meanOf(before));
    if (clear > clearest) [best, clearest, at] = [step, clear, day];
  }
  if (at < 0) return [];
  const unit = quantity === 'temperature' ? 'K' : 'points';
  const when = isoDay(start + at * SECONDS_PER_DAY);
  const text = `The ${quantity} of ${room} stepped ${best > 0 ? 'up' : 'down'} by ${Math.abs(best).toFixed(1)} ${unit} against other rooms about ${when} and stayed: was its sensor moved?`;
  return [{ size: Math.abs(best) / LEAST[quantity], warning: { id: 'moved' as const, text } }];
}

const known = (values: Float64Array): Float64Array =>
  values.filter((value) => !Number.isNaN(value));
const knownMiddle = (values: Float64Array): number => middleOf(known(values));

const meanOf = (values: Float64Array): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

const SIDE = 5; // days
/** Days of a side that have to be known. */
const FEWEST = 3;
/** Of the usual distances of days from their middle, before and after together. */
const CLEAR = 2.5;
/** Share of a step that has to last. */
const KEPT = 0.6;
const LEAST = { temperature: 1.5, 'relative humidity': 8 };
