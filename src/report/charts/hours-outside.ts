import type { Edges } from './climate.ts';

/** What can be wrong with an hour, in the order in which pictures show it. */
export const WRONGS = ['too cold', 'too warm', 'too damp', 'too dry'] as const;

/** One value per hour: bit k is set where `WRONGS[k]` holds. */
export type HoursOutside = Uint8Array;

/**
 * What is wrong with each hour of a room, by its means over the hour. On an edge is inside. Hours
 * count whole here and in control steps among the figures, so both may differ a little.
 *
 * @param temperature  operative, as its band is [°C]
 * @param humidity  relative, of the air [%]
 */
export function hoursOutside(
  temperature: Float32Array,
  humidity: Float32Array,
  bands: { readonly temperature: Edges; readonly humidity: Edges },
): HoursOutside {
  const found = new Uint8Array(temperature.length);
  for (let h = 0; h < found.length; h++) {
    found[h] =
      (temperature[h]! < bands.temperature.low ? 1 : 0) |
      (temperature[h]! > bands.temperature.high ? 2 : 0) |
      (humidity[h]! > bands.humidity.high ? 4 : 0) |
      (humidity[h]! < bands.humidity.low ? 8 : 0);
  }
  return found;
}
