import { requireWithin } from '../../../../src/units/require-within.ts';

/**
 * What a purifier leaves of a room's particles: the level with it over the level without, once steady.
 *
 *     k/(k + CADR/V)
 *
 * @param deliveryRate  clean-air delivery rate [m3/s], 0 to 100
 * @param volume  of the room [m3], above 0
 * @param otherLoss  by air change and settling together [1/s], 0 to 1
 * @returns share left [-]
 * @throws RangeError outside those ranges, or NaN
 *
 * Source: closed form of the well-mixed room.
 */
export function shareLeftByPurifier(
  deliveryRate: number,
  volume: number,
  otherLoss: number,
): number {
  requireWithin(deliveryRate, [0, 100], 'shareLeftByPurifier: clean-air delivery rate', 'm3/s');
  requireWithin(volume, [0.01, 1e6], 'shareLeftByPurifier: volume', 'm3');
  requireWithin(otherLoss, [0, 1], 'shareLeftByPurifier: other loss', '1/s');
  return deliveryRate === 0 ? 1 : otherLoss / (otherLoss + deliveryRate / volume);
}

/**
 * Clean-air delivery rate from a chamber test: volume times how much faster particles go.
 *
 * @param volume  of the chamber [m3], above 0
 * @param decayOn  loss with the purifier running [1/s], not below decayOff
 * @param decayOff  loss without it [1/s], 0 to 1
 * @returns clean-air delivery rate [m3/s]
 * @throws RangeError outside those ranges, or NaN
 *
 * Source: ANSI/AHAM AC-1.
 */
export function cleanAirDeliveryRate(volume: number, decayOn: number, decayOff: number): number {
  requireWithin(volume, [0.01, 1e6], 'cleanAirDeliveryRate: volume', 'm3');
  requireWithin(decayOff, [0, 1], 'cleanAirDeliveryRate: decay without purifier', '1/s');
  requireWithin(decayOn, [decayOff, 100], 'cleanAirDeliveryRate: decay with purifier', '1/s');
  return volume * (decayOn - decayOff);
}

/**
 * Clean-air delivery rate of a purifier from what it blows and what one pass through it takes.
 *
 * By species: a particle filter lets vapours pass, a layer of carbon takes part of them.
 *
 * @param flow  through the filter [m3/s], 0 to 100
 * @param caught  share that one pass takes [-], 0 to 1; 0.9995 and more of a HEPA filter, 0 of vapours
 * @returns clean-air delivery rate [m3/s]
 * @throws RangeError outside those ranges, or NaN
 */
export function cleanAirOfFilter(flow: number, caught: number): number {
  requireWithin(flow, [0, 100], 'cleanAirOfFilter: flow', 'm3/s');
  requireWithin(caught, [0, 1], 'cleanAirOfFilter: share caught', '');
  return flow * caught;
}
