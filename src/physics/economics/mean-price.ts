import { nextJump, offsetAt, weekday } from '../../units/local-clock.ts';
import { MINUTES_PER_DAY, MINUTES_PER_WEEK, SECONDS_PER_DAY } from '../../units/time-units.ts';
import { sameDateShift } from './same-date.ts';
import type { Tariff } from './tariff.ts';

/**
 * Mean price over a short span of time that begins at an instant. [currency/kWh]
 *
 * The span may cross the edge of a block, midnight, or the edge of a half-hourly price: each part
 * counts by its length. It lies within one offset of the meter's clock, as every span does that is
 * at most an hour long and begins on a whole part of an hour.
 */
export type MeanPrice = (utc: number, seconds: number) => number;

/**
 * Prepares a tariff so that asking it allocates nothing. Of blocks that overlap, the later wins.
 * Without a tariff all is free.
 */
export function meanPriceOf(tariff: Tariff | undefined): MeanPrice {
  if (tariff === undefined) return () => 0;
  if (tariff.by === 'flat') return () => tariff.price;
  return tariff.by === 'blocks' ? blockPrice(tariff) : seriesPrice(tariff);
}

function blockPrice(tariff: Tariff & { by: 'blocks' }): MeanPrice {
  const byMinute = pricesOfWeek(tariff);
  const changes = nextChanges(byMinute);
  let from = 0; // the price held goes from here
  let until = 0; // to here [s UTC]
  let held = 0;
  return (utc, seconds) => {
    if (utc >= from && utc + seconds <= until) return held;
    const local = utc + offsetAt(tariff.clock, utc);
    const week = Math.floor(local / SECONDS_PER_WEEK) * SECONDS_PER_WEEK;
    const minute = Math.floor((local - week) / 60);
    from = utc;
    until = utc + Math.min(nextJump(tariff.clock, utc) - utc, week + 60 * changes[minute]! - local);
    held = byMinute[minute]!;
    return utc + seconds <= until ? held : meanOfSlots(byMinute, 60, local, seconds);
  };
}

/** Price of each minute of a week of the meter's clock; weeks are counted from 1970-01-01. */
function pricesOfWeek({ price: otherwise, blocks }: Tariff & { by: 'blocks' }): Float64Array {
  const byMinute = new Float64Array(MINUTES_PER_WEEK).fill(otherwise);
  for (const { from, to, days = EVERY_DAY, price } of blocks) {
    const end = to > from ? to : to + MINUTES_PER_DAY;
    for (let date = 0; date < 7; date++) {
      if ((days & (1 << weekday(date))) === 0) continue;
      for (let m = Math.round(from); m < Math.round(end); m++) {
        byMinute[(date * MINUTES_PER_DAY + m) % byMinute.length] = price;
      }
    }
  }
  return byMinute;
}

/** For each minute: the one at which its price ends, at most the end of the list. */
function nextChanges(byMinute: Float64Array): Float64Array {
  const ends = new Float64Array(byMinute.length);
  for (let m = byMinute.length - 1; m >= 0; m--) {
    const goesOn = m + 1 < byMinute.length && byMinute[m + 1] === byMinute[m];
    ends[m] = goesOn ? ends[m + 1]! : m + 1;
  }
  return ends;
}

/** A series of a year or more holds by date in other years; a shorter one repeats. */
function seriesPrice({ prices, start, step }: Tariff & { by: 'series' }): MeanPrice {
  if (prices.length === 0) throw new RangeError('meanPriceOf: a series of prices needs at least 1');
  const covered = prices.length * step;
  if (covered < YEAR) return (utc, seconds) => meanOfSlots(prices, step, utc - start, seconds);
  let day = Number.NaN; // the day held [s UTC]
  let shift = 0;
  return (utc, seconds) => {
    if (utc >= start && utc < start + covered)
      return meanOfSlots(prices, step, utc - start, seconds);
    const midnight = Math.floor(utc / SECONDS_PER_DAY) * SECONDS_PER_DAY;
    if (midnight !== day) {
      day = midnight;
      shift = sameDateShift(utc, start);
    }
    return meanOfSlots(prices, step, utc + shift - start, seconds);
  };
}

/** Mean over [from, from + seconds) of values that hold for `step` seconds each and repeat for ever. */
function meanOfSlots(values: Float64Array, step: number, from: number, seconds: number): number {
  const end = from + seconds;
  const n = values.length;
  let slot = Math.floor(from / step);
  if ((slot + 1) * step >= end) return values[((slot % n) + n) % n]!;
  let sum = 0;
  for (let t = from; t < end; slot++) {
    const until = Math.min(end, (slot + 1) * step);
    sum += values[((slot % n) + n) % n]! * (until - t);
    t = until;
  }
  return sum / seconds;
}

const SECONDS_PER_WEEK = 7 * SECONDS_PER_DAY;
const EVERY_DAY = 0b1111111;
const YEAR = 365 * SECONDS_PER_DAY;
