import { requireWithin } from '../../units/require-within.ts';

/**
 * Mean heat of one batch of wood over an interval: it rises to a peak a third of the way from one
 * refuelling to the next and falls to embers.
 *
 *     q = (batch energy efficiency/interval) (0.3 + 0.7 x 12 x (1 - x)^2),  x = since/interval
 *
 * That is integrated exactly, so that the steps of a run add up to batch energy efficiency; at the
 * peak it is 1.54 times the mean. A batch is taken to burn out in its interval, and gives nothing
 * after that; what stove body and chimney hold back is the stove's lag. The shape is common practice,
 * not a measurement.
 *
 * @param batch  wood laid on [kg], 0 to 100
 * @param energy  in the wood as bought [J/kg], 0 to 5e7
 * @param efficiency  heat to the room over energy in the wood [-], 0 to 1
 * @param interval  from one refuelling to the next [s], 60 to 1e6
 * @param from  beginning of the interval, counted from the refuelling [s]
 * @param to  its end, later than `from` [s]
 * @returns heat [W]
 * @throws RangeError outside those ranges, where `to` is not later than `from`, or NaN
 *
 * @example stoveHeatOver(1.5, 15e6, 0.75, 2700, 870, 930) // 9651 W, about the peak
 */
export function stoveHeatOver(
  batch: number,
  energy: number,
  efficiency: number,
  interval: number,
  from: number,
  to: number,
): number {
  return batchHeat(batch, energy, efficiency) * burntShare(interval, from, to);
}

/**
 * Mean rate at which wood burns over an interval: heat over energy content and efficiency.
 *
 * @param batch  wood laid on [kg], 0 to 100
 * @param interval  from one refuelling to the next [s], 60 to 1e6
 * @param from  beginning of the interval, counted from the refuelling [s]
 * @param to  its end, later than `from` [s]
 * @returns wood [kg/s]
 * @throws RangeError outside those ranges, where `to` is not later than `from`, or NaN
 */
export function woodRate(batch: number, interval: number, from: number, to: number): number {
  requireWithin(batch, BATCHES, 'stove: batch', 'kg');
  return batch * burntShare(interval, from, to);
}

/** Mean share of the batch that burns per second of an interval. [1/s] */
function burntShare(interval: number, from: number, to: number): number {
  requireWithin(interval, INTERVALS, 'stove: interval', 's');
  requireWithin(from, TIMES, 'stove: time since refuelling', 's');
  requireWithin(to, TIMES, 'stove: time since refuelling', 's');
  if (to > from) return (burntAt(to / interval) - burntAt(from / interval)) / (to - from);
  throw new RangeError(`stove: a while must end after it begins, got ${from} to ${to} s`);
}

function batchHeat(batch: number, energy: number, efficiency: number): number {
  requireWithin(batch, BATCHES, 'stove: batch', 'kg');
  requireWithin(energy, ENERGIES, 'stove: energy', 'J/kg');
  requireWithin(efficiency, SHARES, 'stove: efficiency', '');
  return batch * energy * efficiency;
}

/** Cumulative share of the batch burnt, by the share of its time gone by. [-] */
function burntAt(x: number): number {
  const y = Math.min(1, Math.max(0, x));
  return EMBERS * y + (1 - EMBERS) * y * y * (6 + y * (3 * y - 8));
}

const EMBERS = 0.3; // of the mean
const BATCHES = [0, 100] as const;
const ENERGIES = [0, 5e7] as const;
const SHARES = [0, 1] as const;
const INTERVALS = [60, 1e6] as const;
const TIMES = [-1e12, 1e12] as const;
