import { requireWithin } from '../../../../src/units/require-within.ts';

/**
 * How often an hour a flow would fill a room.
 *
 * @param flow  [m3/s], 0 or more
 * @param volume  of the room [m3], above 0
 * @returns air changes per hour [1/h]
 * @throws RangeError outside those ranges, or NaN
 *
 * @example ach(0.0125, 30) // 1.5
 */
export function ach(flow: number, volume: number): number {
  requireWithin(flow, FLOWS, 'ach: flow', 'm3/s');
  requireWithin(volume, VOLUMES, 'ach: volume', 'm3');
  return (flow * 3600) / volume;
}

/**
 * Time in which fresh air has taken the place of a share of the old, mixing as it comes.
 *
 * What is left falls as exp(-flow t/volume), so 95 % takes three volumes of fresh air (2.996).
 *
 * @param volume  of the room [m3], above 0
 * @param flow  of fresh air [m3/s], 0 or more
 * @param share  of the air to be renewed [-], 0 to 0.9999
 * @returns time [s]; Infinity without flow
 * @throws RangeError outside those ranges, or NaN
 */
export function renewalTime(volume: number, flow: number, share = 0.95): number {
  requireWithin(volume, VOLUMES, 'renewalTime: volume', 'm3');
  requireWithin(flow, FLOWS, 'renewalTime: flow', 'm3/s');
  requireWithin(share, SHARES, 'renewalTime: share', '');
  return share === 0 ? 0 : (-Math.log(1 - share) * volume) / flow;
}

const FLOWS = [0, 1e4] as const;
const VOLUMES = [0.01, 1e6] as const;
const SHARES = [0, 0.9999] as const;
