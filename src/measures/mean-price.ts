import type { Tariff } from '../home/prices.ts';
import { nextJump, offsetAt, SECONDS_PER_DAY } from '../units/local-clock.ts';

/**
 * Mean price over a short span of time that begins at an instant. [currency/kWh]
 *
 * The span may cross the edge of a block, midnight, or the edge of a half-hourly price: each part
 * counts by its length. It lies within one offset of the meter's clock, as every span does that is
 * at most an hour long and begins on a whole part of an hour.
 */
export type MeanPrice = (utc: number, seconds: number) => number;

/** Prepares a tariff so that asking it allocates nothing. Of blocks that overlap, the later wins. */
export function meanPriceOf(tariff: Tariff): MeanPrice {
  if (tariff.by === 'flat') return () => tariff.price;
  return tariff.by === 'blocks' ? blockPrice(tariff) : seriesPrice(tariff);
}

function blockPrice(tariff: Tariff & { by: 'blocks' }): MeanPrice {
  const byMinute = new Float64Array(MINUTES_PER_DAY).fill(tariff.price);
  for (const { from, to, price } of tariff.blocks) {
    const end = to > from ? to : to + MINUTES_PER_DAY;
    for (let m = Math.round(from); m < Math.round(end); m++) byMinute[m % MINUTES_PER_DAY] = price;
  }
  const changes = nextChanges(byMinute);
  let from = 0; // the price held goes from here
  let until = 0; // to here [s UTC]
  let held = 0;
  return (utc, seconds) => {
    if (utc >= from && utc + seconds <= until) return held;
    const local = utc + offsetAt(tariff.clock, utc);
    const day = Math.floor(local / SECONDS_PER_DAY) * SECONDS_PER_DAY;
    const minute = Math.floor((local - day) / 60);
    from = utc;
    until = utc + Math.min(nextJump(tariff.clock, utc) - utc, day + 60 * changes[minute]! - local);
    held = byMinute[minute]!;
    return utc + seconds <= until ? held : meanOfSlots(byMinute, 60, local, seconds);
  };
}

/** For each minute of a day: the minute at which its price ends, at most the day's end. */
function nextChanges(byMinute: Float64Array): Float64Array {
  const ends = new Float64Array(MINUTES_PER_DAY);
  for (let m = MINUTES_PER_DAY - 1; m >= 0; m--) {
    const goesOn = m + 1 < MINUTES_PER_DAY && byMinute[m + 1] === byMinute[m];
    ends[m] = goesOn ? ends[m + 1]! : m + 1;
  }
  return ends;
}

function seriesPrice({ prices, start, step }: Tariff & { by: 'series' }): MeanPrice {
  if (prices.length === 0) throw new RangeError('meanPriceOf: a series of prices needs at least 1');
  return (utc, seconds) => meanOfSlots(prices, step, utc - start, seconds);
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

const MINUTES_PER_DAY = 1440;
