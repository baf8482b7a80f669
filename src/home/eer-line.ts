import { carnotEer } from '../physics/cooling/carnot-eer.ts';
import type { Curve } from './home.ts';

/**
 * Heat removed for each unit of electricity by a machine that gives its heat to outdoor air, at a
 * steady share of the ideal: the condenser 10 K warmer than outdoors, from 20 to 45 °C outdoors and
 * level beyond.
 *
 * @param share  of the ideal that the machine reaches [-], 0.05 to 1
 * @param evaporator  where it takes heat up [°C], -20 to 25
 */
export function eerLine(share: number, evaporator: number): Curve {
  return {
    outdoor: OUTDOOR,
    value: OUTDOOR.map((outdoor) => carnotEer(share, evaporator, outdoor + CONDENSER_ABOVE)),
  };
}

const OUTDOOR = [20, 25, 30, 35, 40, 45]; // °C
const CONDENSER_ABOVE = 10; // K, from memory of usual practice
