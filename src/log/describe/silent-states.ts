import { isoMinute } from '../../units/iso-time.ts';
import { SECONDS_PER_DAY } from '../../units/time-units.ts';
import type { LoggedSeries } from '../log.ts';
import { LONGEST_STATE, longestGap } from '../longest-gap.ts';
import { factsOf } from '../quantities.ts';
import type { LogWarning } from './log-warning.ts';

/**
 * The longest spell in which a contact, a motion sensor or a plug that reports changes told nothing, where it may
 * have fallen silent: longer than a state counts, or for days as open, occupied or on.
 *
 * @param what  the series as the beginning of a sentence
 */
export function silentStates(series: LoggedSeries, what: string): LogWarning[] {
  if (series.reading !== 'state' || series.quantity === 'valve opening') return [];
  const most = longestGap(series);
  const off = factsOf(series.quantity)?.unit === 'W' ? STANDBY : 0;
  const spells = spellsOf(series).filter(
    ({ lasts, value }) => lasts > (value > off ? LONGEST_ON : LONGEST_STATE),
  );
  if (spells.length === 0) return [];
  const { from, lasts, value } = spells.reduce((a, b) => (b.lasts > a.lasts ? b : a));
  const state = stateWords(series, value);
  const counts =
    lasts > most
      ? `what it told last, ${state}, counts for ${days(most)} at most, so all of that is unknown`
      : `it counts as ${state} all that time`;
  const text = `${what} told nothing for ${days(lasts)} from ${isoMinute(from)}: ${counts}. Was it so, or was the sensor silent?`;
  return [{ id: 'silent', text }];
}

/** Each known value of a series, from when and how long it holds. [s] */
const spellsOf = ({ times, values, holdsUntil }: LoggedSeries) =>
  [...values]
    .map((value, k) => ({
      ...{ from: times[k]!, value },
      lasts: (times[k + 1] ?? holdsUntil ?? times[k]!) - times[k]!,
    }))
    .filter(({ value }) => !Number.isNaN(value));

function stateWords({ quantity }: LoggedSeries, value: number): string {
  if (quantity === 'window') return value > 0 ? 'open' : 'shut';
  if (quantity === 'presence') return value > 0 ? 'somebody there' : 'nobody there';
  return `${Math.round(value)} ${factsOf(quantity)?.unit ?? ''}`.trimEnd();
}

const days = (seconds: number): string =>
  `${Math.round((10 * seconds) / SECONDS_PER_DAY) / 10} days`;

/** Few windows stand open, few rooms are occupied and few heaters are on for longer without a change. [s] */
const LONGEST_ON = 3 * SECONDS_PER_DAY;
/** What a device draws that only waits. [W] */
const STANDBY = 10;
