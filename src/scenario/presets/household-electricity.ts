import { powerOf } from '../../units/portable-math.ts';
import type { Preset } from '../../units/preset.ts';

/**
 * Electricity that a household uses in a year besides heating, hot water and cars, cooking included:
 * it grows with people times floor area to the power 0.4714, and a usual household of 2.4 people in
 * 90 m2 has the 2700 kWh of a medium user. [kWh]
 *
 * Low and high are half and twice of that: homes differ more among themselves than by people and size.
 *
 * @param people  who live there, 0 or more
 * @param floorArea  of the home [m2]
 *
 * Sources: SAP 2012 appendix L for the power (from memory); Ofgem's typical consumption of a medium user,
 * 2900 kWh from April 2020, 2700 from October 2023 and 2500 from July 2026.
 */
export function householdElectricity(people: number, floorArea: number): Preset {
  const size = Math.max(1, people) * floorArea;
  const value = MEDIUM_USER * powerOf(size / USUAL_SIZE, 0.4714);
  const source = 'medium user of 2700 kWh a year, by people and floor area as in SAP 2012';
  return { value, low: 0.5 * value, high: 2 * value, source };
}

const MEDIUM_USER = 2700; // kWh
const USUAL_SIZE = 2.4 * 90; // people m2
