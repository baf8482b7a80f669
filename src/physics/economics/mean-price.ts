import { localDay, nextJump, offsetAt } from '../../units/local-clock.ts';
import { startsOn } from '../../units/starts-on.ts';
import { MINUTES_PER_DAY, SECONDS_PER_DAY } from '../../units/time-units.ts';
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
  const { clock } = tariff;
  const byMinute = new Float64Array(MINUTES_PER_DAY);
  let laidOut = Number.NaN; // the local day of these prices
  let from = 0; // the price held goes from here
  let until = 0; // to here [s UTC]
  let held = 0;
  const layOut = (date: number): void => {
    if (date !== laidOut) fillDay(byMinute, tariff, date);
    laidOut = date;
  };
  const meanOf = (local: number, seconds: number): number => {
    const date = localDay(local);
    const after = local + seconds - (date + 1) * SECONDS_PER_DAY;
    if (after > 0) {
      const [before, then] = [seconds - after, (date + 1) * SECONDS_PER_DAY];
      return (meanOf(local, before) * before + meanOf(then, after) * after) / seconds;
    }
    layOut(date);
    return meanOfSlots(byMinute, 60, local - date * SECONDS_PER_DAY, seconds);
  };
  return (utc, seconds) => {
    if (utc >= from && utc + seconds <= until) return held;
    const local = utc + offsetAt(clock, utc);
    const date = localDay(local);
    layOut(date);
    const since = local - date * SECONDS_PER_DAY;
    const minute = Math.floor(since / 60);
    from = utc;
    until = utc + Math.min(nextJump(clock, utc) - utc, 60 * endOf(byMinute, minute) - since);
    held = byMinute[minute]!;
    return utc + seconds <= until ? held : meanOf(local, seconds);
  };
}

/** Price of each minute of a local day, by the blocks that start on it and on the day before. */
function fillDay(byMinute: Float64Array, tariff: Tariff & { by: 'blocks' }, date: number): void {
  byMinute.fill(tariff.price);
  for (const block of tariff.blocks) {
    const [from, to] = [Math.round(block.from), Math.round(block.to)];
    const end = to > from ? to : to + MINUTES_PER_DAY;
    if (end > MINUTES_PER_DAY && startsOn(block, date - 1)) {
      byMinute.fill(block.price, 0, end - MINUTES_PER_DAY);
    }
    if (startsOn(block, date)) byMinute.fill(block.price, from, Math.min(end, MINUTES_PER_DAY));
  }
}

/** The minute at which the price of another one ends, at most the end of the day. */
function endOf(byMinute: Float64Array, minute: number): number {
  let end = minute + 1;
  while (end < byMinute.length && byMinute[end] === byMinute[minute]) end++;
  return end;
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

const YEAR = 365 * SECONDS_PER_DAY;
