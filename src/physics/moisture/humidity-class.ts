import { requireWithin } from '../../units/require-within.ts';

/**
 * Internal humidity class: 1 storage, 2 dwellings with normal use, 3 unknown use, 4 kitchens and
 * sports halls, 5 laundries and pools.
 */
export type HumidityClass = 1 | 2 | 3 | 4 | 5;

/**
 * Class of a room, or a home, from the vapour it holds beyond the outdoor air. A value on a limit
 * belongs to the lower class.
 *
 * @param excess  of vapour pressure, monthly mean [Pa]; or of vapour density with unit 'g/m3'
 * @param outdoorTemperature  monthly mean [°C]
 * @returns at 20 °C and above, where the limits vanish, 1 for no excess and 5 for any
 * Source: ISO 13788:2012, annex on internal humidity (from memory).
 */
export function humidityClass(
  excess: number,
  outdoorTemperature: number,
  unit: 'Pa' | 'g/m3' = 'Pa',
): HumidityClass {
  requireWithin(excess, EXCESS, 'humidityClass: excess', unit);
  for (const c of LIMITED) {
    if (excess <= humidityClassLimit(c, outdoorTemperature, unit)) return c;
  }
  return 5;
}

/**
 * Most vapour excess of a class: level up to 0 °C outdoors, falling straight to none at 20 °C.
 *
 * @param humidityClass  1 to 4; 5 has no limit
 * @param outdoorTemperature  [°C]
 */
export function humidityClassLimit(
  humidityClass: Exclude<HumidityClass, 5>,
  outdoorTemperature: number,
  unit: 'Pa' | 'g/m3' = 'Pa',
): number {
  requireWithin(outdoorTemperature, OUTDOORS, 'humidityClassLimit: outdoor temperature', '°C');
  const share = Math.min(1, Math.max(0, (20 - outdoorTemperature) / 20));
  return humidityClass * PER_CLASS[unit] * share;
}

const LIMITED = [1, 2, 3, 4] as const;
const PER_CLASS = { Pa: 270, 'g/m3': 2 } as const;
const EXCESS = [-10_000, 10_000] as const;
const OUTDOORS = [-60, 60] as const;
